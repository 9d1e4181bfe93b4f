// How fast moving water is seen to move. Pure.

/** Speed of the dashes for a flow, world units per second and m³/d, within bounds that the eye can follow. */
export const SPEED_PER_m3_d = 1.3;
const SLOWEST = 10;
export const FASTEST = 84;
/** Flows are read in steps of this; less is none. */
export const FLOW_STEP_m3_d = 0.01;

/** Speed of the dashes in a pipe, units/s; 0 only where nothing flows. */
export function dashSpeed(flow_m3_d: number): number {
  return flow_m3_d > 0 ? Math.max(SLOWEST, Math.min(FASTEST, flow_m3_d * SPEED_PER_m3_d)) : 0;
}
