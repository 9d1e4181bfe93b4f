// Scores as they accrue: fish health, harvest against what the same climate and feed would yield, stewardship.
import { GUT, LEAF, STATES } from '../model/components';
import { contentOf } from '../model/ledger';
import { lightGrowth } from '../model/organisms/plants/growth';
import { idealGain } from './meals';
import type { Plan } from './plan';
import type { RunState } from './runState';
import type { Runtime } from './runtime';
import type { Scores } from './trajectory';

/** Fish health = 100 × survival × mean welfare. */
export const fishHealthScore = (survival: number, meanWelfare: number): number => 100 * survival * meanWelfare;

/**
 * Harvest = 100 × (w·plants/plants* + (1 − w)·gain/gain*), each share between 0 and 1; a part with no ideal counts nothing.
 * @param plantsWeight w, 0–1
 */
export function harvestScore(s: Pick<Scores, 'plants_kg' | 'plantsIdeal_kg' | 'gain_kg' | 'gainIdeal_kg'>, plantsWeight: number): number {
  const share = (real: number, ideal: number): number => (ideal > 0 ? Math.min(1, Math.max(0, real / ideal)) : 0);
  return 100 * (plantsWeight * share(s.plants_kg, s.plantsIdeal_kg) + (1 - plantsWeight) * share(s.gain_kg, s.gainIdeal_kg));
}

/** The weight of plants where nobody set one: half, or all or nothing where a plan grows only one of the two. */
export function usualPlantsWeight(plan: Plan): number {
  const grows = plan.loop.some((stage) => stage.crop !== undefined) || plan.actions.some((action) => action.do === 'plant');
  const keeps = plan.fish.length > 0 || plan.actions.some((action) => action.do === 'stock');
  return grows && keeps ? 0.5 : grows ? 1 : 0;
}

/** Lets the ideal fish and the ideal beds live one more day. */
export function liveIdealDay(runtime: Runtime, state: RunState, light: number): void {
  const { values, assembly } = runtime;
  for (const fish of state.fish) {
    // each group's share of the feed by its mass
    const all = state.fish.reduce((sum, other) => sum + (other.tank === fish.tank ? other.idealMass : 0), 0);
    const feed = all > 0 ? ((state.feeds.find((it) => it.tank === fish.tank)?.g_d ?? 0) * fish.idealMass) / all : 0;
    fish.idealMass = Math.max(0, fish.idealMass + idealGain(runtime, fish, feed, state.T_C, fish.stocked - fish.takenNumber));
  }
  for (const bed of state.beds) {
    const area = assembly.cells[bed.first].floor * bed.cells;
    const crop = values.crops[bed.crop];
    const falls = state.lights[bed.stage] ?? light;
    // In six steps, since a young crop doubles in days.
    for (let i = 0; i < 6; i++)
      bed.ideal += (lightGrowth(crop, bed.ideal / area, falls, state.T_C, values.heat.photonsPerJoule) * area) / 6;
    const ripe = bed.plants * crop.ripe;
    if (bed.ideal < ripe) continue;
    if (!bed.replant) bed.ideal = ripe;
    else {
      bed.idealCut += bed.ideal * crop.cutShare * crop.harvestShare;
      bed.ideal = crop.cutShare >= 1 ? bed.plants * crop.transplant : bed.ideal * (1 - crop.cutShare);
    }
  }
}

export function scoresNow(runtime: Runtime, state: RunState, plantsWeight: number): Scores {
  const { values, assembly } = runtime;
  let stocked = 0,
    alive = 0,
    welfareHours = 0,
    hours = 0,
    gain = 0,
    ideal = 0;
  for (const fish of state.fish) {
    stocked += fish.stocked;
    // Fish taken alive count as survivors.
    alive += fish.number + fish.takenNumber;
    welfareHours += fish.welfareHours;
    hours += fish.hours;
    gain += fish.mass + fish.takenMass - fish.stockedMass;
    ideal += fish.idealMass + fish.idealTaken - fish.stockedMass;
  }
  let plants = 0,
    plantsIdeal = 0;
  for (const bed of state.beds) {
    const { dryShare, cutShare, harvestShare } = values.crops[bed.crop];
    const fresh = 1 / dryShare / 1000;
    let standing = 0;
    for (let c = bed.first; c < bed.first + bed.cells; c++) standing += state.y[c * STATES + LEAF];
    plants += (bed.cut + standing * cutShare * harvestShare) * fresh;
    plantsIdeal += (bed.idealCut + bed.ideal * cutShare * harvestShare) * fresh;
  }
  const survival = stocked > 0 ? Math.min(1, alive / stocked) : 1;
  const meanWelfare = hours > 0 ? welfareHours / hours : 1;
  const volume = assembly.cells.reduce((sum, cell) => sum + cell.volume, 0);
  const days = Math.max(1, state.day);
  const parts = { plants_kg: plants, plantsIdeal_kg: plantsIdeal, gain_kg: gain / 1000, gainIdeal_kg: ideal / 1000 };
  // Stewardship: water against 3 % of the loop a day, nitrogen let go against nitrogen fed, energy against 1 kWh/m³/d.
  const water = 1 / (1 + state.waterUsed / days / (0.03 * volume));
  const fedN = state.put[GUT] * values.matter.feedN;
  // what ran over a rim is discharged too
  const spilled = runtime.plan.rig ? new Float64Array(0) : runtime.data.released;
  const lostN = state.discharged.nitrogen + contentOf(runtime.content, spilled, 1);
  const lostSolids = state.discharged.solids + spilled.reduce((sum, amount, i) => sum + amount * runtime.dry[i], 0);
  const nitrogen = fedN > 0 ? Math.max(0, 1 - lostN / fedN) : 1;
  const energy = 1 / (1 + state.energy_kWh / days / volume);
  return {
    fishHealth: fishHealthScore(survival, meanWelfare),
    survival,
    meanWelfare,
    harvest: harvestScore(parts, plantsWeight),
    ...parts,
    stewardship: (100 * (water + nitrogen + energy)) / 3,
    waterUsed_L: state.waterUsed * 1000,
    nitrogenDischarged_g: lostN,
    solidsDischarged_g: lostSolids,
    energy_kWh: state.energy_kWh,
    work_h: state.work_h,
  };
}
