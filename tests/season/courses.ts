// Reading a trajectory: the hourly course of a quantity at a stage, and what tests say of it.
import { stageCourse } from '../../src/season/stageReading';
import type { Trajectory, Variable } from '../../src/season/trajectory';

/** Hourly values of a stage (the mean over its cells), from a day on. */
export const course = (trajectory: Trajectory, stage: string, variable: Variable, fromDay = 0): number[] =>
  Array.from(stageCourse(trajectory, stage, variable, fromDay));
export const most = (values: readonly number[]): number => values.reduce((a, b) => Math.max(a, b), -Infinity);
export const least = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b), Infinity);
export const meanOf = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
/** Day, with its fraction, of the largest value. */
export const dayOfPeak = (values: readonly number[]): number => values.indexOf(most(values)) / 24;
