// What can be read off a cell at a moment: pH and shares from the state, for output rows and for how fish fare.
import { ALK, CA, CF, CH4, CL, FE, K, MG, NO2, NO3, O2, OP, P, S2, SS, STATES, TAN } from '../model/components';
import type { FishWater } from '../model/organisms/fish/comfort';
import { enterCell, makeWorkspace } from '../model/network/slope';
import type { Workspace } from '../model/processes/workspace';
import { log10 } from '../numerics/elementary';
import type { Runtime } from './runtime';

export interface Reading {
  TAN: number; NO2: number; NO3: number; NH3: number; O2: number; CO2: number; pH: number; alkalinity: number; H2S: number; CH4: number;
  organics: number; coarse: number; fine: number; P: number; K: number; Ca: number; Fe: number; Mg: number; chloride: number; opportunists: number;
}

const workspaces = new WeakMap<Runtime, Workspace>();

/** Reads one cell of a state; g/m³ (= mg/L), H2S g S/m³ un-ionised, alkalinity eq/m³. */
export function readCell(runtime: Runtime, y: Float64Array, cell: number): Reading {
  let w = workspaces.get(runtime);
  if (!w) {
    w = makeWorkspace(runtime.data);
    workspaces.set(runtime, w);
  }
  const { data, dry } = runtime;
  enterCell(w, data, cell, y, 1);
  const o = cell * STATES;
  const v = w.perVolume;
  let coarse = 0, fine = 0;
  for (let part = 0; part < 3; part++) {
    coarse += y[o + CF + part] * dry[CF + part];
    fine += y[o + CF + 3 + part] * dry[CF + 3 + part] + y[o + CF + 6 + part] * dry[CF + 6 + part];
  }
  return {
    TAN: y[o + TAN] * v, NO2: y[o + NO2] * v, NO3: y[o + NO3] * v, NH3: y[o + TAN] * v * w.nh3, O2: y[o + O2] * v, CO2: w.co2 * 44.009, pH: 3 - log10(w.h),
    alkalinity: y[o + ALK] * v, H2S: y[o + S2] * v * w.h2s, CH4: (y[o + CH4] * v) / 4, organics: y[o + SS] * v, coarse: coarse * v, fine: fine * v,
    P: y[o + P] * v, K: y[o + K] * v, Ca: y[o + CA] * v, Fe: y[o + FE] * v, Mg: y[o + MG] * v, chloride: y[o + CL] * v, opportunists: y[o + OP] * v,
  };
}

export const fishWater = (r: Reading, T_C: number): FishWater => ({
  NH3: r.NH3, NO2: r.NO2, H2S: r.H2S, CO2: r.CO2, O2: r.O2, pH: r.pH, chloride: r.chloride, solids: r.coarse + r.fine, opportunists: r.opportunists, T_C,
});
