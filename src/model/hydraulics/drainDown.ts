// What runs down when the pump stops: water above the lips and in the pipes falls to the pump's tank, which holds it or does not.
import type { LevelStage } from './levels';

/** Water that stands above its outlet while the loop runs. */
export interface HeldWater {
  area_m2: number;
  /** height of the water over the lip it will fall to */
  above_m: number;
  /** share of the space that is water: 1 in a tank, less in a bed of gravel */
  voids: number;
}

export interface DrainDown {
  /** water that falls into the pump's tank, m³ */
  falls_m3: number;
  /** space between the running level and the rim of the pump's tank, m³ */
  free_m3: number;
  holds: boolean;
  spills_m3: number;
  /** level of the pump's tank at rest, m */
  level_m: number;
  /** level of every stage at rest, m, in their order */
  rest_m: number[];
}

/** Water that runs down at a stop, m³: Σ plan area × height over the lip × voids, and what the pipes hold. */
export const drainDown_m3 = (held: readonly HeldWater[], pipes_m3: number): number =>
  held.reduce((sum, { area_m2, above_m, voids }) => sum + area_m2 * Math.max(0, above_m) * voids, pipes_m3);

/**
 * A stop of the pump: every stage falls to its lip, or no further than the water of a next stage that stands higher.
 * @param stages in flow order, the pump's tank last, its `overflow_m` the level it stood at
 * @param level_m running levels of the stages
 * @param pipes_m3 water in pipes that run empty
 */
export function stopOfPump(stages: readonly LevelStage[], level_m: readonly number[], pipes_m3: number): DrainDown {
  const last = stages.length - 1;
  const rest_m = [...level_m];
  for (let i = last - 1; i >= 0; i--) {
    rest_m[i] = Math.min(level_m[i], Math.max(stages[i].overflow_m, rest_m[i + 1]));
  }
  const held = stages.slice(0, last).map(({ area_m2 }, i) => ({ area_m2, above_m: level_m[i] - rest_m[i], voids: 1 }));
  const falls_m3 = drainDown_m3(held, pipes_m3);
  const tank = stages[last];
  const free_m3 = Math.max(0, (tank.rim_m - level_m[last]) * tank.area_m2);
  const spills_m3 = Math.max(0, falls_m3 - free_m3);
  rest_m[last] = level_m[last] + (falls_m3 - spills_m3) / tank.area_m2;
  return { falls_m3, free_m3, holds: spills_m3 === 0, spills_m3, level_m: rest_m[last], rest_m };
}

/** How far a sump of this volume is too small for what falls into it and what the pump needs, m³; 0 if it is large enough. */
export const sumpLacks_m3 = (sumpVolume_m3: number, falls_m3: number, pumpLeast_m3: number): number =>
  Math.max(0, falls_m3 + pumpLeast_m3 - sumpVolume_m3);
