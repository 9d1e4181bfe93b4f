// What is set at a moment: feed, air, base, pump and chores, read from a plan's settings and the actions up to then.
import type { Action, BaseKind, Plan } from '../../../season/plan';
import { doserOf } from '../build/planEdits';
import type { Chore } from '../common/state';
import { pumpAt, takesSolids } from '../common/kinds';

/** The last whole hour at or before t at which an action is done, or −1 when it has not been done by then. */
export function lastDone_h(action: Action, t_h: number): number {
  const hour = action.hour ?? 0;
  if (action.every_d === undefined) {
    const at = (action.day ?? action.from ?? 0) * 24 + hour;
    return at <= t_h ? at : -1;
  }
  const from = action.from ?? action.day ?? 0;
  const day = Math.min(Math.floor((t_h - hour) / 24), action.to ?? Infinity);
  if (day < from) return -1;
  return (from + Math.floor((day - from) / action.every_d) * action.every_d) * 24 + hour;
}

function latest<D extends Action['do']>(
  plan: Plan,
  what: D,
  t_h: number,
  fits: (action: Extract<Action, { do: D }>) => boolean,
): Extract<Action, { do: D }> | null {
  let best: Extract<Action, { do: D }> | null = null;
  let bestAt = -1;
  for (const action of plan.actions) {
    if (action.do !== what) continue;
    const one = action as Extract<Action, { do: D }>;
    const at = fits(one) ? lastDone_h(one, t_h) : -1;
    if (at >= 0 && at >= bestAt) {
      best = one;
      bestAt = at;
    }
  }
  return best;
}

/** Feed that is given to a tank, g/d; 0 when none was set. */
export function feedInForce(plan: Plan, tank: string, t_h: number): number {
  return latest(plan, 'feed', t_h, (action) => action.tank === tank)?.g_d ?? 0;
}

/** Air to a stage, L/min. */
export function airInForce(plan: Plan, stageId: string, t_h: number): number {
  const set = latest(plan, 'air', t_h, (action) => action.stage === stageId);
  if (set !== null) return set.L_min;
  const stage = plan.loop.find((one) => one.id === stageId);
  if (stage !== undefined) return stage.air_L_min ?? 0;
  const side = plan.side.find((one) => one.id === stageId);
  return side !== undefined && takesSolids(side) ? side.air_L_min : 0;
}

/** Whether the return pump is meant to run. */
export function pumpInForce(plan: Plan, t_h: number): boolean {
  return latest(plan, 'pump', t_h, () => true)?.on ?? true;
}

/** Whether the mains are on. */
export function powerInForce(plan: Plan, t_h: number): boolean {
  return latest(plan, 'power', t_h, () => true)?.on ?? true;
}

/** Flow that the return pump is set to, m³/h; null for one with a curve of its own, which nobody sets. */
export function flowInForce(plan: Plan, t_h: number): number | null {
  const pump = plan.loop[pumpAt(plan.loop)];
  if (pump?.curve !== undefined) return null;
  return latest(plan, 'flow', t_h, () => true)?.flow_m3_h ?? pump?.flow_m3_h ?? 1;
}

/** Electrical power of a stage's lamp, W. @param usual_W what the lamp draws where the plan says nothing */
export function lampInForce(plan: Plan, stageId: string, t_h: number, usual_W: number): number {
  return (
    latest(plan, 'setting', t_h, (action) => action.stage === stageId)?.lamp_W
    ?? plan.loop.find((one) => one.id === stageId)?.lamp_W
    ?? usual_W
  );
}

/** The heater of the pump's tank: power at most, and the temperature it keeps; null when none was set. */
export function heaterInForce(plan: Plan, t_h: number): { power_W: number; target_C: number } | null {
  return latest(plan, 'heater', t_h, (action) => action.stage === undefined);
}

/** Daily light a person set in place of the climate's, mol/m²/d; null when none was set. */
export function lightInForce(plan: Plan, t_h: number): number | null {
  return latest(plan, 'light', t_h, (action) => action.stage === undefined)?.mol_m2_d ?? null;
}

/** What the dosing tank gives, g/d at most, and the pH it aims at; null when the plan has no dosing tank. */
export function baseInForce(plan: Plan, t_h: number): { base: BaseKind; g_d: number; targetPH: number } | null {
  const doser = doserOf(plan);
  if (doser === null) return null;
  const now = { base: doser.base, g_d: doser.g_d, targetPH: doser.targetPH };
  for (const action of [...plan.actions].sort((a, b) => lastDone_h(a, t_h) - lastDone_h(b, t_h))) {
    if (action.do !== 'base' || lastDone_h(action, t_h) < 0) continue;
    now.g_d = action.g_d;
    now.targetPH = action.targetPH ?? now.targetPH;
    now.base = action.base ?? now.base;
  }
  return now;
}

/** Every how many days a chore is done from now on; 0 when it is not. */
export function choreInForce(plan: Plan, chore: Chore, stageId: string, t_h: number): number {
  const day = Math.floor(t_h / 24);
  let every_d = 0;
  for (const action of plan.actions) {
    if (action.do === chore && action.stage === stageId && action.every_d !== undefined && (action.to ?? Infinity) >= day)
      every_d = action.every_d;
  }
  return every_d;
}

/** The hour at which a deed done now takes hold: the next whole hour while a season runs, the start while building. */
export function actingHour(game: { mode: string; now_h?: number }): number {
  return game.now_h === undefined ? 0 : Math.floor(game.now_h) + 1;
}

/** Whether a deed done now would replace hours that were lived already. */
export function actsInPast({ now_h, lived_h }: { now_h: number; lived_h: number }): boolean {
  return now_h < lived_h - 0.5;
}
