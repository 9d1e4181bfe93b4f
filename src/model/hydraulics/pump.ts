// The pump: its curve, the flow at which curve and pipe meet, its power, and when it draws air.
import type { HydraulicNumbers } from '../parameters/values';
import { largestWhere } from './edge';
import { density_kg_m3 } from './pipe';

const HOURS_PER_DAY = 24;
const SECONDS_PER_DAY = 86400;

/** H = maxHead · (1 − (Q/maxFlow)²): full head against a shut valve, full flow against none. */
export interface PumpCurve {
  maxHead_m: number;
  maxFlow_m3_h: number;
}

/** Head lost at a flow in m³/d, m. Must not fall with flow, and be 0 at none. */
export type Loss = (flow_m3_d: number) => number;

/** Head a pump gives at a flow, m; below 0 beyond its full flow. */
export function pumpHead_m(curve: PumpCurve, flow_m3_d: number): number {
  if (flow_m3_d <= 0) return curve.maxHead_m;
  const share = flow_m3_d / (curve.maxFlow_m3_h * HOURS_PER_DAY);
  return curve.maxHead_m * (1 - share * share);
}

/**
 * Flow at which the pump's head meets lift and losses, m³/d, never above its full flow.
 * 0 where the lift is at or above the shut-off head.
 * @param staticLift_m from the water in the pump's tank up to where the pipe pours out; may be negative
 */
export function operatingFlow_m3_d(curve: PumpCurve, staticLift_m: number, loss: Loss): number {
  if (!(curve.maxFlow_m3_h > 0) || staticLift_m >= curve.maxHead_m) return 0;
  return largestWhere(curve.maxFlow_m3_h * HOURS_PER_DAY, (flow) => pumpHead_m(curve, flow) - staticLift_m - loss(flow));
}

/**
 * The weakest sensible pump that gives just this flow against this lift, so that another lift, a clogged pipe or a lower sump moves the
 * flow. Its shut-off head is shutOffRatio times what it works against, at least leastShutOff.
 */
export function curveFor(flow_m3_h: number, lift_m: number, loss: Loss, h: HydraulicNumbers): PumpCurve {
  const against = lift_m + loss(flow_m3_h * HOURS_PER_DAY);
  const maxHead_m = Math.max(h.shutOffRatio * against, h.leastShutOff);
  return { maxHead_m, maxFlow_m3_h: flow_m3_h / Math.sqrt(1 - against / maxHead_m) };
}

/** Power that goes into lifting water, W: ρ g Q H. */
export const hydraulicPower_W = (flow_m3_d: number, head_m: number, T_C: number, h: HydraulicNumbers): number =>
  (density_kg_m3(T_C) * h.gravity * Math.max(0, flow_m3_d) * Math.max(0, head_m)) / SECONDS_PER_DAY;

/** Power drawn from the mains at one point of the curve, W: ρ g Q H / η. */
export const electricalPower_W = (flow_m3_d: number, head_m: number, T_C: number, h: HydraulicNumbers): number =>
  hydraulicPower_W(flow_m3_d, head_m, T_C, h) / h.pumpEfficiency;

/** Least water in the pump's tank that keeps the pump from drawing air, m³. */
export const leastWater_m3 = (tankVolume_m3: number, h: HydraulicNumbers): number => h.pumpLeast * tankVolume_m3;

/** Whether the pump draws air: less than the least share of its tank's volume is left. */
export const drawsAir = (water_m3: number, tankVolume_m3: number, h: HydraulicNumbers): boolean =>
  water_m3 < leastWater_m3(tankVolume_m3, h);
