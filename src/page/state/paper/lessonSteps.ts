// Forty-five minutes with a class, shared out among what a lesson has: its order, predictions, demonstrations, its run. Pure.
import type { Lesson } from '../../../lessons/lesson';

export type StepKind = 'open' | 'order' | 'predict' | 'show' | 'run' | 'explain' | 'exit';
export interface LessonStep {
  kind: StepKind;
  from: number;
  minutes: number;
}

export const CLASS_MINUTES = 45;
const OPEN = 5;
const ORDER = 5;
const A_PREDICTION = 2;
const MOST_PREDICTING = 6;
const SHOW = 7;
const EXIT = 4;
const LEAST_EXPLAINING = 6;

/**
 * Steps in their order, from minute 0 to 45; the run takes the lesson's own time where there is room, and explaining takes what is left.
 */
export function lessonSteps(lesson: Pick<Lesson, 'minutes' | 'predictions' | 'demonstrations' | 'shelf'>): LessonStep[] {
  const fixed: [StepKind, number][] = [
    ['open', OPEN],
    ['order', lesson.shelf.length > 1 ? ORDER : 0],
    ['predict', Math.min(MOST_PREDICTING, A_PREDICTION * lesson.predictions.length)],
    ['show', lesson.demonstrations.length > 0 ? SHOW : 0],
  ];
  const left = CLASS_MINUTES - EXIT - fixed.reduce((sum, [, minutes]) => sum + minutes, 0);
  const run = Math.max(1, Math.min(Math.round(lesson.minutes), left - LEAST_EXPLAINING));
  let from = 0;
  return [...fixed, ['run', run] as const, ['explain', left - run] as const, ['exit', EXIT] as const]
    .filter(([, minutes]) => minutes > 0)
    .map(([kind, minutes]) => {
      from += minutes;
      return { kind, from: from - minutes, minutes };
    });
}

/** Minutes of the run that the class does not have: it ends at home, or in the next hour. */
export function minutesShort(lesson: Pick<Lesson, 'minutes' | 'predictions' | 'demonstrations' | 'shelf'>): number {
  const run = lessonSteps(lesson).find((step) => step.kind === 'run');
  return Math.max(0, Math.round(lesson.minutes) - (run?.minutes ?? 0));
}
