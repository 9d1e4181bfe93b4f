// The kept derivatives of the processes that columns.ts writes out, put to work the same way: what they give to the dense block
// of W, and what the block's solution says each process does. A test holds this code to the table.
import type { Cell } from '../cell';
import { ALK, BA, BH, BN, FF, FS, IC, N2, NA, NO2, NO3, O2, P, PO, PS, QN, S2, SO4, SS, TAN } from '../components';
import { ID } from '../processes/catalogue';
import { applyPoreOrganics, applyPoreSulfide } from './columns';
import {
  A, A_LYSIS, A_O2, A_SLOUGH, A_STIFLED, A_TAN, AIR_ALK, AIR_IC, AIR_O2, AIR_S2, AIR_TAN, BED_G, BED_LEAK, BED_M, BED_N, BED_O, BED_S, D, D_NO3, D_SS, D_TAN, G, H, H_LYSIS, H_O2, H_SLOUGH, H_SS, H_STIFLED, H_TAN, L, N, N_LYSIS, N_NO2, N_O2,
  N_SLOUGH, N_STIFLED, NH3, PS_BY_N, PS_BY_O, PS_GAS, PS_OUT, PS_UP, S, S_O2, S_S2, UN, UN_NO3, UT, UT_TAN, alkalinity, ammonia, carbon, nitrate, nitrite, organics, oxygen, sulfide,
} from './places';

/** Writes a cell's block of W; what does not stand here is left as it is. @param m the matrix's table */
export function writeBlock(cell: Cell, m: Float64Array, g: Float64Array, go: number, w: Float64Array, wo: number): void {
  // Growth brings with it what full films let go: its columns with those of what follows.
  const fa = g[go + A_SLOUGH], fn = g[go + N_SLOUGH], fh = g[go + H_SLOUGH];
  const la = g[go + A_LYSIS], ln = g[go + N_LYSIS], lh = g[go + H_LYSIS];
  const aO = m[A + O2] + fa * m[G + O2], nO = m[N + O2] + fn * m[G + O2], hO = m[H + O2] + fh * m[G + O2], dO = fh * m[G + O2];
  const aT = m[A + TAN] + fa * m[G + TAN] + la * m[L + TAN], nT = fn * m[G + TAN] + ln * m[L + TAN];
  const outT = fh * m[G + TAN] + lh * m[L + TAN], hT = m[H + TAN] + outT, dT = m[D + TAN] + outT;
  const aA = m[A + ALK] + fa * m[G + ALK] + la * m[L + ALK], nA = m[N + ALK] + fn * m[G + ALK] + ln * m[L + ALK];
  const outA = fh * m[G + ALK] + lh * m[L + ALK], hA = m[H + ALK] + outA, dA = m[D + ALK] + outA;
  const aC = m[A + IC] + fa * m[G + IC] + la * m[L + IC], nC = m[N + IC] + fn * m[G + IC] + ln * m[L + IC];
  const outC = fh * m[G + IC] + lh * m[L + IC], hC = m[H + IC] + outC, dC = m[D + IC] + outC;
  const eats = lh - 1;
  // Answers to oxygen.
  let a = g[go + A_O2], h = g[go + H_O2];
  const n = g[go + N_O2], s = g[go + S_O2];
  const stifled = g[go + A_STIFLED] + g[go + N_STIFLED] + g[go + H_STIFLED];
  w[wo + oxygen] = aO * a + nO * n + hO * h + m[S + O2] * s + m[G + O2] * stifled + g[go + AIR_O2];
  w[wo + ammonia] = aT * a + nT * n + hT * h + (m[G + TAN] - m[L + TAN]) * stifled;
  w[wo + nitrite] = m[A + NO2] * a + m[N + NO2] * n;
  w[wo + nitrate] = m[N + NO3] * n;
  w[wo + sulfide] = -s;
  w[wo + organics] = la * a + ln * n + eats * h - stifled;
  w[wo + alkalinity] = aA * a + nA * n + hA * h + m[S + ALK] * s + (m[G + ALK] - m[L + ALK]) * stifled;
  w[wo + carbon] = aC * a + nC * n + hC * h + (m[G + IC] - m[L + IC]) * stifled;
  // To ammonia.
  let d = g[go + D_TAN];
  const stripped = g[go + AIR_TAN];
  const taken = cell.bed ? g[go + UT_TAN] : 0;
  a = g[go + A_TAN];
  h = g[go + H_TAN];
  w[wo + oxygen + 1] = aO * a + hO * h + dO * d;
  w[wo + ammonia + 1] = aT * a + hT * h + dT * d - stripped - taken;
  w[wo + nitrite + 1] = m[A + NO2] * a;
  w[wo + nitrate + 1] = m[D + NO3] * d;
  w[wo + organics + 1] = la * a + eats * (h + d);
  w[wo + alkalinity + 1] = aA * a + hA * h + dA * d + m[NH3 + ALK] * stripped + m[UT + ALK] * taken;
  w[wo + carbon + 1] = aC * a + hC * h + dC * d;
  // To nitrite.
  const oxidised = g[go + N_NO2];
  w[wo + oxygen + 2] = nO * oxidised;
  w[wo + ammonia + 2] = nT * oxidised;
  w[wo + nitrite + 2] = m[N + NO2] * oxidised;
  w[wo + nitrate + 2] = m[N + NO3] * oxidised;
  w[wo + organics + 2] = ln * oxidised;
  w[wo + alkalinity + 2] = nA * oxidised;
  w[wo + carbon + 2] = nC * oxidised;
  // To nitrate.
  const drunk = cell.bed ? g[go + UN_NO3] : 0;
  d = g[go + D_NO3];
  w[wo + oxygen + 3] = dO * d;
  w[wo + ammonia + 3] = dT * d;
  w[wo + nitrate + 3] = m[D + NO3] * d - drunk;
  w[wo + organics + 3] = eats * d;
  w[wo + alkalinity + 3] = dA * d + m[UN + ALK] * drunk;
  w[wo + carbon + 3] = dC * d;
  // To sulfide.
  const burnt = g[go + S_S2];
  w[wo + oxygen + 4] = m[S + O2] * burnt;
  w[wo + sulfide + 4] = -burnt - g[go + AIR_S2];
  w[wo + alkalinity + 4] = m[S + ALK] * burnt;
  // To organics.
  h = g[go + H_SS];
  d = g[go + D_SS];
  w[wo + oxygen + 5] = hO * h + dO * d;
  w[wo + ammonia + 5] = hT * h + dT * d;
  w[wo + nitrate + 5] = m[D + NO3] * d;
  w[wo + organics + 5] = eats * (h + d);
  w[wo + alkalinity + 5] = hA * h + dA * d;
  w[wo + carbon + 5] = hC * h + dC * d;
  // Carbon to alkalinity and to itself, by the transfer of carbon dioxide.
  w[wo + carbon + 6] = -g[go + AIR_ALK];
  w[wo + carbon + 7] = -g[go + AIR_IC];
}

/** W·u of each process once the block is solved: to `delta`, and on to the rows outside the block. */
export function spreadBlock(cell: Cell, m: Float64Array, g: Float64Array, go: number, u: Float64Array, rhs: Float64Array, inverse: Float64Array, o: number, delta: Float64Array, ro: number): void {
  const o2 = u[o + O2], tan = u[o + TAN], no3 = u[o + NO3], s2 = u[o + S2], ss = u[o + SS];
  const a = g[go + A_TAN] * tan + g[go + A_O2] * o2;
  const n = g[go + N_NO2] * u[o + NO2] + g[go + N_O2] * o2;
  const h = g[go + H_SS] * ss + g[go + H_O2] * o2 + g[go + H_TAN] * tan;
  const d = g[go + D_SS] * ss + g[go + D_NO3] * no3 + g[go + D_TAN] * tan;
  const s = g[go + S_S2] * s2 + g[go + S_O2] * o2;
  const sa = g[go + A_SLOUGH] * a + g[go + A_STIFLED] * o2, sn = g[go + N_SLOUGH] * n + g[go + N_STIFLED] * o2, sh = g[go + H_SLOUGH] * (h + d) + g[go + H_STIFLED] * o2;
  const la = g[go + A_LYSIS] * a - g[go + A_STIFLED] * o2, ln = g[go + N_LYSIS] * n - g[go + N_STIFLED] * o2, lh = g[go + H_LYSIS] * (h + d) - g[go + H_STIFLED] * o2;
  delta[ro + ID.nitritation] += a;
  delta[ro + ID.nitriteOxidation] += n;
  delta[ro + ID.heterotrophsAerobic] += h;
  delta[ro + ID.heterotrophsAnoxic] += d;
  delta[ro + ID.sulfideOxidation] += s;
  delta[ro + ID.sloughAmmoniaOxidisers] += sa;
  delta[ro + ID.lysisAmmoniaOxidisers] += la;
  delta[ro + ID.sloughNitriteOxidisers] += sn;
  delta[ro + ID.lysisNitriteOxidisers] += ln;
  delta[ro + ID.sloughHeterotrophs] += sh;
  delta[ro + ID.lysisHeterotrophs] += lh;
  delta[ro + ID.oxygenTransfer] += g[go + AIR_O2] * o2;
  delta[ro + ID.carbonDioxideTransfer] += g[go + AIR_IC] * u[o + IC] + g[go + AIR_ALK] * u[o + ALK];
  delta[ro + ID.hydrogenSulfideTransfer] += g[go + AIR_S2] * s2;
  delta[ro + ID.ammoniaTransfer] += g[go + AIR_TAN] * tan;
  const off = sa + sn + sh;
  rhs[o + BA] += m[A + BA] * a - sa - la;
  rhs[o + BN] += m[N + BN] * n - sn - ln;
  rhs[o + BH] += m[H + BH] * h + m[D + BH] * d - sh - lh;
  rhs[o + N2] += m[D + N2] * d;
  rhs[o + SO4] += m[S + SO4] * s + m[G + SO4] * off;
  rhs[o + FF] += m[G + FF] * off;
  rhs[o + FS] += m[G + FS] * off;
  // Phosphorus is solved by now: what comes late moves on with the water alone, as sodium does, and meets no sink in this step.
  rhs[o + P] += m[G + P] * off * inverse[o + NA] / inverse[o + P];
  if (!cell.bed) return;
  const nitrateTaken = g[go + UN_NO3] * no3;
  const ammoniumTaken = g[go + UT_TAN] * tan;
  delta[ro + ID.uptakeNitrate] += nitrateTaken;
  delta[ro + ID.uptakeAmmonium] += ammoniumTaken;
  rhs[o + QN] += nitrateTaken + ammoniumTaken;
}

/** What one cell's pore water does in one solve, by process. */
const moved = new Float64Array(ID.poreSulfideGasOut + 1);

/** What the sinks of pore water put on its diagonals. */
export function poreDiagonals(g: Float64Array, go: number, own: Float64Array, o: number): void {
  own[o + PO] += g[go + BED_O] + g[go + BED_N] + g[go + BED_S] + g[go + BED_M] + g[go + BED_G] + g[go + BED_LEAK];
  own[o + PS] += g[go + PS_UP] + g[go + PS_BY_O] + g[go + PS_BY_N] + g[go + PS_GAS] + g[go + PS_OUT];
}

/** Solves pore organics, then the pore sulfide they feed, and hands on what they give to the rows solved after them. */
export function solvePore(m: Float64Array, g: Float64Array, go: number, rhs: Float64Array, inverse: Float64Array, o: number, delta: Float64Array, ro: number): void {
  const organics = rhs[o + PO];
  const u = organics * inverse[o + PO];
  delta[ro + ID.sludgeAerobic] += moved[ID.sludgeAerobic] = g[go + BED_O] * u;
  delta[ro + ID.sludgeAnoxic] += moved[ID.sludgeAnoxic] = g[go + BED_N] * u;
  delta[ro + ID.sludgeSulfate] += moved[ID.sludgeSulfate] = g[go + BED_S] * u;
  delta[ro + ID.sludgeMethane] += moved[ID.sludgeMethane] = g[go + BED_M] * u;
  delta[ro + ID.sludgeMethaneGas] += moved[ID.sludgeMethaneGas] = g[go + BED_G] * u;
  delta[ro + ID.sludgeLeak] += moved[ID.sludgeLeak] = g[go + BED_LEAK] * u;
  applyPoreOrganics(m, moved, 0, rhs, o);
  // Their own sinks are in the diagonals already.
  rhs[o + PO] = organics;
  const sulfide = rhs[o + PS];
  const v = sulfide * inverse[o + PS];
  delta[ro + ID.poreSulfideDiffusion] += moved[ID.poreSulfideDiffusion] = g[go + PS_UP] * v;
  delta[ro + ID.poreSulfideByOxygen] += moved[ID.poreSulfideByOxygen] = g[go + PS_BY_O] * v;
  delta[ro + ID.poreSulfideByNitrate] += moved[ID.poreSulfideByNitrate] = g[go + PS_BY_N] * v;
  delta[ro + ID.poreSulfideGas] += moved[ID.poreSulfideGas] = g[go + PS_GAS] * v;
  delta[ro + ID.poreSulfideGasOut] += moved[ID.poreSulfideGasOut] = g[go + PS_OUT] * v;
  applyPoreSulfide(m, moved, 0, rhs, o);
  rhs[o + PS] = sulfide;
}
