// One hourly row of output for every cell.
import {
  ALK,
  CA,
  CH4,
  FE,
  FISH,
  K,
  LEAF,
  MF,
  MG,
  MI,
  MS,
  NO2,
  NO3,
  O2,
  OP,
  P,
  QCA,
  QFE,
  QK,
  QN,
  QP,
  ROOT,
  ROT,
  S2,
  SS,
  TAN,
} from '../model/components';
import { clogging, sludgeDry } from '../model/forcing/solidsForcing';
import { enterCell } from '../model/network/slope';
import type { CropAt } from '../model/organisms/plants/cropAt';
import type { Workspace } from '../model/processes/workspace';
import { log10 } from '../numerics/elementary';
import { CO2_MOLAR, COD_PER_CH4, coarseDry, fineDry, readEntered, readingSpace } from './reading';
import type { Reading } from './reading';
import type { BedState, RunState } from './runState';
import type { Runtime } from './runtime';
import { VARIABLES } from './trajectory';
import { PER_L_MIN } from '../model/forcing/gasForcing';
import { breathOf, type RootBreath } from '../model/processes/roots';
import type { Cell } from '../model/cell';
import type { Variable } from './trajectory';

const I = Object.freeze(Object.fromEntries(VARIABLES.map((name, i) => [name, i]))) as Readonly<Record<Variable, number>>;

/** Writes the hourly rows of a season's cells. What stands still between cuts is written once a cut, and copied. */
export class Rows {
  /** values in one hour of all cells */
  readonly width: number;
  private readonly still: Float32Array;
  private readonly beds: (BedState | undefined)[] = [];
  private readonly readings: Record<number, Reading> = {};
  private readonly breath: RootBreath = { surface: 0, share: 0, rise: 0, area: 0, coat: 0 };

  constructor(private readonly runtime: Runtime) {
    this.width = runtime.assembly.cells.length * VARIABLES.length;
    this.still = new Float32Array(this.width);
  }

  private rootOxygen(y: Float64Array, o: number, cell: Cell): number {
    return breathOf(y, o, this.runtime.data.kinetics, cell, Math.max(0, y[o + O2] / cell.volume), this.breath).surface;
  }

  /** Takes down what stands still until the next cut. */
  fix(state: RunState, levels: Float64Array): void {
    const { assembly, values } = this.runtime;
    assembly.cells.forEach((cell, c) => {
      const row = c * VARIABLES.length;
      const { still } = this;
      still[row + I.T_C] = state.T_C;
      still[row + I.flow_m3_d] = cell.flow;
      still[row + I.level_m] = levels[c];
      still[row + I.air_L_min] = cell.air / PER_L_MIN;
      still[row + I.dose_g_d] = cell.doseRate;
      still[row + I.spill_m3_d] = spillOf(this.runtime, state, c);
      const bed = cell.bed ? state.beds.find((it) => c >= it.first && c < it.first + it.cells) : undefined;
      this.beds[c] = bed;
      still[row + I.cut_kg] = bed ? bed.cut / values.crops[bed.crop].dryShare / 1000 / bed.cells : 0;
      if (!cell.fish) return;
      let number = 0,
        eaten = 0;
      for (const group of state.fish) {
        if (group.cell !== c) continue;
        number += group.number;
        eaten += group.eatenYesterday;
      }
      still[row + I.number] = number;
      still[row + I.eaten_g_d] = eaten;
    });
  }

  /**
   * Writes the rows of all cells from `from` on.
   * @returns the readings of fish tanks by cell, which hazards and scores use too; good until the next call
   */
  write(state: RunState, y: Float64Array, out: Float32Array, from: number): Readonly<Record<number, Reading>> {
    const { runtime } = this;
    const { cells } = runtime.assembly;
    const { h1 } = runtime.data;
    const w = readingSpace(runtime);
    out.set(this.still, from);
    for (let c = 0; c < cells.length; c++) {
      const ahead = h1[c];
      enterCell(w, runtime.data, c, y, 1);
      h1[c] = ahead; // the steps go on from where they are, not from this hour
      if (cells[c].fish) this.readings[c] = readEntered(runtime.dry, w);
      this.writeRow(state, w, c, out, from + c * VARIABLES.length);
    }
    return this.readings;
  }

  /**
   * One cell's row, from the workspace that has entered it. Straight from the state: an object for each would be a fifth of a season's
   * garbage.
   */
  private writeRow(state: RunState, w: Workspace, c: number, out: Float32Array, row: number): void {
    const { assembly, values, dry } = this.runtime;
    const cell = assembly.cells[c];
    const { y, o, perVolume: v } = w;
    out[row + I.TAN_mgN_L] = y[o + TAN] * v;
    out[row + I.NO2_mgN_L] = y[o + NO2] * v;
    out[row + I.NO3_mgN_L] = y[o + NO3] * v;
    out[row + I.NH3_mgN_L] = y[o + TAN] * v * w.nh3;
    out[row + I.O2_mg_L] = y[o + O2] * v;
    out[row + I.CO2_mg_L] = w.co2 * CO2_MOLAR;
    out[row + I.pH] = 3 - log10(w.h);
    out[row + I.alkalinity_meq_L] = y[o + ALK] * v;
    out[row + I.H2S_ug_L] = y[o + S2] * v * w.h2s * 1000;
    out[row + I.CH4_mg_L] = (y[o + CH4] * v) / COD_PER_CH4;
    out[row + I.organics_mgCOD_L] = y[o + SS] * v;
    out[row + I.solidsCoarse_mg_L] = coarseDry(dry, y, o) * v;
    out[row + I.solidsFine_mg_L] = fineDry(dry, y, o) * v;
    out[row + I.PO4_mgP_L] = y[o + P] * v;
    out[row + I.K_mg_L] = y[o + K] * v;
    out[row + I.Ca_mg_L] = y[o + CA] * v;
    out[row + I.Fe_mg_L] = y[o + FE] * v;
    const sludge = sludgeDry(y, o, values);
    out[row + I.sludge_g] = sludge;
    if (cell.sludgeRoom > 0) out[row + I.sludgeFill] = sludge / (values.kinetics.sludgeDensity * 1000 * cell.sludgeRoom);
    if (cell.filter) out[row + I.clog] = clogging(cell, y, o, values);
    const caught = y[o + MF] * dry[MF] + y[o + MS] * dry[MS] + y[o + MI] * dry[MI];
    out[row + I.caught_g] = caught;
    out[row + I.gas_L_d] = state.gas[c];
    out[row + I.freeBacteria] = y[o + OP] * v;
    out[row + I.Mg_mg_L] = y[o + MG] * v;
    if (cell.fish) {
      const number = out[row + I.number];
      let welfare = 0;
      for (const group of state.fish) if (group.cell === c) welfare += group.welfareNow * group.number;
      out[row + I.mass_g] = number > 1e-6 ? y[o + FISH] / number : 0;
      out[row + I.welfare] = number > 1e-6 ? welfare / number : 0;
    }
    if (cell.bed) {
      out[row + I.leafDry_g_m2] = y[o + LEAF] / cell.floor;
      out[row + I.rootHealth] = y[o + ROOT];
      out[row + I.rootRot] = y[o + ROT];
      out[row + I.rootO2_mg_L] = this.rootOxygen(y, o, cell);
      out[row + I.rootMat_g_m2] = caught / (cell.floor + cell.mediaArea);
      if (this.beds[c]) out[row + I.leafStore] = scarcest(y, o, cell.cropAt);
    }
  }
}

/** m³/d over the rim of the stage that a cell is the last of. */
function spillOf(runtime: Runtime, state: RunState, c: number): number {
  const { circuit } = runtime;
  if (!circuit) return 0;
  for (let i = 0; i < circuit.stages.length; i++) {
    const { entry } = circuit.stages[i];
    if (entry.first + entry.cells - 1 === c) return state.run.spill_m3_d[i];
  }
  return 0;
}

/** How full the scarcest of a crop's stores is, 0–1. */
function scarcest(y: Float64Array, o: number, crop: CropAt): number {
  const leaf = y[o + LEAF];
  if (!(leaf > 0)) return 0;
  const least = Math.min(
    y[o + QN] / crop.roomN,
    y[o + QP] / crop.roomP,
    y[o + QK] / crop.roomK,
    y[o + QCA] / crop.roomCa,
    y[o + QFE] / crop.roomFe,
  );
  return Math.min(1, Math.max(0, least / leaf));
}
