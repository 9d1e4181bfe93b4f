// The columns of the processes that run in most cells, written out: what their rates add to the slope. The same numbers as the
// table's, without its indices, which cost more than the sums. A test holds this code to the table; the rest goes by work lists.
import type { Cell } from '../cell';
import {
  ALK, BA, BH, BN, CA, CF, CH4, CLOG, CS, FE, FF, FI, FS, IC, K, LEAF, MF, MG, MI, MS, N2, NO2, NO3, O2, OP, P, PO, PS, QCA, QFE, QK, QN, QP, ROOT,
  S2, SF, SL, SO4, SS, STATES, TAN, UF, US,
} from '../components';
import { ID } from '../processes/catalogue';
import { applyFish } from './fishColumns';
import {
  A, BA_G, BA_M, BA_N, BA_O, BA_S, BED_QUICK, BED_TOUGH, CAUGHT_QUICK, CAUGHT_TOUGH, CLUMP_QUICK, CLUMP_TOUGH, D, G, GROW, H, L, M, N, NH3, PS_N, PS_O, QUICK, S, TOUGH, UC, UK, UN, UP, UT,
} from './places';

const inRange = (p: number, first: number, last: number): boolean => p >= first && p <= last;

/** Whether the column of a process is written out here. */
export const isWrittenOut = (p: number): boolean => inRange(p, ID.nitritation, ID.poreSulfideGasOut) || inRange(p, ID.oxygenTransfer, ID.nitrogenTransfer) || inRange(p, ID.fishGrowth, ID.fishBasal)
  || inRange(p, ID.uptakeNitrate, ID.filterUnclogging) || inRange(p, ID.clumpDenitrificationFast, ID.ironLoss) || inRange(p, ID.stirFast, ID.releaseInert);

/** Adds what all written-out processes of a cell do. Rates begin at `ro`, the cell's slope at `o`; m is the matrix's table. */
export function applyColumns(cell: Cell, m: Float64Array, r: Float64Array, ro: number, out: Float64Array, o: number): void {
  applyFilm(m, r, ro, out, o);
  applyHydrolysis(m, r, ro, out, o);
  if (cell.bedThickness > 0) {
    applyPoreOrganics(m, r, ro, out, o);
    applyPoreSulfide(m, r, ro, out, o);
  }
  if (cell.stir > 0 && cell.sludgeRoom > 0) applyStir(m, r, ro, out, o);
  if (cell.work.holds) applyCaught(m, r, ro, out, o);
  if (cell.bed) applyPlants(m, r, ro, out, o);
  if (cell.fish) applyFish(m, r, ro, out, o);
  const ammonia = r[ro + ID.ammoniaTransfer];
  out[o + O2] += r[ro + ID.oxygenTransfer];
  out[o + IC] -= r[ro + ID.carbonDioxideTransfer];
  out[o + S2] -= r[ro + ID.hydrogenSulfideTransfer];
  out[o + CH4] -= r[ro + ID.methaneTransfer];
  out[o + TAN] -= ammonia;
  out[o + ALK] += m[NH3 + ALK] * ammonia;
  out[o + N2] -= r[ro + ID.nitrogenTransfer];
  out[o + OP] += r[ro + ID.freeBacteriaGrowth] - r[ro + ID.freeBacteriaDecay] - r[ro + ID.freeBacteriaKill];
  out[o + FE] -= r[ro + ID.ironLoss];
}

function applyFilm(m: Float64Array, r: Float64Array, ro: number, out: Float64Array, o: number): void {
  const a = r[ro + ID.nitritation], n = r[ro + ID.nitriteOxidation], h = r[ro + ID.heterotrophsAerobic], d = r[ro + ID.heterotrophsAnoxic];
  const ga = r[ro + ID.sloughAmmoniaOxidisers], gn = r[ro + ID.sloughNitriteOxidisers], gh = r[ro + ID.sloughHeterotrophs];
  const la = r[ro + ID.lysisAmmoniaOxidisers], ln = r[ro + ID.lysisNitriteOxidisers], lh = r[ro + ID.lysisHeterotrophs];
  const s = r[ro + ID.sulfideOxidation], e = r[ro + ID.methaneOxidation];
  const g = ga + gn + gh, l = la + ln + lh;
  out[o + O2] += m[A + O2] * a + m[N + O2] * n + m[H + O2] * h + m[G + O2] * g + m[S + O2] * s + m[M + O2] * e;
  out[o + TAN] += m[A + TAN] * a + m[H + TAN] * h + m[D + TAN] * d + m[G + TAN] * g + m[L + TAN] * l;
  out[o + NO2] += m[A + NO2] * a + m[N + NO2] * n;
  out[o + NO3] += m[N + NO3] * n + m[D + NO3] * d;
  out[o + IC] += m[A + IC] * a + m[N + IC] * n + m[H + IC] * h + m[D + IC] * d + m[G + IC] * g + m[L + IC] * l + m[M + IC] * e;
  out[o + ALK] += m[A + ALK] * a + m[N + ALK] * n + m[H + ALK] * h + m[D + ALK] * d + m[G + ALK] * g + m[L + ALK] * l + m[S + ALK] * s;
  out[o + S2] -= s;
  out[o + SS] += l - h - d;
  out[o + CH4] -= e;
  out[o + N2] += m[D + N2] * d;
  out[o + SO4] += m[G + SO4] * g + m[S + SO4] * s;
  out[o + P] += m[G + P] * g;
  out[o + FF] += m[G + FF] * g;
  out[o + FS] += m[G + FS] * g;
  out[o + BA] += m[A + BA] * a - ga - la;
  out[o + BN] += m[N + BN] * n - gn - ln;
  out[o + BH] += m[H + BH] * h + m[D + BH] * d - gh - lh;
}

function applyHydrolysis(m: Float64Array, r: Float64Array, ro: number, out: Float64Array, o: number): void {
  const cf = r[ro + ID.hydrolysisCoarseFast], ff = r[ro + ID.hydrolysisFineFast], uf = r[ro + ID.hydrolysisSuperfineFast];
  const cs = r[ro + ID.hydrolysisCoarseSlow], fs = r[ro + ID.hydrolysisFineSlow], us = r[ro + ID.hydrolysisSuperfineSlow];
  const mf = r[ro + ID.hydrolysisCaughtFast], ms = r[ro + ID.hydrolysisCaughtSlow], sf = r[ro + ID.hydrolysisSludgeFast], sl = r[ro + ID.hydrolysisSludgeSlow];
  const q = cf + ff + uf, t = cs + fs + us;
  out[o + TAN] += m[QUICK + TAN] * q + m[TOUGH + TAN] * t + m[CAUGHT_QUICK + TAN] * mf + m[CAUGHT_TOUGH + TAN] * ms + m[BED_QUICK + TAN] * sf + m[BED_TOUGH + TAN] * sl;
  out[o + IC] += m[QUICK + IC] * q + m[TOUGH + IC] * t + m[CAUGHT_QUICK + IC] * mf + m[CAUGHT_TOUGH + IC] * ms + m[BED_QUICK + IC] * sf + m[BED_TOUGH + IC] * sl;
  out[o + ALK] += m[QUICK + ALK] * q + m[TOUGH + ALK] * t + m[CAUGHT_QUICK + ALK] * mf + m[CAUGHT_TOUGH + ALK] * ms + m[BED_QUICK + ALK] * sf + m[BED_TOUGH + ALK] * sl;
  out[o + SO4] += m[QUICK + SO4] * q + m[TOUGH + SO4] * t;
  out[o + P] += m[QUICK + P] * q + m[TOUGH + P] * t + m[CAUGHT_QUICK + P] * mf + m[CAUGHT_TOUGH + P] * ms + m[BED_QUICK + P] * sf + m[BED_TOUGH + P] * sl;
  out[o + S2] += m[CAUGHT_QUICK + S2] * mf + m[CAUGHT_TOUGH + S2] * ms;
  out[o + SS] += m[QUICK + SS] * q + m[TOUGH + SS] * t + m[CAUGHT_QUICK + SS] * mf + m[CAUGHT_TOUGH + SS] * ms;
  out[o + PO] += m[BED_QUICK + PO] * sf + m[BED_TOUGH + PO] * sl;
  out[o + PS] += m[BED_QUICK + PS] * sf + m[BED_TOUGH + PS] * sl;
  out[o + CF] -= cf;
  out[o + CS] -= cs;
  out[o + FF] -= ff;
  out[o + FS] -= fs;
  out[o + UF] -= uf;
  out[o + US] -= us;
  out[o + MF] -= mf;
  out[o + MS] -= ms;
  out[o + SF] -= sf;
  out[o + SL] -= sl;
}

/** What becomes of the pore water's organics: rates `r` to `out`, which may also be the W·u parts and the right-hand side of the solver. */
export function applyPoreOrganics(m: Float64Array, r: Float64Array, ro: number, out: Float64Array, o: number): void {
  const a = r[ro + ID.sludgeAerobic], n = r[ro + ID.sludgeAnoxic], s = r[ro + ID.sludgeSulfate], e = r[ro + ID.sludgeMethane], g = r[ro + ID.sludgeMethaneGas], leak = r[ro + ID.sludgeLeak];
  out[o + O2] += m[BA_O + O2] * a;
  out[o + NO3] += m[BA_N + NO3] * n;
  out[o + IC] += m[BA_O + IC] * a + m[BA_N + IC] * n + m[BA_S + IC] * s + m[BA_M + IC] * e + m[BA_G + IC] * g;
  out[o + ALK] += m[BA_N + ALK] * n + m[BA_S + ALK] * s;
  out[o + SS] += leak;
  out[o + CH4] += m[BA_M + CH4] * e;
  out[o + N2] += m[BA_N + N2] * n;
  out[o + SO4] += m[BA_S + SO4] * s;
  out[o + PO] -= a + n + s + e + g + leak;
  out[o + PS] += m[BA_S + PS] * s;
}

/** What becomes of the pore water's sulfide, in the same way. */
export function applyPoreSulfide(m: Float64Array, r: Float64Array, ro: number, out: Float64Array, o: number): void {
  const up = r[ro + ID.poreSulfideDiffusion] + r[ro + ID.poreSulfideGas], byO = r[ro + ID.poreSulfideByOxygen], byN = r[ro + ID.poreSulfideByNitrate];
  out[o + O2] += m[PS_O + O2] * byO;
  out[o + NO3] += m[PS_N + NO3] * byN;
  out[o + ALK] += m[PS_O + ALK] * byO + m[PS_N + ALK] * byN;
  out[o + S2] += up;
  out[o + N2] += m[PS_N + N2] * byN;
  out[o + SO4] += m[PS_O + SO4] * byO + m[PS_N + SO4] * byN;
  out[o + PS] -= up + byO + byN + r[ro + ID.poreSulfideGasOut];
}

/** Sludge stirred up: half comes up coarse, half broken to fines. */
/** Where the column of stirring up begins; its three parts are alike. */
const STIR = ID.stirFast * STATES;

function applyStir(m: Float64Array, r: Float64Array, ro: number, out: Float64Array, o: number): void {
  for (let part = 0; part < 3; part++) {
    const stirred = r[ro + ID.stirFast + part];
    out[o + SF + part] -= stirred;
    out[o + CF + part] += m[STIR + CF] * stirred;
    out[o + FF + part] += m[STIR + FF] * stirred;
  }
}

/** What solids caught in mats, media and roots do beside coming apart: nitrate burnt in their clumps, what is let go, a filter that opens. */
function applyCaught(m: Float64Array, r: Float64Array, ro: number, out: Float64Array, o: number): void {
  const f = r[ro + ID.clumpDenitrificationFast], s = r[ro + ID.clumpDenitrificationSlow];
  const lf = r[ro + ID.releaseFast], ls = r[ro + ID.releaseSlow], li = r[ro + ID.releaseInert];
  out[o + TAN] += m[CLUMP_QUICK + TAN] * f + m[CLUMP_TOUGH + TAN] * s;
  out[o + NO3] += m[CLUMP_QUICK + NO3] * f + m[CLUMP_TOUGH + NO3] * s;
  out[o + N2] += m[CLUMP_QUICK + N2] * f + m[CLUMP_TOUGH + N2] * s;
  out[o + P] += m[CLUMP_QUICK + P] * f + m[CLUMP_TOUGH + P] * s;
  out[o + S2] += m[CLUMP_QUICK + S2] * f + m[CLUMP_TOUGH + S2] * s;
  out[o + IC] += m[CLUMP_QUICK + IC] * f + m[CLUMP_TOUGH + IC] * s;
  out[o + ALK] += m[CLUMP_QUICK + ALK] * f + m[CLUMP_TOUGH + ALK] * s;
  out[o + MF] -= f + lf;
  out[o + MS] -= s + ls;
  out[o + MI] -= li;
  out[o + FF] += lf;
  out[o + FS] += ls;
  out[o + FI] += li;
  out[o + CLOG] -= r[ro + ID.filterUnclogging];
}

function applyPlants(m: Float64Array, r: Float64Array, ro: number, out: Float64Array, o: number): void {
  const n = r[ro + ID.uptakeNitrate], t = r[ro + ID.uptakeAmmonium], p = r[ro + ID.uptakePhosphate], k = r[ro + ID.uptakePotassium], c = r[ro + ID.uptakeCalcium];
  const f = r[ro + ID.uptakeIron], g = r[ro + ID.leafGrowth];
  out[o + NO3] -= n;
  out[o + TAN] -= t;
  out[o + P] -= p;
  out[o + K] -= k;
  out[o + CA] -= c;
  out[o + FE] -= f;
  out[o + ALK] += m[UN + ALK] * n + m[UT + ALK] * t + m[UP + ALK] * p + m[UK + ALK] * k + m[UC + ALK] * c + m[GROW + ALK] * g;
  out[o + SO4] += m[GROW + SO4] * g;
  out[o + MG] += m[GROW + MG] * g;
  out[o + LEAF] += g;
  out[o + QN] += n + t + m[GROW + QN] * g;
  out[o + QP] += p + m[GROW + QP] * g;
  out[o + QK] += k + m[GROW + QK] * g;
  out[o + QCA] += c + m[GROW + QCA] * g;
  out[o + QFE] += f + m[GROW + QFE] * g;
  out[o + ROOT] += r[ro + ID.rootRelaxation];
}
