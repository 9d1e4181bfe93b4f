// What a lesson's offer means for the page: whether parts may stay on the shelf, whether plants belong to it, and whether fish are still to
// come. Pure.
import type { Lesson } from '../../../lessons/lesson';
import type { Plan } from '../../../season/plan';
import type { DesignCheck } from '../../../worker/messages';
import { can } from '../common/kinds';
import { stocked } from './stocking';

/** Whether the lesson offers parts that its reference does without: not every part is meant to be placed then. */
export function offersChoice(lesson: Pick<Lesson, 'shelf' | 'reference'>): boolean {
  return lesson.shelf.some((part) => !lesson.reference.order.includes(part.id));
}

/** Parts that lie on the shelf when the lesson opens. */
export function firstOnShelf(lesson: Pick<Lesson, 'shelf' | 'given'>): number {
  return lesson.shelf.filter((part) => lesson.given?.includes(part.id) !== true).length;
}

/** Problems of a design that a person can do something about in this lesson: no word of plants where no bed is offered. */
export function problemsToTell(lesson: Pick<Lesson, 'shelf'>, plan: Pick<Plan, 'loop'>, design: DesignCheck): DesignCheck['problems'] {
  const bed = [...plan.loop, ...lesson.shelf].some(({ kind }) => can(kind, 'grows'));
  return design.problems.filter(({ key }) => key !== 'design.noPlants' || bed);
}

/** Whether the loop starts without fish that the lesson offers. */
export function fishToCome(lesson: Pick<Lesson, 'stocks'>, plan: Pick<Plan, 'fish' | 'actions'>): boolean {
  return plan.fish.length === 0 && lesson.stocks.length > 0 && stocked(lesson, plan).size === 0;
}
