// The kept derivatives of the processes that columns.ts writes out, put to work the same way: what they give to the dense block
// of W, and what the block's solution says each process does. A test holds this code to the table.
import type { Cell } from '../cell';
import { ALK, BA, BH, BN, IC, N2, NO2, NO3, O2, PO, PS, QN, S2, SO4, SS, STATES, TAN } from '../components';
import { ID, SLOTS } from '../processes/catalogue';
import { applyPoreOrganics, applyPoreSulfide } from './columns';

/** Where a process's column begins in the matrix's table, and its kept derivatives among a cell's. */
const at = (p: number): number => p * STATES;
const kept = (p: number): number => p * SLOTS;

const A = at(ID.nitritation), N = at(ID.nitriteOxidation), H = at(ID.heterotrophsAerobic), D = at(ID.heterotrophsAnoxic), S = at(ID.sulfideOxidation);
const V = at(ID.ammoniaTransfer), UN = at(ID.uptakeNitrate), UT = at(ID.uptakeAmmonium);
// Slots in the order of each definition's `fast`.
const A_TAN = kept(ID.nitritation), A_O2 = A_TAN + 1;
const N_NO2 = kept(ID.nitriteOxidation), N_O2 = N_NO2 + 1;
const H_SS = kept(ID.heterotrophsAerobic), H_O2 = H_SS + 1, H_TAN = H_SS + 2;
const D_SS = kept(ID.heterotrophsAnoxic), D_NO3 = D_SS + 1, D_TAN = D_SS + 2;
const S_S2 = kept(ID.sulfideOxidation), S_O2 = S_S2 + 1;
const AIR_O2 = kept(ID.oxygenTransfer), AIR_IC = kept(ID.carbonDioxideTransfer), AIR_ALK = AIR_IC + 1, AIR_S2 = kept(ID.hydrogenSulfideTransfer), AIR_TAN = kept(ID.ammoniaTransfer);
const UN_NO3 = kept(ID.uptakeNitrate), UT_TAN = kept(ID.uptakeAmmonium);

/** Rows of a block, in the order of fastBlock.ts: oxygen, ammonia, nitrite, nitrate, sulfide, organics, alkalinity, carbon. Columns are an eighth of these. */
const oxygen = 0, ammonia = 8, nitrite = 16, nitrate = 24, sulfide = 32, organics = 40, alkalinity = 48, carbon = 56;

/** Writes a cell's block of W; what does not stand here is left as it is. @param m the matrix's table */
export function writeBlock(cell: Cell, m: Float64Array, g: Float64Array, go: number, w: Float64Array, wo: number): void {
  // Answers to oxygen.
  let a = g[go + A_O2], h = g[go + H_O2];
  const n = g[go + N_O2], s = g[go + S_O2];
  w[wo + oxygen] = m[A + O2] * a + m[N + O2] * n + m[H + O2] * h + m[S + O2] * s + g[go + AIR_O2];
  w[wo + ammonia] = m[A + TAN] * a + m[H + TAN] * h;
  w[wo + nitrite] = m[A + NO2] * a + m[N + NO2] * n;
  w[wo + nitrate] = m[N + NO3] * n;
  w[wo + sulfide] = -s;
  w[wo + organics] = -h;
  w[wo + alkalinity] = m[A + ALK] * a + m[N + ALK] * n + m[H + ALK] * h + m[S + ALK] * s;
  w[wo + carbon] = m[A + IC] * a + m[N + IC] * n + m[H + IC] * h;
  // To ammonia.
  let d = g[go + D_TAN];
  const stripped = g[go + AIR_TAN];
  const taken = cell.bed ? g[go + UT_TAN] : 0;
  a = g[go + A_TAN];
  h = g[go + H_TAN];
  w[wo + oxygen + 1] = m[A + O2] * a + m[H + O2] * h;
  w[wo + ammonia + 1] = m[A + TAN] * a + m[H + TAN] * h + m[D + TAN] * d - stripped - taken;
  w[wo + nitrite + 1] = m[A + NO2] * a;
  w[wo + nitrate + 1] = m[D + NO3] * d;
  w[wo + organics + 1] = -h - d;
  w[wo + alkalinity + 1] = m[A + ALK] * a + m[H + ALK] * h + m[D + ALK] * d + m[V + ALK] * stripped + m[UT + ALK] * taken;
  w[wo + carbon + 1] = m[A + IC] * a + m[H + IC] * h + m[D + IC] * d;
  // To nitrite.
  const oxidised = g[go + N_NO2];
  w[wo + oxygen + 2] = m[N + O2] * oxidised;
  w[wo + nitrite + 2] = m[N + NO2] * oxidised;
  w[wo + nitrate + 2] = m[N + NO3] * oxidised;
  w[wo + alkalinity + 2] = m[N + ALK] * oxidised;
  w[wo + carbon + 2] = m[N + IC] * oxidised;
  // To nitrate.
  const drunk = cell.bed ? g[go + UN_NO3] : 0;
  d = g[go + D_NO3];
  w[wo + ammonia + 3] = m[D + TAN] * d;
  w[wo + nitrate + 3] = m[D + NO3] * d - drunk;
  w[wo + organics + 3] = -d;
  w[wo + alkalinity + 3] = m[D + ALK] * d + m[UN + ALK] * drunk;
  w[wo + carbon + 3] = m[D + IC] * d;
  // To sulfide.
  const burnt = g[go + S_S2];
  w[wo + oxygen + 4] = m[S + O2] * burnt;
  w[wo + sulfide + 4] = -burnt - g[go + AIR_S2];
  w[wo + alkalinity + 4] = m[S + ALK] * burnt;
  // To organics.
  h = g[go + H_SS];
  d = g[go + D_SS];
  w[wo + oxygen + 5] = m[H + O2] * h;
  w[wo + ammonia + 5] = m[H + TAN] * h + m[D + TAN] * d;
  w[wo + nitrate + 5] = m[D + NO3] * d;
  w[wo + organics + 5] = -h - d;
  w[wo + alkalinity + 5] = m[H + ALK] * h + m[D + ALK] * d;
  w[wo + carbon + 5] = m[H + IC] * h + m[D + IC] * d;
  // Carbon to alkalinity and to itself, by the transfer of carbon dioxide.
  w[wo + carbon + 6] = -g[go + AIR_ALK];
  w[wo + carbon + 7] = -g[go + AIR_IC];
}

/** W·u of each process once the block is solved: to `delta`, and on to the rows outside the block. */
export function spreadBlock(cell: Cell, m: Float64Array, g: Float64Array, go: number, u: Float64Array, rhs: Float64Array, o: number, delta: Float64Array, ro: number): void {
  const o2 = u[o + O2], tan = u[o + TAN], no3 = u[o + NO3], s2 = u[o + S2], ss = u[o + SS];
  const a = g[go + A_TAN] * tan + g[go + A_O2] * o2;
  const n = g[go + N_NO2] * u[o + NO2] + g[go + N_O2] * o2;
  const h = g[go + H_SS] * ss + g[go + H_O2] * o2 + g[go + H_TAN] * tan;
  const d = g[go + D_SS] * ss + g[go + D_NO3] * no3 + g[go + D_TAN] * tan;
  const s = g[go + S_S2] * s2 + g[go + S_O2] * o2;
  delta[ro + ID.nitritation] += a;
  delta[ro + ID.nitriteOxidation] += n;
  delta[ro + ID.heterotrophsAerobic] += h;
  delta[ro + ID.heterotrophsAnoxic] += d;
  delta[ro + ID.sulfideOxidation] += s;
  delta[ro + ID.oxygenTransfer] += g[go + AIR_O2] * o2;
  delta[ro + ID.carbonDioxideTransfer] += g[go + AIR_IC] * u[o + IC] + g[go + AIR_ALK] * u[o + ALK];
  delta[ro + ID.hydrogenSulfideTransfer] += g[go + AIR_S2] * s2;
  delta[ro + ID.ammoniaTransfer] += g[go + AIR_TAN] * tan;
  rhs[o + BA] += m[A + BA] * a;
  rhs[o + BN] += m[N + BN] * n;
  rhs[o + BH] += m[H + BH] * h + m[D + BH] * d;
  rhs[o + N2] += m[D + N2] * d;
  rhs[o + SO4] += m[S + SO4] * s;
  if (!cell.bed) return;
  const nitrateTaken = g[go + UN_NO3] * no3;
  const ammoniumTaken = g[go + UT_TAN] * tan;
  delta[ro + ID.uptakeNitrate] += nitrateTaken;
  delta[ro + ID.uptakeAmmonium] += ammoniumTaken;
  rhs[o + QN] += nitrateTaken + ammoniumTaken;
}

// The sinks of pore organics and of pore sulfide stand one after another in the catalogue; each keeps one derivative.
const FIRST_PO = ID.sludgeAerobic, LAST_PO = ID.sludgeLeak, FIRST_PS = ID.poreSulfideDiffusion, LAST_PS = ID.poreSulfideGasOut;

/** What one cell's pore water does in one solve. */
const moved = new Float64Array(LAST_PS + 1);

/** What the sinks of pore water put on its diagonals. */
export function poreDiagonals(g: Float64Array, go: number, own: Float64Array, o: number): void {
  for (let p = FIRST_PO; p <= LAST_PO; p++) own[o + PO] += g[go + p * SLOTS];
  for (let p = FIRST_PS; p <= LAST_PS; p++) own[o + PS] += g[go + p * SLOTS];
}

/** Solves pore organics, then the pore sulfide they feed, and hands on what they give to the rows solved after them. */
export function solvePore(m: Float64Array, g: Float64Array, go: number, rhs: Float64Array, inverse: Float64Array, o: number, delta: Float64Array, ro: number): void {
  const organics = rhs[o + PO];
  const u = organics * inverse[o + PO];
  for (let p = FIRST_PO; p <= LAST_PO; p++) moved[p] = g[go + p * SLOTS] * u;
  applyPoreOrganics(m, moved, 0, rhs, o);
  // Their own sinks are in the diagonals already.
  rhs[o + PO] = organics;
  const sulfide = rhs[o + PS];
  const v = sulfide * inverse[o + PS];
  for (let p = FIRST_PS; p <= LAST_PS; p++) moved[p] = g[go + p * SLOTS] * v;
  applyPoreSulfide(m, moved, 0, rhs, o);
  rhs[o + PS] = sulfide;
  for (let p = FIRST_PO; p <= LAST_PS; p++) delta[ro + p] += moved[p];
}
