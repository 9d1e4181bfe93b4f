// The sludge bed's shape and what the stage does with solids, from the state at a cut.
import { pow } from '../../numerics/elementary';
import type { Cell } from '../cell';
import { CLOG, FF, FI, FS, LEAF, MF, MI, MS, PO, SF, SI, SL, UF, UI, US } from '../components';
import type { Values } from '../parameters/values';
import { ID } from '../processes/catalogue';
import type { StageType } from '../stages/stageType';

/** What a person set on the stage. */
export interface StageSettings { outlet: 'bottomLift' | 'surface'; lamp_W: number; mesh_um: number }

/** g dry of sludge in a cell */
export const sludgeDry = (y: Float64Array, o: number, values: Values): number =>
  values.matter.organicDry * (y[o + SF] + y[o + SL]) + values.matter.inertDry * y[o + SI];

/** Share of a filter's room that is taken, in units of what lets half the water past. */
export const clogging = (cell: Cell, y: Float64Array, o: number, values: Values): number =>
  cell.filter ? y[o + CLOG] / (values.kinetics.matCapacity * cell.volume * cell.filterRoom) : 0;

/** Sludge against room, 0–1 and beyond. */
export const sludgeFill = (cell: Cell, y: Float64Array, o: number, values: Values): number =>
  cell.sludgeRoom > 0 ? sludgeDry(y, o, values) / (values.kinetics.sludgeDensity * 1000 * cell.sludgeRoom) : 0;

/** Below this much sludge (m³) no bed is reckoned; its pore water waits. */
const LEAST_BED = 1e-7;

/**
 * Sets bed geometry and solids constants.
 * @param gas_L_d gas that left the bed lately
 */
export function setSolidsForcing(cell: Cell, type: StageType, y: Float64Array, o: number, values: Values, gas_L_d: number, settings: StageSettings): void {
  const volume = sludgeDry(y, o, values) / (values.kinetics.sludgeDensity * 1000);
  if (cell.sludgeRoom > 0 && (volume > LEAST_BED || y[o + PO] > 1e-6)) {
    cell.bedVolume = Math.max(volume, LEAST_BED);
    // A cone's sludge surface grows with the power 2/3 of its filling; a floor's is the part that is covered.
    const share = Math.min(1, cell.bedVolume / cell.sludgeRoom);
    cell.bedArea = cell.cone ? cell.floor * Math.max(0.001, pow(share, 2 / 3)) : cell.floor * Math.min(1, Math.max(0.001, cell.bedVolume / (cell.floor * values.stages.floorLayer)));
    cell.bedThickness = cell.bedVolume / cell.bedArea;
  } else {
    cell.bedVolume = 0;
    cell.bedArea = 0;
    cell.bedThickness = 0;
  }
  cell.settle0 = cell.settle1 = cell.settle2 = 0;
  cell.catch0 = cell.catch1 = cell.catch2 = 0;
  cell.shear = cell.stir = cell.release = cell.kill = 0;
  const airPerVolume = cell.air / 1.44 / cell.volume;
  const { organicDry, inertDry } = values.matter;
  const fines = organicDry * (y[o + FF] + y[o + FS] + y[o + UF] + y[o + US]) + inertDry * (y[o + FI] + y[o + UI]);
  type.solids(cell, {
    values, fill: sludgeFill(cell, y, o, values), clog: clogging(cell, y, o, values), leaf: cell.bed ? y[o + LEAF] / cell.floor : 0,
    gas: cell.bedArea > 0 ? gas_L_d / cell.bedArea : 0, airPerVolume, fines: fines / cell.volume,
    mat: (organicDry * (y[o + MF] + y[o + MS]) + inertDry * y[o + MI]) / cell.floor,
    outlet: settings.outlet, lamp_W: settings.lamp_W, mesh_um: settings.mesh_um,
  });
}

const known = new Map<number, Int32Array>();

/** The processes that can run in a cell as it is forced now; those of components solved alone first, by component. */
export function activeProcesses(cell: Cell, alone: Int32Array): Int32Array {
  const catches = cell.catch0 + cell.catch1 + cell.catch2 > 0;
  const signs = [
    cell.bedThickness > 0, cell.settle0 + cell.settle1 + cell.settle2 > 0, catches, catches || cell.release > 0 || cell.filter, cell.shear > 0,
    cell.stir > 0 && cell.sludgeRoom > 0, cell.release > 0, cell.filter, cell.fish, cell.bed, cell.kill > 0,
  ];
  let key = (cell.doseRate > 0 ? cell.doseProcess + 1 : 0) << signs.length;
  for (let i = 0; i < signs.length; i++) if (signs[i]) key |= 1 << i;
  const found = known.get(key);
  if (found) return found;
  const made = listActive(signs, cell.doseRate > 0 ? cell.doseProcess : -1, alone);
  known.set(key, made);
  return made;
}

function listActive(signs: readonly boolean[], dose: number, alone: Int32Array): Int32Array {
  const [bed, settles, catches, holds, shears, stirs, releases, filter, fish, plants, kills] = signs;
  const off = new Set<number>();
  const range = (from: number, to: number, on: boolean): void => { if (!on) for (let p = from; p <= to; p++) off.add(p); };
  range(ID.hydrolysisSludgeFast, ID.hydrolysisSludgeSlow, bed);
  range(ID.sludgeAerobic, ID.poreSulfideGasOut, bed);
  range(ID.settleCoarseFast, ID.settleSuperfineInert, settles);
  range(ID.catchCoarseFast, ID.catchSuperfineInert, catches);
  range(ID.hydrolysisCaughtFast, ID.hydrolysisCaughtSlow, holds);
  range(ID.clumpDenitrificationFast, ID.clumpDenitrificationSlow, holds);
  range(ID.shearFast, ID.shearInert, shears);
  range(ID.stirFast, ID.stirInert, stirs);
  range(ID.releaseFast, ID.releaseInert, releases);
  range(ID.filterUnclogging, ID.filterUnclogging, filter);
  range(ID.fishGrowth, ID.fishBasal, fish);
  range(ID.uptakeNitrate, ID.rootRelaxation, plants);
  range(ID.freeBacteriaKill, ID.freeBacteriaKill, kills);
  for (let p = ID.doseCalciumHydroxide; p <= ID.dosePotassiumBicarbonate; p++) if (p !== dose) off.add(p);
  const on = Array.from(alone, (_, p) => p).filter((p) => !off.has(p));
  const order = (p: number): number => (alone[p] >= 0 ? alone[p] : 1000);
  return Int32Array.from(on.sort((a, b) => order(a) - order(b) || a - b));
}
