// A prediction come due: what the season measured, which choice that is, and which mechanisms its figures bear out.
import type { Choice, Prediction } from './lesson';
import { holds, measure } from './measure';
import type { Lived } from './measure';

export interface Settled {
  key: string;
  value: number;
  outcome: string | null;
  explanations: { key: string; value: number; holds: boolean }[];
}

/** The key of the choice a number falls into; null for no number. */
export function choiceOf(choices: readonly Choice[], value: number): string | null {
  return choices.find(({ atLeast, below }) => value >= (atLeast ?? -Infinity) && value < (below ?? Infinity))?.key ?? null;
}

/** Measures to the start of its due day, and only in what was lived by then. */
export function settle(lived: Lived, prediction: Prediction): Settled {
  const past: Lived = { ...lived, days: lived.days.filter((chunk) => chunk.day < prediction.dueDay) };
  const value = measure(past, prediction.measure);
  return {
    key: prediction.key,
    value,
    outcome: choiceOf(prediction.choices, value),
    explanations: prediction.explanations.map(({ key, evidence }) => {
      const found = measure(past, evidence);
      return { key, value: found, holds: holds(found, evidence) };
    }),
  };
}
