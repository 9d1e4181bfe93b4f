// One number read off a season, and whether it keeps its limits.
import { stageCourse } from '../season/stageReading';
import type { Trajectory } from '../season/trajectory';
import type { Measure, Statement } from './lesson';

/** What a measure needs of a season: a whole one, or the days lived so far. */
export type Lived = Pick<Trajectory, 'stages' | 'cells' | 'variables' | 'processNames' | 'days'>;

/** What a process did at a stage, a day on average, in the process's own unit; NaN where there is none. */
function processRate(lived: Lived, measure: Measure): number {
  const stage = lived.stages.find((one) => one.id === measure.stage);
  const process = lived.processNames.indexOf(measure.process ?? '');
  const days = lived.days.filter((chunk) => chunk.day >= measure.fromDay && chunk.day < (measure.toDay ?? Infinity));
  if (stage === undefined || stage.cells === 0 || process < 0 || days.length === 0) return Number.NaN;
  let sum = 0;
  for (const chunk of days) {
    for (let cell = stage.first; cell < stage.first + stage.cells; cell += 1)
      sum += chunk.extents[cell * lived.processNames.length + process];
  }
  return sum / days.length;
}

/** The measure's number; NaN if its stage is not in the loop or its days were not lived. */
export function measure(lived: Lived, asked: Measure): number {
  if (asked.score !== undefined)
    return lived.days.filter((chunk) => chunk.day < (asked.toDay ?? Infinity)).at(-1)?.scores[asked.score] ?? Number.NaN;
  if (asked.process !== undefined) return processRate(lived, asked);
  const course = stageCourse(lived, asked.stage ?? '', asked.variable ?? '', asked.fromDay, asked.toDay);
  if (course.length === 0) return Number.NaN;
  const sum = (): number => course.reduce((total, value) => total + value, 0);
  switch (asked.statistic) {
    case 'max':
      return course.reduce((most, value) => Math.max(most, value), -Infinity);
    case 'min':
      return course.reduce((least, value) => Math.min(least, value), Infinity);
    case 'mean':
      return sum() / course.length;
    case 'sum':
      return sum();
    case 'last':
      return course[course.length - 1];
  }
}

/** Whether a number keeps a statement's limits; a statement without limits, or no number, does not hold. */
export function holds(value: number, { atLeast, atMost }: Pick<Statement, 'atLeast' | 'atMost'>): boolean {
  const asked = atLeast !== undefined || atMost !== undefined;
  return asked && !Number.isNaN(value) && (atLeast === undefined || value >= atLeast) && (atMost === undefined || value <= atMost);
}
