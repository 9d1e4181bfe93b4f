// Plans that the season tests start from: the lesson's loop, and a smaller rig.
import { readFileSync } from 'node:fs';
import { buildPlan } from '../../src/lessons/buildPlan';
import type { Lesson } from '../../src/lessons/lesson';
import { readLesson } from '../../src/lessons/readLesson';
import { readPlan } from '../../src/lessons/readPlan';
import type { Action, Plan } from '../../src/season/plan';

// from two folders deep, here as where the long tests are joined
const text = (path: string): string => readFileSync(new URL(path, import.meta.url), 'utf8');

/** The first lesson, as it stands in levels. */
export function firstLesson(): Lesson {
  const read = readLesson(text('../../levels/00-first-loop.json'));
  if ('problems' in read) throw new Error(JSON.stringify(read.problems));
  return read.lesson;
}

/** A plan kept in tests/season/plans. */
export function keptPlan(name: string): Plan {
  const read = readPlan(text(`../../tests/season/plans/${name}.json`));
  if ('problems' in read) throw new Error(JSON.stringify(read.problems));
  return read.plan;
}

/** The lesson's reference loop. */
export function referencePlan(change: Partial<Plan> = {}): Plan {
  const lesson = firstLesson();
  return { ...buildPlan(lesson, lesson.reference), ...change };
}

/** The reference with its stages in another order, or some left out; actions of stages left out go with them. */
export function inOrder(order: string[], keep: (action: Action) => boolean = () => true): Plan {
  const lesson = firstLesson();
  const known = (action: Action): boolean => !('stage' in action) || action.stage === undefined || order.includes(action.stage);
  return buildPlan(lesson, { order, actions: lesson.reference.actions.filter((action) => known(action) && keep(action)) });
}
