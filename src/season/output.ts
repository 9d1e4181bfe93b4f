// One hourly row of output for every cell.
import { FISH, LEAF, MF, MI, MS, ROOT, STATES } from '../model/components';
import { clogging, sludgeDry } from '../model/forcing/solidsForcing';
import { readCell } from './reading';
import type { Reading } from './reading';
import type { RunState } from './runState';
import type { Runtime } from './runtime';
import { VARIABLES } from './trajectory';
import type { Variable } from './trajectory';

const I = Object.freeze(Object.fromEntries(VARIABLES.map((name, i) => [name, i]))) as Readonly<Record<Variable, number>>;

/** Writes the rows of all cells from `from` on; returns the readings, which hazards and scores use too. */
export function writeRows(runtime: Runtime, state: RunState, y: Float64Array, levels: Float64Array, out: Float32Array, from: number): Reading[] {
  const { cells } = runtime.assembly;
  const readings: Reading[] = [];
  for (let c = 0; c < cells.length; c++) readings.push(writeRow(runtime, state, y, c, levels[c], out, from + c * VARIABLES.length));
  return readings;
}

/** One cell's row: values stand in the order of VARIABLES. */
function writeRow(runtime: Runtime, state: RunState, y: Float64Array, c: number, level: number, out: Float32Array, row: number): Reading {
  const { assembly, values, dry } = runtime;
  const cell = assembly.cells[c];
  const r = readCell(runtime, y, c);
  const o = c * STATES;
  out[row + I.TAN_mgN_L] = r.TAN;
  out[row + I.NO2_mgN_L] = r.NO2;
  out[row + I.NO3_mgN_L] = r.NO3;
  out[row + I.NH3_mgN_L] = r.NH3;
  out[row + I.O2_mg_L] = r.O2;
  out[row + I.CO2_mg_L] = r.CO2;
  out[row + I.pH] = r.pH;
  out[row + I.alkalinity_meq_L] = r.alkalinity;
  out[row + I.H2S_ug_L] = r.H2S * 1000;
  out[row + I.CH4_mg_L] = r.CH4;
  out[row + I.organics_mgCOD_L] = r.organics;
  out[row + I.solidsCoarse_mg_L] = r.coarse;
  out[row + I.solidsFine_mg_L] = r.fine;
  out[row + I.PO4_mgP_L] = r.P;
  out[row + I.K_mg_L] = r.K;
  out[row + I.Ca_mg_L] = r.Ca;
  out[row + I.Fe_mg_L] = r.Fe;
  const sludge = sludgeDry(y, o, values);
  out[row + I.sludge_g] = sludge;
  out[row + I.T_C] = state.T_C;
  out[row + I.flow_m3_d] = cell.flow;
  out[row + I.level_m] = level;
  out[row + I.sludgeFill] = cell.sludgeRoom > 0 ? sludge / (values.kinetics.sludgeDensity * 1000 * cell.sludgeRoom) : 0;
  out[row + I.clog] = clogging(cell, y, o, values);
  const caught = y[o + MF] * dry[MF] + y[o + MS] * dry[MS] + y[o + MI] * dry[MI];
  out[row + I.caught_g] = caught;
  out[row + I.gas_L_d] = state.gas[c];
  out[row + I.air_L_min] = cell.air / 1.44;
  out[row + I.dose_g_d] = cell.doseRate;
  if (cell.fish) {
    const fish = state.fish.find((group) => group.cell === c);
    const number = fish?.number ?? 0;
    out[row + I.number] = number;
    out[row + I.mass_g] = number > 0 ? y[o + FISH] / number : 0;
    out[row + I.eaten_g_d] = fish?.eatenYesterday ?? 0;
    out[row + I.welfare] = fish?.welfareNow ?? 0;
  }
  if (cell.bed) {
    const bed = state.beds.find((it) => c >= it.first && c < it.first + it.cells);
    out[row + I.leafDry_g_m2] = y[o + LEAF] / cell.floor;
    out[row + I.rootHealth] = y[o + ROOT];
    out[row + I.rootMat_g_m2] = caught / (cell.floor + cell.mediaArea);
    out[row + I.cut_kg] = bed ? bed.cut / values[bed.crop].dryShare / 1000 / bed.cells : 0;
  }
  return r;
}
