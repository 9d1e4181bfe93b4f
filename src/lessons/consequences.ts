// Whether a mistake shows what its lesson says it shows: a number read off its season, by itself or against the reference's.
import type { Consequence } from './lesson';
import { holds, measure } from './measure';
import type { Lived } from './measure';

export interface Shown {
  consequence: Consequence;
  reference: number;
  mistake: number;
  times: number;
  holds: boolean;
}

/** Compares two seasons. Nothing against nothing is once; something against nothing is endlessly often. */
export function compare(reference: Lived, mistake: Lived, consequence: Consequence): Shown {
  const before = measure(reference, consequence);
  const after = measure(mistake, consequence);
  const times = before === 0 && after === 0 ? 1 : after / before;
  const { atLeast, atMost, atLeastTimes, atMostTimes } = consequence;
  const absolute = atLeast === undefined && atMost === undefined ? null : holds(after, consequence);
  const relative =
    atLeastTimes === undefined && atMostTimes === undefined ? null : holds(times, { atLeast: atLeastTimes, atMost: atMostTimes });
  return { consequence, reference: before, mistake: after, times, holds: (absolute ?? relative ?? false) && (relative ?? true) };
}
