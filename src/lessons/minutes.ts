// How long a lesson takes to play, reckoned from what it asks for: reading, steps of building, questions, runs. Pure.
import { givenOrder } from './buildPlan';
import type { Lesson } from './lesson';
import { movesBetween } from './moves';

/** The pace, min: what it takes an unhurried newcomer. Estimates; no class has been timed. */
export const PACE = { reading: 2, step: 0.5, question: 2, run: 3, result: 2 } as const;
/** Days of a season lived in a minute: a day a second. */
export const DAYS_A_MINUTE = 60;
/** A learner is taken to fall into one of so many listed mistakes, each of which costs another run. */
export const MISTAKES_A_RUN = 2;
const NEAREST = 5;

/** What is counted. steps: parts to place or move, settings, sizes left free, fish to put in. */
export interface Counts {
  steps: number;
  questions: number;
  runs: number;
}

type Asked = Pick<Lesson, 'plan' | 'given' | 'reference' | 'sizes' | 'stocks' | 'predictions' | 'mistakes'>;

export function countsOf(lesson: Asked): Counts {
  return {
    steps:
      movesBetween(givenOrder(lesson), lesson.reference.order)
      + lesson.reference.actions.length
      + lesson.sizes.length
      + lesson.stocks.length,
    questions: lesson.predictions.length,
    runs: 1 + Math.floor(lesson.mistakes.length / MISTAKES_A_RUN),
  };
}

/** Minutes to the nearest five, at least five. */
export function minutesOf(lesson: Asked): number {
  const { steps, questions, runs } = countsOf(lesson);
  const minutes =
    PACE.reading + PACE.step * steps + PACE.question * questions + runs * (PACE.run + lesson.plan.days / DAYS_A_MINUTE) + PACE.result;
  return Math.max(NEAREST, NEAREST * Math.round(minutes / NEAREST));
}
