// What can be read off a cell at a moment: pH and shares from the state, for output rows and for how fish fare.
import { ALK, CA, CF, CH4, CL, FE, K, MG, NO2, NO3, O2, OP, P, S2, SS, TAN } from '../model/components';
import type { FishWater } from '../model/organisms/fish/comfort';
import { enterCell, makeWorkspace } from '../model/network/slope';
import type { Workspace } from '../model/processes/workspace';
import { log10 } from '../numerics/elementary';
import type { Runtime } from './runtime';

export interface Reading {
  TAN: number;
  NO2: number;
  NO3: number;
  NH3: number;
  O2: number;
  CO2: number;
  pH: number;
  alkalinity: number;
  H2S: number;
  CH4: number;
  organics: number;
  coarse: number;
  fine: number;
  P: number;
  K: number;
  Ca: number;
  Fe: number;
  Mg: number;
  chloride: number;
  freeBacteria: number;
}

/** g/mol; g COD per g of methane */
export const CO2_MOLAR = 44.009,
  COD_PER_CH4 = 4;

/** g dry of coarse, and of fine and superfine solids in a cell. */
export const coarseDry = (dry: Float64Array, y: Float64Array, o: number): number =>
  y[o + CF] * dry[CF] + y[o + CF + 1] * dry[CF + 1] + y[o + CF + 2] * dry[CF + 2];
export const fineDry = (dry: Float64Array, y: Float64Array, o: number): number => coarseDry(dry, y, o + 3) + coarseDry(dry, y, o + 6);

const workspaces = new WeakMap<Runtime, Workspace>();

/** The workspace that readings of a season are made in. */
export function readingSpace(runtime: Runtime): Workspace {
  const known = workspaces.get(runtime);
  if (known) return known;
  const made = makeWorkspace(runtime.data);
  workspaces.set(runtime, made);
  return made;
}

/** Reads one cell of a state; g/m³ (= mg/L), H2S g S/m³ un-ionised, alkalinity eq/m³. */
export function readCell(runtime: Runtime, y: Float64Array, cell: number): Reading {
  const w = readingSpace(runtime);
  enterCell(w, runtime.data, cell, y, 1);
  return readEntered(runtime.dry, w);
}

/** Finds the pH of every cell as it stands: the last step left that of its beginning. */
export function settleAcidity(runtime: Runtime, y: Float64Array): void {
  const w = readingSpace(runtime);
  for (let c = 0; c < runtime.assembly.cells.length; c++) enterCell(w, runtime.data, c, y, 0);
}

/** Reads the cell that a workspace has entered. @param dry g dry per unit of each component */
export function readEntered(dry: Float64Array, w: Workspace): Reading {
  const { y, o, perVolume: v } = w;
  return {
    TAN: y[o + TAN] * v,
    NO2: y[o + NO2] * v,
    NO3: y[o + NO3] * v,
    NH3: y[o + TAN] * v * w.nh3,
    O2: y[o + O2] * v,
    CO2: w.co2 * CO2_MOLAR,
    pH: 3 - log10(w.h),
    alkalinity: y[o + ALK] * v,
    H2S: y[o + S2] * v * w.h2s,
    CH4: (y[o + CH4] * v) / COD_PER_CH4,
    organics: y[o + SS] * v,
    coarse: coarseDry(dry, y, o) * v,
    fine: fineDry(dry, y, o) * v,
    P: y[o + P] * v,
    K: y[o + K] * v,
    Ca: y[o + CA] * v,
    Fe: y[o + FE] * v,
    Mg: y[o + MG] * v,
    chloride: y[o + CL] * v,
    freeBacteria: y[o + OP] * v,
  };
}

export const fishWater = (r: Reading, T_C: number): FishWater => ({
  NH3: r.NH3,
  NO2: r.NO2,
  H2S: r.H2S,
  CO2: r.CO2,
  O2: r.O2,
  pH: r.pH,
  chloride: r.chloride,
  solids: r.coarse + r.fine,
  freeBacteria: r.freeBacteria,
  T_C,
});
