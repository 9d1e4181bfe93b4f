// Settling, catching and shear written out: the same columns as in processes/solids.ts, without the table's overhead.
// A test holds this code to the table.
import type { Cell } from '../cell';
import { CF, CLOG, MF, SF } from '../components';
import { ID } from '../processes/catalogue';

/** Dry mass per g COD by part, what coarse counts in a filter's blockage, and the superfine share of what air breaks. */
export interface MoveNumbers { dry: readonly number[]; coarseClogs: number; superfine: number }

/** The three parts of one size, from `first` on, lie down at `to`, each at this rate; their rates go to `at`. */
function lieDown(rate: number, y: Float64Array, out: Float64Array, first: number, to: number, r: Float64Array, at: number): void {
  const a = rate * y[first], b = rate * y[first + 1], c = rate * y[first + 2];
  r[at] = a; r[at + 1] = b; r[at + 2] = c;
  out[first] -= a; out[first + 1] -= b; out[first + 2] -= c;
  out[to] += a; out[to + 1] += b; out[to + 2] += c;
}

/** Rates of the moves and their effect on the slope. `y` and `out` begin at `o`, rates at `ro`; rates of what cannot move are left alone. */
export function moveSolids(cell: Cell, numbers: MoveNumbers, v: number, y: Float64Array, out: Float64Array, o: number, r: Float64Array, ro: number): void {
  const { dry, superfine } = numbers;
  for (let size = 0; size < 3; size++) {
    const first = o + CF + 3 * size;
    const settle = (size === 0 ? cell.settle0 : size === 1 ? cell.settle1 : cell.settle2) * v;
    if (settle > 0) lieDown(settle, y, out, first, o + SF, r, ro + ID.settleCoarseFast + 3 * size);
    const caught = (size === 0 ? cell.catch0 : size === 1 ? cell.catch1 : cell.catch2) * v;
    if (caught > 0) {
      const k = ro + ID.catchCoarseFast + 3 * size;
      lieDown(caught, y, out, first, o + MF, r, k);
      out[o + CLOG] += (r[k] * dry[0] + r[k + 1] * dry[1] + r[k + 2] * dry[2]) * (size === 0 ? numbers.coarseClogs : 1);
    }
  }
  if (cell.shear === 0) return;
  for (let part = 0; part < 3; part++) {
    const broken = cell.shear * y[o + CF + part];
    r[ro + ID.shearFast + part] = broken;
    out[o + CF + part] -= broken;
    out[o + CF + 3 + part] += (1 - superfine) * broken;
    out[o + CF + 6 + part] += superfine * broken;
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

/** What three parts, solved, hand on to the rows at `to` at this rate; the processes' own shares go to `at`. */
function handOn(rate: number, fast: number, slow: number, inert: number, rhs: Float64Array, to: number, delta: Float64Array, at: number): void {
  const a = rate * fast, b = rate * slow, c = rate * inert;
  delta[at] += a; delta[at + 1] += b; delta[at + 2] += c;
  rhs[to] += a; rhs[to + 1] += b; rhs[to + 2] += c;
}

/** Solves the nine solids alone, coarse first, and hands on what their moves give to the rows after them. */
export function solveMoves(cell: Cell, numbers: MoveNumbers, v: number, rhs: Float64Array, inverse: Float64Array, o: number, delta: Float64Array, ro: number): void {
  const { dry, superfine } = numbers;
  for (let size = 0; size < 3; size++) {
    const settle = (size === 0 ? cell.settle0 : size === 1 ? cell.settle1 : cell.settle2) * v;
    const caught = (size === 0 ? cell.catch0 : size === 1 ? cell.catch1 : cell.catch2) * v;
    const shear = size === 0 ? cell.shear : 0;
    if (settle === 0 && caught === 0 && shear === 0) continue;
    const first = o + CF + 3 * size;
    const fast = rhs[first] * inverse[first], slow = rhs[first + 1] * inverse[first + 1], inert = rhs[first + 2] * inverse[first + 2];
    if (settle > 0) handOn(settle, fast, slow, inert, rhs, o + SF, delta, ro + ID.settleCoarseFast + 3 * size);
    if (caught > 0) {
      handOn(caught, fast, slow, inert, rhs, o + MF, delta, ro + ID.catchCoarseFast + 3 * size);
      rhs[o + CLOG] += (caught * fast * dry[0] + caught * slow * dry[1] + caught * inert * dry[2]) * (size === 0 ? numbers.coarseClogs : 1);
    }
    if (shear > 0) {
      const s = ro + ID.shearFast;
      const a = shear * fast, b = shear * slow, c = shear * inert;
      delta[s] += a; delta[s + 1] += b; delta[s + 2] += c;
      rhs[o + CF + 3] += (1 - superfine) * a; rhs[o + CF + 4] += (1 - superfine) * b; rhs[o + CF + 5] += (1 - superfine) * c;
      rhs[o + CF + 6] += superfine * a; rhs[o + CF + 7] += superfine * b; rhs[o + CF + 8] += superfine * c;
    }
  }
}
