// The sludge bed's shape and what the stage does with solids, from the state at a cut.
import { pow } from '../../numerics/elementary';
import type { Cell } from '../cell';
import { CLOG, FF, FI, FS, LEAF, MF, MI, MS, PO, SF, SI, SL, UF, UI, US } from '../components';
import type { Values } from '../parameters/values';
import type { StageType } from '../stages/stageType';
import { PER_L_MIN } from './gasForcing';

/** What a person set on the stage. */
export interface StageSettings {
  outlet: 'bottomLift' | 'surface';
  lamp_W: number;
  mesh_um: number;
}

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
export function setSolidsForcing(
  cell: Cell,
  type: StageType,
  y: Float64Array,
  o: number,
  values: Values,
  gas_L_d: number,
  settings: StageSettings,
): void {
  const volume = sludgeDry(y, o, values) / (values.kinetics.sludgeDensity * 1000);
  if (cell.sludgeRoom > 0 && (volume > LEAST_BED || y[o + PO] > 1e-6)) {
    cell.bedVolume = Math.max(volume, LEAST_BED);
    // A cone's sludge surface grows with the power 2/3 of its filling; a floor's is the part that is covered.
    const share = Math.min(1, cell.bedVolume / cell.sludgeRoom);
    cell.bedArea = cell.cone
      ? cell.floor * Math.max(0.001, pow(share, 2 / 3))
      : cell.floor * Math.min(1, Math.max(0.001, cell.bedVolume / (cell.floor * values.stages.floorLayer)));
    cell.bedThickness = cell.bedVolume / cell.bedArea;
  } else {
    cell.bedVolume = 0;
    cell.bedArea = 0;
    cell.bedThickness = 0;
  }
  cell.settle0 = cell.settle1 = cell.settle2 = 0;
  cell.catch0 = cell.catch1 = cell.catch2 = 0;
  cell.shear = cell.stir = cell.release = cell.kill = 0;
  const airPerVolume = cell.air / PER_L_MIN / cell.volume;
  const { organicDry, inertDry } = values.matter;
  const fines = organicDry * (y[o + FF] + y[o + FS] + y[o + UF] + y[o + US]) + inertDry * (y[o + FI] + y[o + UI]);
  type.solids(cell, {
    values,
    fill: sludgeFill(cell, y, o, values),
    clog: clogging(cell, y, o, values),
    leaf: cell.bed ? y[o + LEAF] / cell.floor : 0,
    gas: cell.bedArea > 0 ? gas_L_d / cell.bedArea : 0,
    airPerVolume,
    fines: fines / cell.volume,
    mat: (organicDry * (y[o + MF] + y[o + MS]) + inertDry * y[o + MI]) / cell.floor,
    outlet: settings.outlet,
    lamp_W: settings.lamp_W,
    mesh_um: settings.mesh_um,
  });
  cell.holds = cell.catch0 + cell.catch1 + cell.catch2 > 0 || cell.release > 0 || cell.filter;
}
