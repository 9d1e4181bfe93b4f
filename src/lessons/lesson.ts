// A lesson: a plan with gaps, the parts on the shelf, goals, the reference and the mistakes it teaches by.
import type { Plan, StageSpec, Action, SideSpec } from '../season/plan';
import type { Variable } from '../season/trajectory';

export const LESSON_FORMAT = 'loopwright.lesson/1';

/** A way to fill the loop: the ids of stages in flow order (fixed and shelf parts), and what the person does. */
export interface Build { order: string[]; actions: Action[] }

/** What a mistake must show against the reference: shown quantity at a stage, as a ratio. */
export interface Consequence { stage: string; variable: Variable; statistic: 'max' | 'min' | 'mean' | 'last'; fromDay: number; atLeastTimes?: number; atMostTimes?: number }
export interface Mistake extends Build { key: string; title: string; shows: Consequence[] }

export interface Lesson {
  format: typeof LESSON_FORMAT;
  id: string;
  title: string;
  /** Three lines that say what to do. */
  brief: string[];
  /** Everything but the loop's free stages; loop holds the fixed stages in order. */
  plan: Plan;
  /** Parts a person may place, each once unless count says otherwise. */
  shelf: StageSpec[];
  /** Side parts fixed by the lesson stand in plan.side. */
  sides?: SideSpec[];
  scoring: { plantsWeight: number; marks: { fishHealth: number; harvest: number }[] };
  reference: Build;
  mistakes: Mistake[];
}

/** What is wrong with a file from outside: where, what was found, what was expected. */
export interface Problem { path: string; got: string; expected: string }
