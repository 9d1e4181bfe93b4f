// Components solved alone, written out: methane, phosphorus, and a crop's potassium, calcium and iron before the dense block,
// nitrogen gas and free bacteria after it. A test holds this code to the table.
import type { Cell } from '../cell';
import { ALK, CA, CH4, FE, FF, FS, IC, K, N2, O2, OP, P, QCA, QFE, QK, QP, SO4, SS, TAN } from '../components';
import { ID } from '../processes/catalogue';
import { A_SCARCE, AIR_CH4, AIR_N2, BURNT_CH4, DECAY_OP, G, H_SCARCE, KILL_OP, L, M, N_SCARCE, UC, UC_CA, UF_FE, UK, UK_K, UP, UP_P } from './places';

/** What the sinks put on the diagonals. */
export function loneDiagonals(cell: Cell, m: Float64Array, g: Float64Array, go: number, own: Float64Array, o: number): void {
  own[o + CH4] += g[go + BURNT_CH4] + g[go + AIR_CH4];
  own[o + N2] += g[go + AIR_N2];
  own[o + OP] += g[go + DECAY_OP] + g[go + KILL_OP];
  own[o + P] -= m[G + P] * (g[go + A_SCARCE] + g[go + N_SCARCE] + g[go + H_SCARCE]);
  if (!cell.bed) return;
  own[o + P] += g[go + UP_P];
  own[o + K] += g[go + UK_K];
  own[o + CA] += g[go + UC_CA];
  own[o + FE] += g[go + UF_FE];
}

/** Those before the dense block: what their sinks move goes to the rows after them. @param m the matrix's table */
export function solveLoneBefore(cell: Cell, m: Float64Array, g: Float64Array, go: number, rhs: Float64Array, inverse: Float64Array, o: number, delta: Float64Array, ro: number): void {
  const methane = rhs[o + CH4] * inverse[o + CH4];
  const burnt = g[go + BURNT_CH4] * methane;
  delta[ro + ID.methaneOxidation] += burnt;
  delta[ro + ID.methaneTransfer] += g[go + AIR_CH4] * methane;
  rhs[o + O2] += m[M + O2] * burnt;
  rhs[o + IC] += m[M + IC] * burnt;
  const phosphorus = rhs[o + P] * inverse[o + P];
  const sa = g[go + A_SCARCE] * phosphorus, sn = g[go + N_SCARCE] * phosphorus, sh = g[go + H_SCARCE] * phosphorus;
  const s = sa + sn + sh;
  delta[ro + ID.sloughAmmoniaOxidisers] += sa;
  delta[ro + ID.lysisAmmoniaOxidisers] -= sa;
  delta[ro + ID.sloughNitriteOxidisers] += sn;
  delta[ro + ID.lysisNitriteOxidisers] -= sn;
  delta[ro + ID.sloughHeterotrophs] += sh;
  delta[ro + ID.lysisHeterotrophs] -= sh;
  rhs[o + TAN] += (m[G + TAN] - m[L + TAN]) * s;
  rhs[o + SO4] += m[G + SO4] * s;
  rhs[o + O2] += m[G + O2] * s;
  rhs[o + IC] += (m[G + IC] - m[L + IC]) * s;
  rhs[o + ALK] += (m[G + ALK] - m[L + ALK]) * s;
  rhs[o + SS] -= s;
  rhs[o + FF] += m[G + FF] * s;
  rhs[o + FS] += m[G + FS] * s;
  if (!cell.bed) return;
  const p = g[go + UP_P] * phosphorus;
  const k = g[go + UK_K] * rhs[o + K] * inverse[o + K];
  const c = g[go + UC_CA] * rhs[o + CA] * inverse[o + CA];
  const f = g[go + UF_FE] * rhs[o + FE] * inverse[o + FE];
  delta[ro + ID.uptakePhosphate] += p;
  delta[ro + ID.uptakePotassium] += k;
  delta[ro + ID.uptakeCalcium] += c;
  delta[ro + ID.uptakeIron] += f;
  rhs[o + ALK] += m[UP + ALK] * p + m[UK + ALK] * k + m[UC + ALK] * c;
  rhs[o + QP] += p;
  rhs[o + QK] += k;
  rhs[o + QCA] += c;
  rhs[o + QFE] += f;
}

/** Those after it; what they lose leaves the water. */
export function solveLoneAfter(cell: Cell, g: Float64Array, go: number, rhs: Float64Array, inverse: Float64Array, o: number, delta: Float64Array, ro: number): void {
  delta[ro + ID.nitrogenTransfer] += g[go + AIR_N2] * rhs[o + N2] * inverse[o + N2];
  const loose = rhs[o + OP] * inverse[o + OP];
  delta[ro + ID.freeBacteriaDecay] += g[go + DECAY_OP] * loose;
  if (cell.kill > 0) delta[ro + ID.freeBacteriaKill] += g[go + KILL_OP] * loose;
}
