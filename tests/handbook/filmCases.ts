// Mature nitrifying films on the bench: how fast they take ammonia at a concentration, in warmth, beside organics.
import { readCell } from '../../src/season/reading';
import { keptPlan } from '../season/plans';
import { feedWater, liveThrough, nitrification } from './bench';

/** Zhu & Chen 1999 at 27.2 °C, g N/m²/d at S mg N/L. */
export const fit = (S: number): number => (1859 * (S - 0.07)) / (S + 1.93) / 1000;

/** Ammonia taken at rest, g N/m²/d, and the concentration in the tank, g N/m³, for one concentration of the inflow. */
export function atRest(inflow: number): { S: number; rate: number } {
  const kept = keptPlan('nitrification-rig');
  // much water over little film: the tank stands near what flows in
  const plan = {
    ...kept,
    days: 80,
    loop: [{ ...kept.loop[0], volume_m3: 0.1, media_m3: 0.02, air_L_min: 0 }],
    rig: kept.rig && { ...kept.rig, flow_m3_d: 24, inflow: { ...kept.rig.inflow, TAN_mgN_L: inflow } },
  };
  const season = liveThrough(plan);
  const S = readCell(season.runtime, season.state.y, 0).TAN;
  return { S, rate: (24 * (inflow - S)) / season.runtime.assembly.cells[0].film };
}

/** Rise of a mature film's rate for each °C, as a share of its rate at 20 °C. */
export function perDegree(TAN_mgN_L: number, O2: (T_C: number) => number): number {
  const [cold, at20, warm] = [17, 20, 23].map((T_C) => {
    const { rate, drift } = nitrification(
      { inflow: feedWater({ TAN_mgN_L }), flow_m3_d: 24, hold: { T_C, pH: 7.5, O2_mg_L: O2(T_C) } },
      150,
    );
    if (drift > 2e-3) throw new Error(`not at rest: ${drift}`);
    return rate;
  });
  return (warm - cold) / 6 / at20;
}

const FLOW = 24; // m³/d
const HOLD = { T_C: 20, pH: 7.5, O2_mg_L: 8 };
/** Inflow that leaves the clean vessel near 10 mg/L. */
const TAN_IN = 10.6;

/** A mature film near 10 mg/L of ammonia nitrogen with organics in what flows in. */
export const withOrganics = (COD_mg_L: number): ReturnType<typeof nitrification> =>
  nitrification({ inflow: feedWater({ TAN_mgN_L: TAN_IN, organics_mgCOD_L: COD_mg_L }), flow_m3_d: FLOW, hold: HOLD }, 120);

/** The fall of nitrification where the film is given this many g COD for each g N it took when clean. */
export function fallWith(clean: ReturnType<typeof nitrification>, ratio: number): { fall: number; drift: number } {
  const { rate, drift } = withOrganics((ratio * clean.rate * clean.season.runtime.assembly.cells[0].film) / FLOW);
  return { fall: 1 - rate / clean.rate, drift };
}

/**
 * g N/m²/d that a mature film takes where this much ammonia nitrogen stands, mg/L, at 27.2 °C unless told: by two runs and a line between
 * them.
 */
export function filmRate(standing: number, T_C = 27.2): number {
  const run = (inflow: number): [number, number] => {
    const { rate, season } = nitrification(
      { inflow: feedWater({ TAN_mgN_L: inflow }), flow_m3_d: 24, hold: { T_C, pH: 7.5, O2_mg_L: 8 } },
      80,
    );
    return [readCell(season.runtime, season.state.y, 0).TAN, rate];
  };
  const [a, b] = [run(standing * 1.1), run(standing * 1.5)];
  return a[1] + ((b[1] - a[1]) * (standing - a[0])) / (b[0] - a[0]);
}
