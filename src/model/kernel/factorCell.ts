// Factorises d I − W of one cell, without pivoting: its diagonal is dominant.
// Written by `npm run kernels` from the tables of components and processes: never edited, stale copies fail a test.
import type { Cell } from '../cell';

/** No pivot may be smaller. */
const LEAST = 1e-300;

/**
 * Writes inverted diagonals and factors to `lu` from `lo`.
 * @param outflow 1/d that water carries off @param held whether a rig holds oxygen
 * @returns false where a pivot vanishes; the caller then shortens its step
 */
export function factorCell(cell: Cell, outflow: number, d: number, held: boolean, own: Float64Array, oo: number, w: Float64Array,
  wo: number, lu: Float64Array, lo: number): boolean {
  const carried = 1 / (d + outflow), resting = 1 / d;
  lu[lo + 13] = carried;
  lu[lo + 14] = resting;
  lu[lo + 0] = 1 / (d + own[oo + 0]); // CH4
  lu[lo + 1] = 1 / (d + own[oo + 1]); // N2
  lu[lo + 2] = 1 / (d + own[oo + 2]); // P
  lu[lo + 3] = cell.bed ? 1 / (d + own[oo + 3]) : carried; // K
  lu[lo + 4] = cell.bed ? 1 / (d + own[oo + 4]) : carried; // CA
  lu[lo + 5] = cell.bed ? 1 / (d + own[oo + 5]) : carried; // FE
  lu[lo + 6] = 1 / (d + own[oo + 6]); // OP
  lu[lo + 7] = cell.settle0 > 0 || cell.catch0 > 0 || cell.shear > 0 ? 1 / (d + own[oo + 7]) : carried; // CF, CS, CI
  lu[lo + 8] = cell.settle1 > 0 || cell.catch1 > 0 ? 1 / (d + own[oo + 8]) : carried; // FF, FS, FI
  lu[lo + 9] = cell.settle2 > 0 || cell.catch2 > 0 ? 1 / (d + own[oo + 9]) : carried; // UF, US, UI
  lu[lo + 10] = cell.bedThickness > 0 ? 1 / (d + own[oo + 10]) : resting; // PO
  lu[lo + 11] = cell.bedThickness > 0 ? 1 / (d + own[oo + 11]) : resting; // PS
  lu[lo + 12] = cell.fish ? 1 / (d + own[oo + 12]) : resting; // GUT
  // --- IC
  const a_IC_IC = d + outflow - w[wo + 22];
  if (!(a_IC_IC > LEAST || a_IC_IC < -LEAST)) return false;
  const inverse_IC = 1 / a_IC_IC;
  lu[lo + 15] = inverse_IC;
  // --- ALK
  const a_ALK_ALK = d + outflow - w[wo + 29];
  if (!(a_ALK_ALK > LEAST || a_ALK_ALK < -LEAST)) return false;
  const inverse_ALK = 1 / a_ALK_ALK;
  lu[lo + 16] = inverse_ALK;
  // --- S2
  const a_S2_S2 = d + outflow - w[wo + 33];
  if (!(a_S2_S2 > LEAST || a_S2_S2 < -LEAST)) return false;
  const inverse_S2 = 1 / a_S2_S2;
  lu[lo + 17] = inverse_S2;
  const a_O2_S2 = held ? 0 : -w[wo + 3];
  const l_O2_S2 = a_O2_S2 * inverse_S2;
  lu[lo + 18] = l_O2_S2;
  let a_O2_O2 = held ? d : d + outflow - w[wo + 0];
  const a_S2_O2 = -w[wo + 32];
  a_O2_O2 -= l_O2_S2 * a_S2_O2;
  // --- NO2
  const a_NO2_NO2 = d + outflow - w[wo + 12];
  if (!(a_NO2_NO2 > LEAST || a_NO2_NO2 < -LEAST)) return false;
  const inverse_NO2 = 1 / a_NO2_NO2;
  lu[lo + 19] = inverse_NO2;
  const a_O2_NO2 = held ? 0 : -w[wo + 2];
  const l_O2_NO2 = a_O2_NO2 * inverse_NO2;
  lu[lo + 20] = l_O2_NO2;
  const a_NO2_O2 = -w[wo + 10];
  a_O2_O2 -= l_O2_NO2 * a_NO2_O2;
  let a_O2_TAN = held ? 0 : -w[wo + 1];
  const a_NO2_TAN = -w[wo + 11];
  a_O2_TAN -= l_O2_NO2 * a_NO2_TAN;
  const a_TAN_NO2 = -w[wo + 7];
  const l_TAN_NO2 = a_TAN_NO2 * inverse_NO2;
  lu[lo + 21] = l_TAN_NO2;
  let a_TAN_O2 = -w[wo + 5];
  a_TAN_O2 -= l_TAN_NO2 * a_NO2_O2;
  let a_TAN_TAN = d + outflow - w[wo + 6];
  a_TAN_TAN -= l_TAN_NO2 * a_NO2_TAN;
  const a_NO3_NO2 = -w[wo + 15];
  const l_NO3_NO2 = a_NO3_NO2 * inverse_NO2;
  lu[lo + 22] = l_NO3_NO2;
  let a_NO3_O2 = -w[wo + 13];
  a_NO3_O2 -= l_NO3_NO2 * a_NO2_O2;
  let a_NO3_TAN = -w[wo + 14];
  a_NO3_TAN -= l_NO3_NO2 * a_NO2_TAN;
  const a_SS_NO2 = -w[wo + 36];
  const l_SS_NO2 = a_SS_NO2 * inverse_NO2;
  lu[lo + 23] = l_SS_NO2;
  let a_SS_O2 = -w[wo + 34];
  a_SS_O2 -= l_SS_NO2 * a_NO2_O2;
  let a_SS_TAN = -w[wo + 35];
  a_SS_TAN -= l_SS_NO2 * a_NO2_TAN;
  // --- NO3
  const a_NO3_NO3 = d + outflow - w[wo + 16];
  if (!(a_NO3_NO3 > LEAST || a_NO3_NO3 < -LEAST)) return false;
  const inverse_NO3 = 1 / a_NO3_NO3;
  lu[lo + 24] = inverse_NO3;
  lu[lo + 27] = a_NO3_O2;
  lu[lo + 28] = a_NO3_TAN;
  const a_TAN_NO3 = -w[wo + 8];
  const l_TAN_NO3 = a_TAN_NO3 * inverse_NO3;
  lu[lo + 25] = l_TAN_NO3;
  a_TAN_O2 -= l_TAN_NO3 * a_NO3_O2;
  a_TAN_TAN -= l_TAN_NO3 * a_NO3_TAN;
  let a_TAN_SS = -w[wo + 9];
  const a_NO3_SS = -w[wo + 17];
  a_TAN_SS -= l_TAN_NO3 * a_NO3_SS;
  const a_SS_NO3 = -w[wo + 37];
  const l_SS_NO3 = a_SS_NO3 * inverse_NO3;
  lu[lo + 26] = l_SS_NO3;
  a_SS_O2 -= l_SS_NO3 * a_NO3_O2;
  a_SS_TAN -= l_SS_NO3 * a_NO3_TAN;
  let a_SS_SS = d + outflow - w[wo + 38];
  a_SS_SS -= l_SS_NO3 * a_NO3_SS;
  // --- TAN
  if (!(a_TAN_TAN > LEAST || a_TAN_TAN < -LEAST)) return false;
  const inverse_TAN = 1 / a_TAN_TAN;
  lu[lo + 29] = inverse_TAN;
  lu[lo + 32] = a_TAN_O2;
  lu[lo + 33] = a_TAN_SS;
  const l_O2_TAN = a_O2_TAN * inverse_TAN;
  lu[lo + 30] = l_O2_TAN;
  a_O2_O2 -= l_O2_TAN * a_TAN_O2;
  let a_O2_SS = held ? 0 : -w[wo + 4];
  a_O2_SS -= l_O2_TAN * a_TAN_SS;
  const l_SS_TAN = a_SS_TAN * inverse_TAN;
  lu[lo + 31] = l_SS_TAN;
  a_SS_O2 -= l_SS_TAN * a_TAN_O2;
  a_SS_SS -= l_SS_TAN * a_TAN_SS;
  // --- SS
  if (!(a_SS_SS > LEAST || a_SS_SS < -LEAST)) return false;
  const inverse_SS = 1 / a_SS_SS;
  lu[lo + 34] = inverse_SS;
  lu[lo + 36] = a_SS_O2;
  const l_O2_SS = a_O2_SS * inverse_SS;
  lu[lo + 35] = l_O2_SS;
  a_O2_O2 -= l_O2_SS * a_SS_O2;
  // --- O2
  if (!(a_O2_O2 > LEAST || a_O2_O2 < -LEAST)) return false;
  const inverse_O2 = 1 / a_O2_O2;
  lu[lo + 37] = inverse_O2;
  return true;
}
