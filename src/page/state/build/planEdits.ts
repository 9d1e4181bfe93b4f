// Edits of a design before its season begins: the order of the loop and its standing settings. Every edit returns a new plan.
import type { Lesson } from '../../../lessons/lesson';
import type { BaseDosingSide, BaseKind, Deed, Plan, StageSpec } from '../../../season/plan';
import { can, doses, takesSolids } from '../common/kinds';

/** The plan a lesson opens with: the loop as given, or its fixed stages with nothing placed yet. */
export function openingPlan(lesson: Lesson): Plan {
  const known = [...lesson.plan.loop, ...lesson.shelf];
  const given = (lesson.given ?? []).flatMap((id) => known.filter((stage) => stage.id === id));
  return {
    ...lesson.plan,
    loop: lesson.given === undefined ? [...lesson.plan.loop] : given,
    side: [...lesson.plan.side],
    actions: [...lesson.plan.actions],
  };
}

/** A stage the person may place, move and take out; the lesson's own stages stay where they are. */
export function isFree(lesson: Lesson, stageId: string): boolean {
  return lesson.shelf.some((part) => part.id === stageId);
}

/**
 * The part as it stands in the loop, else as it stood there last, else as the lesson gives it.
 * @param before designs that were in hand before this one, the latest last: a part keeps its sizes when it is taken out and put back
 */
export function partOf(lesson: Lesson, plan: Plan, stageId: string, before: readonly Plan[] = []): StageSpec | null {
  const stood = (design: Plan): StageSpec | undefined => design.loop.find((stage) => stage.id === stageId);
  const last = [plan, ...[...before].reverse()].find((design) => stood(design) !== undefined);
  return (last === undefined ? undefined : stood(last)) ?? lesson.shelf.find((part) => part.id === stageId) ?? null;
}

/**
 * Puts a part into a gap, out of the shelf or from elsewhere in the loop.
 * @param gap 1…loop.length, counted in the loop as it stands: gap g is before loop[g]
 */
export function withPlaced(plan: Plan, part: StageSpec, gap: number): Plan {
  const from = plan.loop.findIndex((stage) => stage.id === part.id);
  const target = Math.max(1, Math.min(plan.loop.length, Math.round(gap)));
  const rest = plan.loop.filter((stage) => stage.id !== part.id);
  const at = from >= 0 && from < target ? target - 1 : target;
  return { ...plan, loop: [...rest.slice(0, at), part, ...rest.slice(at)] };
}

/** Takes a part out of the loop. */
export function withoutStage(plan: Plan, stageId: string): Plan {
  return { ...plan, loop: plan.loop.filter((stage) => stage.id !== stageId) };
}

/** Whether a stage may go one place along the loop: never ahead of the fish tank, never past the end. */
export function canShift(lesson: Lesson, plan: Plan, stageId: string, by: -1 | 1): boolean {
  const at = plan.loop.findIndex((stage) => stage.id === stageId);
  return at > 0 && isFree(lesson, stageId) && at + by >= 1 && at + by < plan.loop.length;
}

/** Swaps a stage with its neighbour along the loop. */
export function withShifted(plan: Plan, stageId: string, by: -1 | 1): Plan {
  const at = plan.loop.findIndex((stage) => stage.id === stageId);
  const loop = [...plan.loop];
  const moved = loop[at];
  loop[at] = loop[at + by];
  loop[at + by] = moved;
  return { ...plan, loop };
}

/** Sets the air a stage gets from the start, L/min. */
export function withAir(plan: Plan, stageId: string, L_min: number): Plan {
  const set = <T extends { id: string }>(stage: T): T => (stage.id === stageId ? { ...stage, air_L_min: L_min } : stage);
  return { ...plan, loop: plan.loop.map(set), side: plan.side.map((side) => (takesSolids(side) ? set(side) : side)) };
}

/** Sets the electrical power of a stage's lamp from the start, W. */
export function withLamp(plan: Plan, stageId: string, lamp_W: number): Plan {
  return { ...plan, loop: plan.loop.map((stage) => (stage.id === stageId ? { ...stage, lamp_W } : stage)) };
}

/** Sets something that concerns the whole season from its first hour; what was set there before is replaced. */
export function withSetting(plan: Plan, deed: Deed): Plan {
  const rest = plan.actions.filter(
    (action) => action.do !== deed.do || action.every_d !== undefined || (action.day ?? action.from ?? 0) > 0 || (action.hour ?? 0) > 0,
  );
  return { ...plan, actions: [{ day: 0, hour: 0, ...deed }, ...rest] };
}

/** The id of the first fish tank of the loop. */
export function fishTankOf(plan: Plan): string | null {
  return plan.loop.find((stage) => can(stage.kind, 'keepsFish'))?.id ?? null;
}

/** Sets the feed given from the first day, g/d; the meal hours of the lesson stay. */
export function withFirstFeed(plan: Plan, tank: string, g_d: number): Plan {
  const isFirst = (action: Plan['actions'][number]): boolean =>
    action.do === 'feed' && action.tank === tank && (action.day ?? action.from ?? 0) === 0;
  const found = plan.actions.some(isFirst);
  if (!found) return { ...plan, actions: [{ day: 0, hour: 0, do: 'feed', tank, g_d }, ...plan.actions] };
  return { ...plan, actions: plan.actions.map((action) => (isFirst(action) && action.do === 'feed' ? { ...action, g_d } : action)) };
}

/** The dosing tank of a plan. */
export function doserOf(plan: Plan): BaseDosingSide | null {
  return plan.side.find(doses) ?? null;
}

/** Sets what the dosing tank gives from the start: g/d at most, damped towards the target pH. */
export function withBase(plan: Plan, base: BaseKind, g_d: number, targetPH: number): Plan {
  return { ...plan, side: plan.side.map((side) => (doses(side) ? { ...side, base, g_d, targetPH } : side)) };
}
