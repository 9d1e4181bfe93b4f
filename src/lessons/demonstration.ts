// Two builds of a lesson side by side for a class: their plans, which stages stand differently, and which band the outcome falls into.
import type { Plan } from '../season/plan';
import { planOf } from './buildPlan';
import type { Choice, Demonstration, Lesson } from './lesson';
import { movesBetween } from './moves';
import { choiceOf } from './predictions';

/** Two plans to be shown in step, and the stages that only one has or that stand elsewhere. */
export interface Pair {
  plans: [Plan, Plan];
  differ: string[];
}
/** What a pair measured, left and right, and the key of the choice that right ÷ left falls into. */
export interface Outcome {
  values: [number, number];
  times: number;
  choice: string | null;
}

/** Stages whose place is not the same in both loops: without them there would be less to change. */
export function standElsewhere(left: readonly string[], right: readonly string[]): string[] {
  const apart = movesBetween(left, right);
  return [...new Set([...left, ...right])].filter(
    (id) =>
      movesBetween(
        left.filter((one) => one !== id),
        right.filter((one) => one !== id),
      ) < apart,
  );
}

/** @throws Error when the lesson has no build of a key; readLesson lets no such lesson pass */
export function pairOf(lesson: Lesson, shown: Pick<Demonstration, 'left' | 'right'>): Pair {
  const plans: [Plan, Plan] = [planOf(lesson, shown.left), planOf(lesson, shown.right)];
  const [left, right] = plans.map((plan) => plan.loop.map((stage) => stage.id));
  return { plans, differ: standElsewhere(left, right) };
}

export function outcomeOf(left: number, right: number, choices: readonly Choice[]): Outcome {
  const times = right / left;
  return { values: [left, right], times, choice: choiceOf(choices, times) };
}
