// How the return pump fares at a moment: what it pours against what it is set to, the water it stands in, and why it stands still.
import type { DesignCheck, Plan } from '../common/contract';
import { flowInForce, powerInForce, pumpInForce } from './inForce';
import { readingAt } from './readings';
import type { SeasonView } from '../common/state';
import { pumpAt } from '../common/kinds';

/**
 * Pours as set or, with a curve of its own, as that gives; pours less than set; is switched off, has no power, drew air, or cannot lift the
 * water.
 */
export type PumpState = 'runs' | 'byCurve' | 'weak' | 'off' | 'noPower' | 'drewAir' | 'cannotLift';
export interface PumpNow {
  state: PumpState;
  /** the stage that it draws from */
  tank: string;
  flow_m3_d: number;
  /** null for a pump with a curve of its own */
  setting_m3_d: number | null;
  /** m from the water it stands in, as planned, up to where the pipe pours out */
  lift_m: number;
  /** m of water over the floor of its tank, now and as planned */
  depth_m: number;
  usualDepth_m: number;
}

/** Below this share of its setting a pump pours less than it was set to. */
const WEAK = 0.9;
const HOURS = 24;

/** Whether the last thing that befell the pump in this tank is that it drew air. Whether it runs again tells the flow. */
export function drewAir(view: SeasonView, tank: string, now_h: number): boolean {
  for (let d = Math.min(view.days.length - 1, Math.floor(now_h / HOURS)); d >= 0; d -= 1) {
    const { events } = view.days[d];
    for (let i = events.length - 1; i >= 0; i -= 1) {
      const event = events[i];
      if (event.hour > now_h) continue;
      if (event.kind === 'pumpDry' && event.stage === tank) return true;
      if (event.kind === 'pumpOff' || event.kind === 'pumpOn' || event.kind === 'powerOff' || event.kind === 'powerOn') return false;
    }
  }
  return false;
}

/** @returns null where the loop has no pump, or no water about it */
export function pumpNow(view: SeasonView, plan: Plan, design: DesignCheck, now_h: number): PumpNow | null {
  const { loop } = plan;
  const at = pumpAt(loop);
  if (at < 0) return null;
  const wet = (id: string): boolean => view.stages.some((stage) => stage.id === id && stage.cells > 0);
  const along = loop.map((_, i) => loop[(at + 1 + i) % loop.length].id).filter(wet);
  const tank = along[along.length - 1];
  const level = design.stages.find((stage) => stage.id === tank);
  if (along.length < 2 || level === undefined) return null;
  const set_m3_h = flowInForce(plan, now_h);
  const setting_m3_d = set_m3_h === null ? null : set_m3_h * HOURS;
  const flow_m3_d = readingAt(view, along[0], 'flow_m3_d', now_h, 'inside');
  const stateNow = (): PumpState => {
    if (!powerInForce(plan, now_h)) return 'noPower';
    if (!pumpInForce(plan, now_h)) return 'off';
    if (!(flow_m3_d > 1e-6)) return drewAir(view, tank, now_h) ? 'drewAir' : 'cannotLift';
    if (setting_m3_d === null) return 'byCurve';
    return flow_m3_d < WEAK * setting_m3_d ? 'weak' : 'runs';
  };
  return {
    state: stateNow(),
    tank,
    flow_m3_d,
    setting_m3_d,
    lift_m: design.lift_m,
    depth_m: readingAt(view, tank, 'level_m', now_h, 'out') - level.floor_m,
    usualDepth_m: level.depth_m,
  };
}
