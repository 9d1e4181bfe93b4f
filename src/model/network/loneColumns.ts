// Components solved alone, written out: methane, phosphorus, and a crop's potassium, calcium and iron before the dense block,
// nitrogen gas and opportunists after it. A test holds this code to the table.
import type { Cell } from '../cell';
import { ALK, CA, CH4, FE, FF, FS, IC, K, N2, O2, OP, P, QCA, QFE, QK, QP, SO4, SS, STATES, TAN } from '../components';
import { ID, SLOTS } from '../processes/catalogue';

/** Where a process's column begins in the matrix's table, and its kept derivative among a cell's. */
const at = (p: number): number => p * STATES;
const kept = (p: number): number => p * SLOTS;

const BURNT = at(ID.methaneOxidation), UP = at(ID.uptakePhosphate), UK = at(ID.uptakePotassium), UC = at(ID.uptakeCalcium);
// What scarce phosphorus takes from the solids that films let go it gives to what dissolves; the films themselves lose the same.
const SLOUGH = at(ID.sloughHeterotrophs), LYSIS = at(ID.lysisHeterotrophs);
const A_G = kept(ID.sloughAmmoniaOxidisers), N_G = kept(ID.sloughNitriteOxidisers), H_G = kept(ID.sloughHeterotrophs);
const BURNT_G = kept(ID.methaneOxidation), CH4_G = kept(ID.methaneTransfer), N2_G = kept(ID.nitrogenTransfer), DECAY_G = kept(ID.opportunistDecay), KILL_G = kept(ID.opportunistKill);
const P_G = kept(ID.uptakePhosphate), K_G = kept(ID.uptakePotassium), CA_G = kept(ID.uptakeCalcium), FE_G = kept(ID.uptakeIron);

/** What the sinks put on the diagonals. */
export function loneDiagonals(cell: Cell, m: Float64Array, g: Float64Array, go: number, own: Float64Array, o: number): void {
  own[o + CH4] += g[go + BURNT_G] + g[go + CH4_G];
  own[o + N2] += g[go + N2_G];
  own[o + OP] += g[go + DECAY_G] + g[go + KILL_G];
  own[o + P] -= m[SLOUGH + P] * (g[go + A_G] + g[go + N_G] + g[go + H_G]);
  if (!cell.bed) return;
  own[o + P] += g[go + P_G];
  own[o + K] += g[go + K_G];
  own[o + CA] += g[go + CA_G];
  own[o + FE] += g[go + FE_G];
}

/** Those before the dense block: what their sinks move goes to the rows after them. @param m the matrix's table */
export function solveLoneBefore(cell: Cell, m: Float64Array, g: Float64Array, go: number, rhs: Float64Array, inverse: Float64Array, o: number, delta: Float64Array, ro: number): void {
  const methane = rhs[o + CH4] * inverse[o + CH4];
  const burnt = g[go + BURNT_G] * methane;
  delta[ro + ID.methaneOxidation] += burnt;
  delta[ro + ID.methaneTransfer] += g[go + CH4_G] * methane;
  rhs[o + O2] += m[BURNT + O2] * burnt;
  rhs[o + IC] += m[BURNT + IC] * burnt;
  const phosphorus = rhs[o + P] * inverse[o + P];
  const sa = g[go + A_G] * phosphorus, sn = g[go + N_G] * phosphorus, sh = g[go + H_G] * phosphorus;
  const s = sa + sn + sh;
  delta[ro + ID.sloughAmmoniaOxidisers] += sa;
  delta[ro + ID.lysisAmmoniaOxidisers] -= sa;
  delta[ro + ID.sloughNitriteOxidisers] += sn;
  delta[ro + ID.lysisNitriteOxidisers] -= sn;
  delta[ro + ID.sloughHeterotrophs] += sh;
  delta[ro + ID.lysisHeterotrophs] -= sh;
  rhs[o + TAN] += (m[SLOUGH + TAN] - m[LYSIS + TAN]) * s;
  rhs[o + SO4] += m[SLOUGH + SO4] * s;
  rhs[o + O2] += m[SLOUGH + O2] * s;
  rhs[o + IC] += (m[SLOUGH + IC] - m[LYSIS + IC]) * s;
  rhs[o + ALK] += (m[SLOUGH + ALK] - m[LYSIS + ALK]) * s;
  rhs[o + SS] -= s;
  rhs[o + FF] += m[SLOUGH + FF] * s;
  rhs[o + FS] += m[SLOUGH + FS] * s;
  if (!cell.bed) return;
  const p = g[go + P_G] * phosphorus;
  const k = g[go + K_G] * rhs[o + K] * inverse[o + K];
  const c = g[go + CA_G] * rhs[o + CA] * inverse[o + CA];
  const f = g[go + FE_G] * rhs[o + FE] * inverse[o + FE];
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
  delta[ro + ID.nitrogenTransfer] += g[go + N2_G] * rhs[o + N2] * inverse[o + N2];
  const loose = rhs[o + OP] * inverse[o + OP];
  delta[ro + ID.opportunistDecay] += g[go + DECAY_G] * loose;
  if (cell.kill > 0) delta[ro + ID.opportunistKill] += g[go + KILL_G] * loose;
}
