// The dense block of eight in each cell's W. Six answer to one another; alkalinity answers to them but only the transfer of
// carbon dioxide answers to it, and to carbon nothing else does. So six are solved together, then alkalinity, then carbon.
import { ALK, IC, NO2, NO3, O2, S2, SS, TAN } from '../components';
import { factoriseSix } from '../../numerics/six';
import { ALK_INVERSE, ALK_ROW, CORE, IC_INVERSE, IC_ROW, WIDTH } from './places';

/** Rows and columns of a block stand in this order; a component's place in it. */
export const ORDER: readonly number[] = [O2, TAN, NO2, NO3, S2, SS, ALK, IC];

/**
 * Where the derivative of one component's slope to another stands in a block.
 * @throws Error where the order of solving has no room for it
 */
export function placeInBlock(row: number, column: number): number {
  if (column === IC && row !== IC) throw new Error('nothing but carbon may answer to carbon');
  if (column === ALK && row !== IC && row !== ALK) throw new Error('nothing but carbon may answer to alkalinity');
  return ORDER.indexOf(row) * WIDTH + ORDER.indexOf(column);
}

/**
 * Factorises d I + own − W for one cell.
 * @param own what else stands on the diagonals, from the cell's own `o`
 * @param held whether a rig holds oxygen
 * @returns false where the core is singular
 */
export function factorBlock(w: Float64Array, wo: number, lu: Float64Array, lo: number, own: Float64Array, o: number, d: number, held: boolean): boolean {
  for (let i = 0; i < CORE; i++) {
    const from = wo + i * WIDTH;
    const to = lo + i * CORE;
    lu[to] = -w[from]; lu[to + 1] = -w[from + 1]; lu[to + 2] = -w[from + 2];
    lu[to + 3] = -w[from + 3]; lu[to + 4] = -w[from + 4]; lu[to + 5] = -w[from + 5];
    lu[to + i] += d + own[o + ORDER[i]];
  }
  if (held) for (let j = 0; j < CORE; j++) lu[lo + j] = j === 0 ? d : 0;
  lu[lo + ALK_INVERSE] = 1 / (d + own[o + ALK] - w[wo + ALK_ROW + 6]);
  lu[lo + IC_INVERSE] = 1 / (d + own[o + IC] - w[wo + IC_ROW + 7]);
  return factoriseSix(lu, lo);
}

/** Solves for the eight: right-hand sides from rhs, answers to u, both from the cell's own `o`; `held` pins oxygen's right-hand side to zero. */
export function solveBlock(w: Float64Array, wo: number, lu: Float64Array, lo: number, rhs: Float64Array, u: Float64Array, o: number, held: boolean): void {
  let a = held ? 0 : rhs[o + O2];
  let b = rhs[o + TAN] - lu[lo + 6] * a;
  let c = rhs[o + NO2] - lu[lo + 12] * a - lu[lo + 13] * b;
  let d = rhs[o + NO3] - lu[lo + 18] * a - lu[lo + 19] * b - lu[lo + 20] * c;
  let e = rhs[o + S2] - lu[lo + 24] * a - lu[lo + 25] * b - lu[lo + 26] * c - lu[lo + 27] * d;
  const f = (rhs[o + SS] - lu[lo + 30] * a - lu[lo + 31] * b - lu[lo + 32] * c - lu[lo + 33] * d - lu[lo + 34] * e) * lu[lo + 35];
  e = (e - lu[lo + 29] * f) * lu[lo + 28];
  d = (d - lu[lo + 22] * e - lu[lo + 23] * f) * lu[lo + 21];
  c = (c - lu[lo + 15] * d - lu[lo + 16] * e - lu[lo + 17] * f) * lu[lo + 14];
  b = (b - lu[lo + 8] * c - lu[lo + 9] * d - lu[lo + 10] * e - lu[lo + 11] * f) * lu[lo + 7];
  a = (a - lu[lo + 1] * b - lu[lo + 2] * c - lu[lo + 3] * d - lu[lo + 4] * e - lu[lo + 5] * f) * lu[lo];
  u[o + O2] = a;
  u[o + TAN] = b;
  u[o + NO2] = c;
  u[o + NO3] = d;
  u[o + S2] = e;
  u[o + SS] = f;
  const p = wo + ALK_ROW;
  const alkalinity = (rhs[o + ALK] + w[p] * a + w[p + 1] * b + w[p + 2] * c + w[p + 3] * d + w[p + 4] * e + w[p + 5] * f) * lu[lo + ALK_INVERSE];
  u[o + ALK] = alkalinity;
  const q = wo + IC_ROW;
  u[o + IC] = (rhs[o + IC] + w[q] * a + w[q + 1] * b + w[q + 2] * c + w[q + 3] * d + w[q + 4] * e + w[q + 5] * f + w[q + 6] * alkalinity) * lu[lo + IC_INVERSE];
}
