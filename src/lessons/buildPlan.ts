// A lesson and a way to fill its loop make a plan.
import { takesSolids } from '../season/plan';
import type { Plan, SideSpec, StageSpec } from '../season/plan';
import type { Build, Lesson, Resized } from './lesson';
import { quantiseStage } from './quantise';

/** A stage with the sizes that a build gives it. */
function resized<T extends { id: string }>(stage: T, sizes: readonly Resized[]): T {
  return sizes.reduce((made, { stage: id, size, value }) => (id === stage.id ? { ...made, [size]: value } : made), stage);
}

/**
 * The lesson's plan with its loop in the build's order and the build's actions after the lesson's own.
 * Shelf parts not placed leave no trace: side stages stop taking from them. Ids the lesson does not know are passed over
 * (readLesson reports them).
 */
export function buildPlan(lesson: Pick<Lesson, 'plan' | 'shelf'>, build: Build): Plan {
  const sizes = build.sizes ?? [];
  const known = new Map<string, StageSpec>([...lesson.plan.loop, ...lesson.shelf].map((stage) => [stage.id, stage]));
  const loop = build.order.flatMap((id) => {
    const stage = known.get(id);
    return stage === undefined ? [] : [quantiseStage(resized(stage, sizes))];
  });
  const placed = new Set(loop.map((stage) => stage.id));
  const linked = (side: SideSpec): SideSpec => (takesSolids(side) ? { ...side, takes: side.takes.filter((id) => placed.has(id)) } : side);
  return {
    ...lesson.plan,
    start: build.biofilm === undefined ? lesson.plan.start : { ...lesson.plan.start, biofilm: build.biofilm },
    loop,
    side: lesson.plan.side.filter((side) => !(build.without ?? []).includes(side.id)).map((side) => resized(linked(side), sizes)),
    actions: [...lesson.plan.actions, ...build.actions],
  };
}

/** The build of a key: "reference", or a mistake's; undefined where the lesson has none of it. */
export function buildOf(lesson: Pick<Lesson, 'reference' | 'mistakes'>, key: string): Build | undefined {
  return key === 'reference' ? lesson.reference : lesson.mistakes.find((mistake) => mistake.key === key);
}

/** The plan of the build of a key. @throws Error when the lesson has none of it */
export function planOf(lesson: Lesson, key: string): Plan {
  const build = buildOf(lesson, key);
  if (build === undefined) throw new Error(`The lesson ${lesson.id} has no build ${key}.`);
  return buildPlan(lesson, build);
}

/** Every key that names a build. */
export const buildKeys = (lesson: Pick<Lesson, 'mistakes'>): string[] => ['reference', ...lesson.mistakes.map((mistake) => mistake.key)];

/** The order of the loop as the lesson gives it: its own, or the fixed stages alone. */
export function givenOrder(lesson: Pick<Lesson, 'plan' | 'given'>): string[] {
  return lesson.given ?? lesson.plan.loop.map((stage) => stage.id);
}

/** The loop as the lesson gives it, and nothing done. */
export function idleBuild(lesson: Pick<Lesson, 'plan' | 'given'>): Build {
  return { order: givenOrder(lesson), actions: [] };
}
