// Benches that the handbook tests share: one vessel run once through at pinned conditions, as a publication would, and how to read it.
import { ID, PROCESSES } from '../../src/model/processes/catalogue';
import type { ProcessName } from '../../src/model/processes/catalogue';
import type { Composition, Plan, Rig, StageSpec } from '../../src/season/plan';
import { readCell } from '../../src/season/reading';
import type { Reading } from '../../src/season/reading';
import { Season } from '../../src/season/season';
import type { DayChunk } from '../../src/season/trajectory';
import { keptPlan } from '../season/plans';

export interface Bench {
  stage: StageSpec;
  rig: Rig;
  days: number;
  change?: Partial<Plan>;
}

/** A plan of one vessel in a rig, with a mature film. */
export function benchPlan({ stage, rig, days, change }: Bench): Plan {
  return { ...keptPlan('nitrification-rig'), days, loop: [stage], rig, ...change };
}

/** Lives a plan day by day to its end, or to a day before; `each` sees the season after each day and that day's extents. */
export function liveThrough(
  plan: Plan,
  each: (season: Season, extents: Float64Array) => void = () => undefined,
  untilDay = plan.days,
): Season {
  return liveThroughChunks(
    plan,
    ({ extents }, season) => {
      each(season, extents);
    },
    untilDay,
  );
}

/** As `liveThrough`, with the whole day: its hours, its events. */
export function liveThroughChunks(plan: Plan, each: (chunk: DayChunk, season: Season) => void, untilDay = plan.days): Season {
  const season = new Season(plan);
  while (season.day < untilDay) each(season.liveDay(), season);
  return season;
}

/** What a process did in a cell in a day, in its own unit (g N, g COD, g S …). */
export const did = (extents: Float64Array, process: ProcessName, cell = 0): number => extents[cell * PROCESSES + ID[process]];

/** Water that feeds a nitrifying film and lacks nothing it needs, with base to spare. */
export const feedWater = (change: Composition): Composition => ({
  pH: 7.5,
  alkalinity_meq_L: 6,
  O2_mg_L: 8,
  PO4_mgP_L: 2,
  SO4_mgS_L: 5,
  K_mg_L: 5,
  Ca_mg_L: 50,
  ...change,
});

/** Much water over little film: the vessel stands near what flows in. 12 m² of media and 0.5 m² of wall. */
export const mediaVessel: StageSpec = { id: 'media', kind: 'degassingTank', volume_m3: 0.1, media_m3: 0.02, air_L_min: 0 };

/** Ammonia that a film oxidises on the last day, g N/m²/d, with what stands in the water, once `days` have passed. */
export function nitrification(rig: Rig, days: number, change: Partial<Plan> = {}): { rate: number; season: Season; drift: number } {
  const rates: number[] = [];
  const season = liveThrough(benchPlan({ stage: mediaVessel, rig, days, change }), (s, extents) => {
    rates.push(did(extents, 'nitritation') / s.runtime.assembly.cells[0].film);
  });
  const rate = rates[rates.length - 1];
  return { rate, season, drift: Math.abs(rate / rates[Math.max(0, rates.length - 6)] - 1) };
}

export interface FishBench {
  inflow: Composition;
  hold: Rig['hold'];
  days: number;
  fish: { species: Plan['fish'][number]['species']; number: number; mass_g: number };
  /** offered in three meals, g/d */
  feed_g_d: number;
  flow_m3_d?: number;
}

/** Water of middling hardness and chloride that fish are kept in. */
const fishWater = (change: Composition): Composition => ({ alkalinity_meq_L: 2, Ca_mg_L: 50, Cl_mg_L: 50, ...change });

/** A cubic metre of fish in water that is renewed so fast that it stays what flows in; surfaces bare, no air given. */
export function fishTankPlan({ inflow, hold, days, fish, feed_g_d, flow_m3_d = 500 }: FishBench): Plan {
  return benchPlan({
    stage: { id: 'fish', kind: 'fishTank', volume_m3: 1, air_L_min: 0 },
    days,
    rig: { inflow: fishWater(inflow), flow_m3_d, hold },
    change: {
      start: { water: 'source', biofilm: 'bare' },
      fish: [{ tank: 'fish', day: 0, ...fish }],
      actions: [{ day: 0, hour: 0, do: 'feed', tank: 'fish', g_d: feed_g_d, meals_h: [8, 12, 16] }],
    },
  });
}

/**
 * How much of a varied amount (the last key of the guess) must flow in for a reading of the water to stand at a value.
 * Secant steps from the guess; each is a day of much water through an empty tank.
 */
export function standingAt(guess: Composition, hold: Rig['hold'], read: (water: Reading) => number, wanted: number): number {
  const keys = Object.keys(guess) as (keyof Composition)[];
  const key = keys[keys.length - 1];
  const plan = fishTankPlan({
    inflow: guess,
    hold,
    days: 1,
    fish: { species: 'tilapia', number: 1, mass_g: 1 },
    feed_g_d: 0,
    flow_m3_d: 2000,
  });
  const reading = (amount: number): number => {
    const season = liveThrough({ ...plan, fish: [], rig: plan.rig && { ...plan.rig, inflow: { ...plan.rig.inflow, [key]: amount } } });
    return read(readCell(season.runtime, season.state.y, 0));
  };
  let [a, b] = [0.5 * (guess[key] ?? 0), guess[key] ?? 0];
  let atA = reading(a);
  for (let i = 0; i < 6; i++) {
    const atB = reading(b);
    if (Math.abs(atB - wanted) < 1e-4 * wanted || atB === atA) break;
    [a, b, atA] = [b, Math.max(0, b + ((wanted - atB) * (b - a)) / (atB - atA)), atB];
  }
  return b;
}
