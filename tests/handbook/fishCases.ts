// Fish on the bench, as published trials kept them: growth in ammonia and in nitrate, appetite at low oxygen, growth over months, oxygen
// when the air fails.
import { FISH } from '../../src/model/components';
import { fullRation, warmthOfAppetite } from '../../src/model/organisms/fish/comfort';
import { valuesWith } from '../../src/catalogue/values';
import { VARIABLES } from '../../src/season/trajectory';
import type { Composition, SpeciesKind } from '../../src/season/plan';
import { readCell } from '../../src/season/reading';
import type { Reading } from '../../src/season/reading';
import { keptPlan } from '../season/plans';
import { fishTankPlan, liveThrough, liveThroughChunks, standingAt } from './bench';

/** % of their mass that rainbow trout want in a day. */
export function troutRation(T_C: number, mass_g: number): number {
  const { rainbowTrout } = valuesWith().fish;
  return 100 * fullRation(rainbowTrout, mass_g) * warmthOfAppetite(rainbowTrout, T_C);
}

const AMMONIA_START_G = 11;

/**
 * Mean gain of a tilapia of 11 g in 35 days at a steady un-ionised ammonia (mg N/L), g, fed to satiation at 28 °C; and what stood in the
 * water.
 */
export function gainInAmmonia(NH3_mgN_L: number): { gain: number; found: number } {
  const pH = 8;
  const hold = { T_C: 28, pH, O2_mg_L: 7 };
  const inflow = {
    pH,
    TAN_mgN_L: NH3_mgN_L === 0 ? 0 : standingAt({ pH, TAN_mgN_L: 10 }, hold, (water) => water.NH3, NH3_mgN_L),
    O2_mg_L: 7,
  };
  const season = liveThrough(
    fishTankPlan({ inflow, hold, days: 35, fish: { species: 'tilapia', number: 100, mass_g: AMMONIA_START_G }, feed_g_d: 300 }),
  );
  return {
    gain: season.state.y[FISH] / season.state.fish[0].number - AMMONIA_START_G,
    found: readCell(season.runtime, season.state.y, 0).NH3,
  };
}

/** Mean gain of a tilapia in 30 days at a steady nitrate, g, and the share that lived. */
export function gainInNitrate(NO3_mgN_L: number): { gain: number; alive: number } {
  const hold = { T_C: 28, pH: 7.5, O2_mg_L: 7 };
  const season = liveThrough(
    fishTankPlan({
      inflow: { pH: 7.5, NO3_mgN_L, Na_mg_L: NO3_mgN_L * 1.64, O2_mg_L: 7 },
      hold,
      days: 30,
      fish: { species: 'tilapia', number: 100, mass_g: 30 },
      feed_g_d: 400,
    }),
  );
  const { number } = season.state.fish[0];
  return { gain: season.state.y[FISH] / number - 30, alive: number / 100 };
}

/** What fish of 100 g that are offered more than enough eat in a day at a steady oxygen, g. */
export function eatenAt(species: SpeciesKind, O2_mg_L: number): number {
  let last = 0;
  liveThrough(
    fishTankPlan({
      inflow: { pH: 7.5, O2_mg_L },
      hold: { T_C: 28, pH: 7.5, O2_mg_L },
      days: 3,
      fish: { species, number: 50, mass_g: 100 },
      feed_g_d: 500,
    }),
    ({ state }) => {
      last = state.fish[0].eatenYesterday;
    },
  );
  return last;
}

/** Thermal growth coefficient: 100 (W2^⅓ − W1^⅓)/(°C · d). */
export const growthCoefficient = (from_g: number, to_g: number, degreeDays: number): number =>
  (100 * (Math.cbrt(to_g) - Math.cbrt(from_g))) / degreeDays;

/** Mass that fish fed to satiation in good water reach, g. */
export function grownTo({ species, from_g, T_C, days }: { species: SpeciesKind; from_g: number; T_C: number; days: number }): number {
  const season = liveThrough(
    fishTankPlan({
      inflow: { pH: 7.5, O2_mg_L: 8 },
      hold: { T_C, pH: 7.5, O2_mg_L: 8 },
      days,
      fish: { species, number: 20, mass_g: from_g },
      feed_g_d: 1000,
    }),
  );
  return season.state.y[FISH] / season.state.fish[0].number;
}

/**
 * Oxygen hour by hour, mg/L, from the moment the power fails on tilapia of 100 g at 28 °C in a closed cubic metre; air kept it near 6–7
 * till then.
 */
export function afterAirFailure(kg_m3: number, fed_g_d: number): number[] {
  const kept = keptPlan('first-loop');
  const out: number[] = [];
  liveThroughChunks(
    {
      ...kept,
      days: 2,
      climate: { ...kept.climate, water_C: 28, weather: 0 },
      start: { ...kept.start, biofilm: 'bare' },
      loop: [
        { id: 'fish', kind: 'fishTank', volume_m3: 1, air_L_min: 20 * kg_m3 },
        { id: 'sump', kind: 'sump', volume_m3: 0.1 },
        { id: 'pump', kind: 'returnPump', flow_m3_h: 1 },
      ],
      side: [],
      fish: [{ tank: 'fish', species: 'tilapia', number: 10 * kg_m3, mass_g: 100, day: 0 }],
      actions: [
        { day: 0, hour: 0, do: 'feed', tank: 'fish', g_d: fed_g_d, meals_h: [8, 12, 16] },
        { day: 1, hour: 14, do: 'power', on: false },
      ],
    },
    (chunk, season) => {
      const width = season.runtime.assembly.cells.length * VARIABLES.length;
      const fish = season.stages().find(({ id }) => id === 'fish')?.first ?? 0;
      if (chunk.day === 1)
        for (let hour = 14; hour <= 18; hour++)
          out.push(chunk.hourly[(hour - 1) * width + fish * VARIABLES.length + VARIABLES.indexOf('O2_mg_L')]);
    },
  );
  return out;
}

/** °C at which a species is at ease. */
export const comfortable = (species: SpeciesKind): number => valuesWith().fish[species].optimumLow;

/** Share that lives through an exposure; unfed, in water that is renewed two thousand times a day. */
export function alive(species: SpeciesKind, inflow: Composition, days: number, check: (water: Reading) => void = () => undefined): number {
  const plan = fishTankPlan({
    inflow,
    hold: { T_C: comfortable(species), ...(inflow.O2_mg_L === undefined ? {} : { O2_mg_L: inflow.O2_mg_L }) },
    days,
    fish: { species, number: 1000, mass_g: 10 },
    feed_g_d: 0,
    flow_m3_d: 2000,
  });
  const season = liveThrough(plan, (s) => {
    check(readCell(s.runtime, s.state.y, 0));
  });
  return season.state.fish[0].number / 1000;
}
