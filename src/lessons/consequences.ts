// Whether a mistake shows what its lesson says it shows: a shown quantity against the reference, as a ratio.
import type { Trajectory } from '../season/trajectory';
import type { Consequence } from './lesson';
import { stageCourse } from '../season/stageReading';

export interface Shown { consequence: Consequence; reference: number; mistake: number; times: number; holds: boolean }

/** The consequence's statistic over its stage's hourly course; NaN if the stage is not in the loop. */
export function measure(trajectory: Trajectory, consequence: Consequence): number {
  const course = stageCourse(trajectory, consequence.stage, consequence.variable, consequence.fromDay);
  if (course.length === 0) return Number.NaN;
  switch (consequence.statistic) {
    case 'max': return course.reduce((most, value) => Math.max(most, value), -Infinity);
    case 'min': return course.reduce((least, value) => Math.min(least, value), Infinity);
    case 'mean': return course.reduce((sum, value) => sum + value, 0) / course.length;
    case 'last': return course[course.length - 1];
  }
}

/** Compares two seasons. Nothing against nothing is once; something against nothing is endlessly often. */
export function compare(reference: Trajectory, mistake: Trajectory, consequence: Consequence): Shown {
  const before = measure(reference, consequence);
  const after = measure(mistake, consequence);
  const times = before === 0 && after === 0 ? 1 : after / before;
  const { atLeastTimes, atMostTimes } = consequence;
  const asked = atLeastTimes !== undefined || atMostTimes !== undefined;
  const holds = asked && !Number.isNaN(times) && (atLeastTimes === undefined || times >= atLeastTimes) && (atMostTimes === undefined || times <= atMostTimes);
  return { consequence, reference: before, mistake: after, times, holds };
}
