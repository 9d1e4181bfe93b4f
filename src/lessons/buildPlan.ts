// A lesson and a way to fill its loop make a plan.
import type { Plan, StageSpec } from '../season/plan';
import type { Build, Lesson } from './lesson';

/**
 * The lesson's plan with its loop in the build's order and the build's actions after the lesson's own.
 * Shelf parts not placed leave no trace: side stages stop taking from them. Ids the lesson does not know are passed over
 * (readLesson reports them).
 */
export function buildPlan(lesson: Lesson, build: Build): Plan {
  const known = new Map<string, StageSpec>([...lesson.plan.loop, ...lesson.shelf].map((stage) => [stage.id, stage]));
  const loop = build.order.flatMap((id) => {
    const stage = known.get(id);
    return stage === undefined ? [] : [stage];
  });
  const placed = new Set(loop.map((stage) => stage.id));
  return {
    ...lesson.plan,
    loop,
    side: lesson.plan.side.map((side) => (side.kind === 'mineralisationTank' ? { ...side, takes: side.takes.filter((id) => placed.has(id)) } : side)),
    actions: [...lesson.plan.actions, ...build.actions],
  };
}
