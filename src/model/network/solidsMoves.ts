// Settling, catching and shear written out: the same columns as in processes/solids.ts, without the table's overhead.
// A test holds this code to the table.
import type { Cell } from '../cell';
import { CF, CLOG, MF, SF } from '../components';
import { ID } from '../processes/catalogue';
import { AIR_SUPERFINE } from '../processes/solids';

/** Dry mass per g COD by part, and what coarse counts in a filter's blockage. */
export interface MoveNumbers { dry: readonly number[]; coarseClogs: number }

/** Rates of the moves and their effect on the slope. `y` and `out` begin at `o`, rates at `ro`. */
export function moveSolids(cell: Cell, numbers: MoveNumbers, v: number, y: Float64Array, out: Float64Array, o: number, r: Float64Array, ro: number): void {
  for (let size = 0; size < 3; size++) {
    const settle = (size === 0 ? cell.settle0 : size === 1 ? cell.settle1 : cell.settle2) * v;
    const caught = (size === 0 ? cell.catch0 : size === 1 ? cell.catch1 : cell.catch2) * v;
    if (settle === 0 && caught === 0) continue;
    const weight = size === 0 ? numbers.coarseClogs : 1;
    const first = o + CF + 3 * size;
    const s = ro + ID.settleCoarseFast + 3 * size;
    const k = ro + ID.catchCoarseFast + 3 * size;
    for (let part = 0; part < 3; part++) {
      const solid = y[first + part];
      const down = settle * solid;
      const held = caught * solid;
      r[s + part] = down;
      r[k + part] = held;
      out[first + part] -= down + held;
      out[o + SF + part] += down;
      out[o + MF + part] += held;
      out[o + CLOG] += held * numbers.dry[part] * weight;
    }
  }
  if (cell.shear === 0) return;
  for (let part = 0; part < 3; part++) {
    const broken = cell.shear * y[o + CF + part];
    r[ro + ID.shearFast + part] = broken;
    out[o + CF + part] -= broken;
    out[o + CF + 3 + part] += (1 - AIR_SUPERFINE) * broken;
    out[o + CF + 6 + part] += AIR_SUPERFINE * broken;
  }
}

/** 1/d that the moves take of each size: what stands on the diagonal of W. */
export function moveDiagonal(cell: Cell, v: number, own: Float64Array, o: number): void {
  for (let size = 0; size < 3; size++) {
    const settle = (size === 0 ? cell.settle0 : size === 1 ? cell.settle1 : cell.settle2) * v;
    const caught = (size === 0 ? cell.catch0 : size === 1 ? cell.catch1 : cell.catch2) * v;
    const taken = settle + caught + (size === 0 ? cell.shear : 0);
    for (let part = 0; part < 3; part++) own[o + CF + 3 * size + part] += taken;
  }
}

/** Solves the nine solids alone, coarse first, and hands on what their moves give to the rows after them. */
export function solveMoves(cell: Cell, numbers: MoveNumbers, v: number, rhs: Float64Array, inverse: Float64Array, o: number, delta: Float64Array, ro: number): void {
  for (let size = 0; size < 3; size++) {
    const settle = (size === 0 ? cell.settle0 : size === 1 ? cell.settle1 : cell.settle2) * v;
    const caught = (size === 0 ? cell.catch0 : size === 1 ? cell.catch1 : cell.catch2) * v;
    const shear = size === 0 ? cell.shear : 0;
    if (settle === 0 && caught === 0 && shear === 0) continue;
    const weight = size === 0 ? numbers.coarseClogs : 1;
    const first = o + CF + 3 * size;
    const s = ro + ID.settleCoarseFast + 3 * size;
    const k = ro + ID.catchCoarseFast + 3 * size;
    for (let part = 0; part < 3; part++) {
      const u = rhs[first + part] * inverse[first + part];
      const down = settle * u;
      const held = caught * u;
      delta[s + part] += down;
      delta[k + part] += held;
      rhs[o + SF + part] += down;
      rhs[o + MF + part] += held;
      rhs[o + CLOG] += held * numbers.dry[part] * weight;
      if (shear > 0) {
        const broken = shear * u;
        delta[ro + ID.shearFast + part] += broken;
        rhs[o + CF + 3 + part] += (1 - AIR_SUPERFINE) * broken;
        rhs[o + CF + 6 + part] += AIR_SUPERFINE * broken;
      }
    }
  }
}
