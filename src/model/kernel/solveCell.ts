// Solves (d I − W) u = rhs of one cell.
// Written by `npm run kernels` from the tables of components and processes: never edited, stale copies fail a test.
import type { Cell } from '../cell';
import { ALK, BA, BH, BN, CA, CF, CH4, CI, CL, CLOG, CS, FE, FF, FI, FISH, FS, GUT, IC, K, LEAF, MF, MG, MI, MS, N2, NA, NO2, NO3, O2, OP,
  P, PO, PS, QCA, QFE, QK, QN, QP, ROOT, ROT, S2, SF, SI, SL, SO4, SS, TAN, UF, UI, US } from '../components';
import { ID, KEPT, TABLE } from '../processes/catalogue';

/**
 * Solves one cell: right-hand sides (overwritten) and solution begin at `o`. Adds each process's part of W·u to `delta` from `ro`.
 * @param v 1/volume @param m the matrix's table @param held whether a rig holds oxygen
 * @returns what that hold adds to balance what is drawn on it, g/d
 */
export function solveCell(cell: Cell, v: number, held: boolean, m: Float64Array, g: Float64Array, go: number, w: Float64Array, wo: number,
  lu: Float64Array, lo: number, rhs: Float64Array, u: Float64Array, o: number, delta: Float64Array, ro: number): number {
  const carried = lu[lo + 13], resting = lu[lo + 14];
  // --- alone before the block: their sinks take from it or give to it
  const u_PO = u[o + PO] = rhs[o + PO] * lu[lo + 10], u_GUT = u[o + GUT] = rhs[o + GUT] * lu[lo + 12];
  // --- sludge
  if (cell.bedThickness > 0) {
    const sludgeAerobic = g[go + KEPT.sludgeAerobic_PO] * u_PO, sludgeAnoxic = g[go + KEPT.sludgeAnoxic_PO] * u_PO,
      sludgeSulfate = g[go + KEPT.sludgeSulfate_PO] * u_PO, sludgeMethane = g[go + KEPT.sludgeMethane_PO] * u_PO,
      sludgeMethaneGas = g[go + KEPT.sludgeMethaneGas_PO] * u_PO, sludgeLeak = g[go + KEPT.sludgeLeak_PO] * u_PO;
    delta[ro + ID.sludgeAerobic] += sludgeAerobic; delta[ro + ID.sludgeAnoxic] += sludgeAnoxic;
    delta[ro + ID.sludgeSulfate] += sludgeSulfate; delta[ro + ID.sludgeMethane] += sludgeMethane;
    delta[ro + ID.sludgeMethaneGas] += sludgeMethaneGas; delta[ro + ID.sludgeLeak] += sludgeLeak;
    rhs[o + O2] -= sludgeAerobic;
    rhs[o + NO3] -= 0.3501968873054566 * sludgeAnoxic;
    rhs[o + IC] += m[TABLE.sludgeAerobic_IC] * (sludgeAerobic + sludgeAnoxic + sludgeSulfate) + m[TABLE.sludgeMethane_IC] * (sludgeMethane
      + sludgeMethaneGas);
    rhs[o + ALK] += 0.025001562597662355 * sludgeAnoxic + 0.03125195324707794 * sludgeSulfate;
    rhs[o + SS] += sludgeLeak;
    rhs[o + CH4] += sludgeMethane;
    rhs[o + N2] += 0.35019688730545656 * sludgeAnoxic;
    rhs[o + SO4] -= 0.5009688105506594 * sludgeSulfate;
    rhs[o + PS] += 0.5009688105506594 * sludgeSulfate;
  }
  // --- fish
  if (cell.fish) {
    const fishGrowth = g[go + KEPT.fishGrowth_GUT] * u_GUT, fishExpenditure = g[go + KEPT.fishExpenditure_GUT] * u_GUT;
    delta[ro + ID.fishGrowth] += fishGrowth; delta[ro + ID.fishExpenditure] += fishExpenditure;
    const fishAll = fishGrowth + fishExpenditure;
    rhs[o + O2] += m[TABLE.fishGrowth_O2] * fishGrowth + m[TABLE.fishExpenditure_O2] * fishExpenditure;
    rhs[o + TAN] += m[TABLE.fishGrowth_TAN] * fishGrowth + m[TABLE.fishExpenditure_TAN] * fishExpenditure;
    rhs[o + IC] += m[TABLE.fishGrowth_IC] * fishGrowth + m[TABLE.fishExpenditure_IC] * fishExpenditure;
    rhs[o + ALK] += m[TABLE.fishGrowth_ALK] * fishGrowth + m[TABLE.fishExpenditure_ALK] * fishExpenditure;
    rhs[o + SS] += m[TABLE.fishGrowth_SS] * fishAll;
    rhs[o + SO4] += m[TABLE.fishGrowth_SO4] * fishGrowth + m[TABLE.fishExpenditure_SO4] * fishExpenditure;
    rhs[o + P] += m[TABLE.fishGrowth_P] * fishGrowth + m[TABLE.fishExpenditure_P] * fishExpenditure;
    rhs[o + K] += m[TABLE.fishGrowth_K] * fishGrowth + m[TABLE.fishExpenditure_K] * fishExpenditure;
    rhs[o + CA] += m[TABLE.fishGrowth_CA] * fishGrowth + m[TABLE.fishExpenditure_CA] * fishExpenditure;
    rhs[o + MG] += m[TABLE.fishGrowth_MG] * fishGrowth + m[TABLE.fishExpenditure_MG] * fishExpenditure;
    rhs[o + FE] += m[TABLE.fishGrowth_FE] * fishAll;
    rhs[o + CF] += m[TABLE.fishGrowth_CF] * fishAll;
    rhs[o + CS] += m[TABLE.fishGrowth_CS] * fishAll;
    rhs[o + CI] += m[TABLE.fishGrowth_CI] * fishAll;
    rhs[o + FF] += m[TABLE.fishGrowth_FF] * fishAll;
    rhs[o + FS] += m[TABLE.fishGrowth_FS] * fishAll;
    rhs[o + FI] += m[TABLE.fishGrowth_FI] * fishAll;
    rhs[o + UF] += m[TABLE.fishGrowth_UF] * fishAll;
    rhs[o + US] += m[TABLE.fishGrowth_US] * fishAll;
    rhs[o + UI] += m[TABLE.fishGrowth_UI] * fishAll;
    rhs[o + FISH] += m[TABLE.fishGrowth_FISH] * fishGrowth;
  }
  const u_CH4 = u[o + CH4] = rhs[o + CH4] * lu[lo + 0], u_P = u[o + P] = rhs[o + P] * lu[lo + 2], u_K = u[o + K] = rhs[o + K] * lu[lo + 3],
    u_CA = u[o + CA] = rhs[o + CA] * lu[lo + 4], u_PS = u[o + PS] = rhs[o + PS] * lu[lo + 11];
  // --- everywhere
  {
    const methaneOxidation = g[go + KEPT.methaneOxidation_CH4] * u_CH4, methaneTransfer = g[go + KEPT.methaneTransfer_CH4] * u_CH4,
      sloughAmmoniaOxidisers = g[go + KEPT.sloughAmmoniaOxidisers_P] * u_P,
      sloughNitriteOxidisers = g[go + KEPT.sloughNitriteOxidisers_P] * u_P, sloughHeterotrophs = g[go + KEPT.sloughHeterotrophs_P] * u_P;
    delta[ro + ID.methaneOxidation] += methaneOxidation; delta[ro + ID.methaneTransfer] += methaneTransfer;
    delta[ro + ID.sloughAmmoniaOxidisers] += sloughAmmoniaOxidisers; delta[ro + ID.lysisAmmoniaOxidisers] -= sloughAmmoniaOxidisers;
    delta[ro + ID.sloughNitriteOxidisers] += sloughNitriteOxidisers; delta[ro + ID.lysisNitriteOxidisers] -= sloughNitriteOxidisers;
    delta[ro + ID.sloughHeterotrophs] += sloughHeterotrophs; delta[ro + ID.lysisHeterotrophs] -= sloughHeterotrophs;
    const sloughAll = sloughAmmoniaOxidisers + sloughNitriteOxidisers + sloughHeterotrophs;
    rhs[o + O2] -= methaneOxidation;
    rhs[o + TAN] += m[TABLE.sloughAmmoniaOxidisers_TAN] * sloughAll - m[TABLE.lysisAmmoniaOxidisers_TAN] * sloughAll;
    rhs[o + IC] += 0.01562597662353897 * methaneOxidation + m[TABLE.sloughAmmoniaOxidisers_IC] * sloughAll
      - m[TABLE.lysisAmmoniaOxidisers_IC] * sloughAll;
    rhs[o + ALK] += m[TABLE.sloughAmmoniaOxidisers_ALK] * sloughAll - m[TABLE.lysisAmmoniaOxidisers_ALK] * sloughAll;
    rhs[o + SS] -= sloughAmmoniaOxidisers + sloughNitriteOxidisers + sloughHeterotrophs;
    rhs[o + SO4] += m[TABLE.sloughAmmoniaOxidisers_SO4] * sloughAll;
    rhs[o + FF] += m[TABLE.sloughAmmoniaOxidisers_FF] * sloughAll;
    rhs[o + FS] += m[TABLE.sloughAmmoniaOxidisers_FS] * sloughAll;
  }
  // --- sludge
  if (cell.bedThickness > 0) {
    const poreSulfideDiffusion = g[go + KEPT.poreSulfideDiffusion_PS] * u_PS,
      poreSulfideByOxygen = g[go + KEPT.poreSulfideByOxygen_PS] * u_PS, poreSulfideByNitrate = g[go + KEPT.poreSulfideByNitrate_PS] * u_PS,
      poreSulfideGas = g[go + KEPT.poreSulfideGas_PS] * u_PS, poreSulfideGasOut = g[go + KEPT.poreSulfideGasOut_PS] * u_PS;
    delta[ro + ID.poreSulfideDiffusion] += poreSulfideDiffusion; delta[ro + ID.poreSulfideByOxygen] += poreSulfideByOxygen;
    delta[ro + ID.poreSulfideByNitrate] += poreSulfideByNitrate; delta[ro + ID.poreSulfideGas] += poreSulfideGas;
    delta[ro + ID.poreSulfideGasOut] += poreSulfideGasOut;
    rhs[o + O2] -= 1.9961322520274485 * poreSulfideByOxygen;
    rhs[o + NO3] -= 0.6990393013100437 * poreSulfideByNitrate;
    rhs[o + ALK] -= 0.06238303181534622 * poreSulfideByOxygen + 0.012476606363069236 * poreSulfideByNitrate;
    rhs[o + S2] += poreSulfideDiffusion + poreSulfideGas;
    rhs[o + N2] += 0.6990393013100437 * poreSulfideByNitrate;
    rhs[o + SO4] += poreSulfideByOxygen + poreSulfideByNitrate;
  }
  // --- crop
  if (cell.bed) {
    const uptakePhosphate = g[go + KEPT.uptakePhosphate_P] * u_P, uptakePotassium = g[go + KEPT.uptakePotassium_K] * u_K,
      uptakeCalcium = g[go + KEPT.uptakeCalcium_CA] * u_CA;
    delta[ro + ID.uptakePhosphate] += uptakePhosphate; delta[ro + ID.uptakePotassium] += uptakePotassium;
    delta[ro + ID.uptakeCalcium] += uptakeCalcium;
    rhs[o + ALK] += 0.032285142377477885 * uptakePhosphate - 0.02557675584428871 * uptakePotassium - 0.04990268975497779 * uptakeCalcium;
    rhs[o + QP] += uptakePhosphate;
    rhs[o + QK] += uptakePotassium;
    rhs[o + QCA] += uptakeCalcium;
  }
  // --- the block
  const b_IC = rhs[o + IC];
  const b_ALK = rhs[o + ALK];
  const b_S2 = rhs[o + S2];
  const b_NO2 = rhs[o + NO2];
  const b_NO3 = rhs[o + NO3] - lu[lo + 22] * b_NO2;
  const b_TAN = rhs[o + TAN] - lu[lo + 21] * b_NO2 - lu[lo + 25] * b_NO3;
  const b_SS = rhs[o + SS] - lu[lo + 23] * b_NO2 - lu[lo + 26] * b_NO3 - lu[lo + 31] * b_TAN;
  const b_O2 = (held ? 0 : rhs[o + O2]) - lu[lo + 18] * b_S2 - lu[lo + 20] * b_NO2 - lu[lo + 30] * b_TAN - lu[lo + 35] * b_SS;
  const u_O2 = u[o + O2] = b_O2 * lu[lo + 37];
  const u_SS = u[o + SS] = (b_SS - lu[lo + 36] * u_O2) * lu[lo + 34];
  const u_TAN = u[o + TAN] = (b_TAN - lu[lo + 32] * u_O2 - lu[lo + 33] * u_SS) * lu[lo + 29];
  const u_NO3 = u[o + NO3] = (b_NO3 - lu[lo + 27] * u_O2 - lu[lo + 28] * u_TAN + w[wo + 17] * u_SS) * lu[lo + 24];
  const u_NO2 = u[o + NO2] = (b_NO2 + w[wo + 10] * u_O2 + w[wo + 11] * u_TAN) * lu[lo + 19];
  const u_S2 = u[o + S2] = (b_S2 + w[wo + 32] * u_O2) * lu[lo + 17];
  const u_ALK = u[o + ALK] = (b_ALK + w[wo + 25] * u_O2 + w[wo + 26] * u_TAN + w[wo + 27] * u_NO2 + w[wo + 28] * u_NO3 + w[wo + 30] * u_S2
    + w[wo + 31] * u_SS) * lu[lo + 16];
  const u_IC = u[o + IC] = (b_IC + w[wo + 18] * u_O2 + w[wo + 19] * u_TAN + w[wo + 20] * u_NO2 + w[wo + 21] * u_NO3 + w[wo + 23] * u_ALK
    + w[wo + 24] * u_SS) * lu[lo + 15];
  // --- everywhere: what the block's processes do
  {
    const nitritation = g[go + KEPT.nitritation_TAN] * u_TAN
      + g[go + KEPT.nitritation_O2] * u_O2, nitriteOxidation = g[go + KEPT.nitriteOxidation_NO2] * u_NO2
      + g[go + KEPT.nitriteOxidation_O2] * u_O2, heterotrophsAerobic = g[go + KEPT.heterotrophsAerobic_SS] * u_SS
      + g[go + KEPT.heterotrophsAerobic_O2] * u_O2
      + g[go + KEPT.heterotrophsAerobic_TAN] * u_TAN, heterotrophsAnoxic = g[go + KEPT.heterotrophsAnoxic_SS] * u_SS
      + g[go + KEPT.heterotrophsAnoxic_NO3] * u_NO3
      + g[go + KEPT.heterotrophsAnoxic_TAN] * u_TAN, sulfideOxidation = g[go + KEPT.sulfideOxidation_S2] * u_S2
      + g[go + KEPT.sulfideOxidation_O2] * u_O2, oxygenTransfer = g[go + KEPT.oxygenTransfer_O2] * u_O2,
      carbonDioxideTransfer = g[go + KEPT.carbonDioxideTransfer_IC] * u_IC
      + g[go + KEPT.carbonDioxideTransfer_ALK] * u_ALK, hydrogenSulfideTransfer = g[go + KEPT.hydrogenSulfideTransfer_S2] * u_S2,
      ammoniaTransfer = g[go + KEPT.ammoniaTransfer_TAN] * u_TAN,
        sloughAmmoniaOxidisers_own = g[go + KEPT.sloughAmmoniaOxidisers_O2] * u_O2,
      sloughAmmoniaOxidisers = g[go + KEPT.sloughAmmoniaOxidisers_share] * nitritation
      + sloughAmmoniaOxidisers_own, sloughNitriteOxidisers_own = g[go + KEPT.sloughNitriteOxidisers_O2] * u_O2,
      sloughNitriteOxidisers = g[go + KEPT.sloughNitriteOxidisers_share] * nitriteOxidation
      + sloughNitriteOxidisers_own, sloughHeterotrophs_own = g[go + KEPT.sloughHeterotrophs_O2] * u_O2,
      sloughHeterotrophs = g[go + KEPT.sloughHeterotrophs_share] * (heterotrophsAerobic + heterotrophsAnoxic)
      + sloughHeterotrophs_own, lysisAmmoniaOxidisers = g[go + KEPT.lysisAmmoniaOxidisers_share] * nitritation
      - sloughAmmoniaOxidisers_own, lysisNitriteOxidisers = g[go + KEPT.lysisNitriteOxidisers_share] * nitriteOxidation
      - sloughNitriteOxidisers_own, lysisHeterotrophs = g[go + KEPT.lysisHeterotrophs_share] * (heterotrophsAerobic + heterotrophsAnoxic)
      - sloughHeterotrophs_own;
    delta[ro + ID.nitritation] += nitritation; delta[ro + ID.nitriteOxidation] += nitriteOxidation;
    delta[ro + ID.heterotrophsAerobic] += heterotrophsAerobic; delta[ro + ID.heterotrophsAnoxic] += heterotrophsAnoxic;
    delta[ro + ID.sulfideOxidation] += sulfideOxidation; delta[ro + ID.oxygenTransfer] += oxygenTransfer;
    delta[ro + ID.carbonDioxideTransfer] += carbonDioxideTransfer; delta[ro + ID.hydrogenSulfideTransfer] += hydrogenSulfideTransfer;
    delta[ro + ID.ammoniaTransfer] += ammoniaTransfer; delta[ro + ID.sloughAmmoniaOxidisers] += sloughAmmoniaOxidisers;
    delta[ro + ID.sloughNitriteOxidisers] += sloughNitriteOxidisers; delta[ro + ID.sloughHeterotrophs] += sloughHeterotrophs;
    delta[ro + ID.lysisAmmoniaOxidisers] += lysisAmmoniaOxidisers; delta[ro + ID.lysisNitriteOxidisers] += lysisNitriteOxidisers;
    delta[ro + ID.lysisHeterotrophs] += lysisHeterotrophs;
    const sloughAll = sloughAmmoniaOxidisers + sloughNitriteOxidisers + sloughHeterotrophs;
    rhs[o + N2] += m[TABLE.heterotrophsAnoxic_N2] * heterotrophsAnoxic;
    rhs[o + SO4] += sulfideOxidation + m[TABLE.sloughAmmoniaOxidisers_SO4] * sloughAll;
    u[o + P] += (m[TABLE.sloughAmmoniaOxidisers_P] * sloughAll) * carried;
    rhs[o + FF] += m[TABLE.sloughAmmoniaOxidisers_FF] * sloughAll;
    rhs[o + FS] += m[TABLE.sloughAmmoniaOxidisers_FS] * sloughAll;
    rhs[o + BA] += m[TABLE.nitritation_BA] * nitritation - sloughAmmoniaOxidisers - lysisAmmoniaOxidisers;
    rhs[o + BN] += m[TABLE.nitriteOxidation_BN] * nitriteOxidation - sloughNitriteOxidisers - lysisNitriteOxidisers;
    rhs[o + BH] += m[TABLE.heterotrophsAerobic_BH] * heterotrophsAerobic + m[TABLE.heterotrophsAnoxic_BH] * heterotrophsAnoxic
      - sloughHeterotrophs - lysisHeterotrophs;
  }
  // --- crop: what the block's processes do
  if (cell.bed) {
    const rootRespiration = g[go + KEPT.rootRespiration_O2] * u_O2, coatRespirationFast = g[go + KEPT.coatRespirationFast_O2] * u_O2,
      coatRespirationSlow = g[go + KEPT.coatRespirationSlow_O2] * u_O2, uptakeNitrate = g[go + KEPT.uptakeNitrate_NO3] * u_NO3,
      uptakeAmmonium = g[go + KEPT.uptakeAmmonium_TAN] * u_TAN;
    delta[ro + ID.rootRespiration] += rootRespiration; delta[ro + ID.coatRespirationFast] += coatRespirationFast;
    delta[ro + ID.coatRespirationSlow] += coatRespirationSlow; delta[ro + ID.uptakeNitrate] += uptakeNitrate;
    delta[ro + ID.uptakeAmmonium] += uptakeAmmonium;
    rhs[o + SO4] += m[TABLE.hydrolysisCoarseFast_SO4] * coatRespirationFast + m[TABLE.hydrolysisCoarseSlow_SO4] * coatRespirationSlow;
    u[o + P] += (m[TABLE.hydrolysisCoarseFast_P] * coatRespirationFast + m[TABLE.hydrolysisCoarseSlow_P] * coatRespirationSlow) * carried;
    rhs[o + MF] -= coatRespirationFast;
    rhs[o + MS] -= coatRespirationSlow;
    rhs[o + QN] += uptakeNitrate + uptakeAmmonium;
  }
  // --- alone after it
  const u_N2 = u[o + N2] = rhs[o + N2] * lu[lo + 1], u_FE = u[o + FE] = rhs[o + FE] * lu[lo + 5],
    u_OP = u[o + OP] = rhs[o + OP] * lu[lo + 6], u_CF = u[o + CF] = rhs[o + CF] * lu[lo + 7], u_CS = u[o + CS] = rhs[o + CS] * lu[lo + 7],
    u_CI = u[o + CI] = rhs[o + CI] * lu[lo + 7];
  // --- everywhere
  {
    const nitrogenTransfer = g[go + KEPT.nitrogenTransfer_N2] * u_N2, freeBacteriaDecay = g[go + KEPT.freeBacteriaDecay_OP] * u_OP;
    delta[ro + ID.nitrogenTransfer] += nitrogenTransfer; delta[ro + ID.freeBacteriaDecay] += freeBacteriaDecay;
  }
  // --- crop
  if (cell.bed) {
    const uptakeIron = g[go + KEPT.uptakeIron_FE] * u_FE;
    delta[ro + ID.uptakeIron] += uptakeIron;
    rhs[o + QFE] += uptakeIron;
  }
  // --- lamp
  if (cell.kill > 0) {
    const freeBacteriaKill = g[go + KEPT.freeBacteriaKill_OP] * u_OP;
    delta[ro + ID.freeBacteriaKill] += freeBacteriaKill;
  }
  // --- settle0
  if (cell.settle0 > 0) {
    const cleared = cell.settle0 * v, settleCoarseFast = cleared * u_CF, settleCoarseSlow = cleared * u_CS,
      settleCoarseInert = cleared * u_CI;
    delta[ro + ID.settleCoarseFast] += settleCoarseFast; delta[ro + ID.settleCoarseSlow] += settleCoarseSlow;
    delta[ro + ID.settleCoarseInert] += settleCoarseInert;
    rhs[o + SF] += settleCoarseFast;
    rhs[o + SL] += settleCoarseSlow;
    rhs[o + SI] += settleCoarseInert;
  }
  // --- catch0
  if (cell.catch0 > 0) {
    const cleared = cell.catch0 * v, catchCoarseFast = cleared * u_CF, catchCoarseSlow = cleared * u_CS, catchCoarseInert = cleared * u_CI;
    delta[ro + ID.catchCoarseFast] += catchCoarseFast; delta[ro + ID.catchCoarseSlow] += catchCoarseSlow;
    delta[ro + ID.catchCoarseInert] += catchCoarseInert;
    rhs[o + MF] += catchCoarseFast;
    rhs[o + MS] += catchCoarseSlow;
    rhs[o + MI] += catchCoarseInert;
    rhs[o + CLOG] += m[TABLE.catchCoarseFast_CLOG] * (catchCoarseFast + catchCoarseSlow)
      + m[TABLE.catchCoarseInert_CLOG] * catchCoarseInert;
  }
  // --- shear
  if (cell.shear > 0) {
    const shearFast = cell.shear * u_CF, shearSlow = cell.shear * u_CS, shearInert = cell.shear * u_CI;
    delta[ro + ID.shearFast] += shearFast; delta[ro + ID.shearSlow] += shearSlow; delta[ro + ID.shearInert] += shearInert;
    rhs[o + FF] += m[TABLE.shearFast_FF] * shearFast;
    rhs[o + FS] += m[TABLE.shearFast_FF] * shearSlow;
    rhs[o + FI] += m[TABLE.shearFast_FF] * shearInert;
    rhs[o + UF] += m[TABLE.shearFast_UF] * shearFast;
    rhs[o + US] += m[TABLE.shearFast_UF] * shearSlow;
    rhs[o + UI] += m[TABLE.shearFast_UF] * shearInert;
  }
  const u_FF = u[o + FF] = rhs[o + FF] * lu[lo + 8], u_FS = u[o + FS] = rhs[o + FS] * lu[lo + 8],
    u_FI = u[o + FI] = rhs[o + FI] * lu[lo + 8], u_UF = u[o + UF] = rhs[o + UF] * lu[lo + 9], u_US = u[o + US] = rhs[o + US] * lu[lo + 9],
    u_UI = u[o + UI] = rhs[o + UI] * lu[lo + 9];
  // --- settle1
  if (cell.settle1 > 0) {
    const cleared = cell.settle1 * v, settleFineFast = cleared * u_FF, settleFineSlow = cleared * u_FS, settleFineInert = cleared * u_FI;
    delta[ro + ID.settleFineFast] += settleFineFast; delta[ro + ID.settleFineSlow] += settleFineSlow;
    delta[ro + ID.settleFineInert] += settleFineInert;
    rhs[o + SF] += settleFineFast;
    rhs[o + SL] += settleFineSlow;
    rhs[o + SI] += settleFineInert;
  }
  // --- settle2
  if (cell.settle2 > 0) {
    const cleared = cell.settle2 * v, settleSuperfineFast = cleared * u_UF, settleSuperfineSlow = cleared * u_US,
      settleSuperfineInert = cleared * u_UI;
    delta[ro + ID.settleSuperfineFast] += settleSuperfineFast; delta[ro + ID.settleSuperfineSlow] += settleSuperfineSlow;
    delta[ro + ID.settleSuperfineInert] += settleSuperfineInert;
    rhs[o + SF] += settleSuperfineFast;
    rhs[o + SL] += settleSuperfineSlow;
    rhs[o + SI] += settleSuperfineInert;
  }
  // --- catch1
  if (cell.catch1 > 0) {
    const cleared = cell.catch1 * v, catchFineFast = cleared * u_FF, catchFineSlow = cleared * u_FS, catchFineInert = cleared * u_FI;
    delta[ro + ID.catchFineFast] += catchFineFast; delta[ro + ID.catchFineSlow] += catchFineSlow;
    delta[ro + ID.catchFineInert] += catchFineInert;
    rhs[o + MF] += catchFineFast;
    rhs[o + MS] += catchFineSlow;
    rhs[o + MI] += catchFineInert;
    rhs[o + CLOG] += m[TABLE.catchFineFast_CLOG] * (catchFineFast + catchFineSlow) + m[TABLE.catchFineInert_CLOG] * catchFineInert;
  }
  // --- catch2
  if (cell.catch2 > 0) {
    const cleared = cell.catch2 * v, catchSuperfineFast = cleared * u_UF, catchSuperfineSlow = cleared * u_US,
      catchSuperfineInert = cleared * u_UI;
    delta[ro + ID.catchSuperfineFast] += catchSuperfineFast; delta[ro + ID.catchSuperfineSlow] += catchSuperfineSlow;
    delta[ro + ID.catchSuperfineInert] += catchSuperfineInert;
    rhs[o + MF] += catchSuperfineFast;
    rhs[o + MS] += catchSuperfineSlow;
    rhs[o + MI] += catchSuperfineInert;
    rhs[o + CLOG] += m[TABLE.catchFineFast_CLOG] * (catchSuperfineFast + catchSuperfineSlow)
      + m[TABLE.catchFineInert_CLOG] * catchSuperfineInert;
  }
  // --- carried off, or at rest
  u[o + SO4] = rhs[o + SO4] * carried; u[o + MG] = rhs[o + MG] * carried; u[o + NA] = rhs[o + NA] * carried;
  u[o + CL] = rhs[o + CL] * carried; u[o + SF] = rhs[o + SF] * resting; u[o + SL] = rhs[o + SL] * resting;
  u[o + SI] = rhs[o + SI] * resting; u[o + MF] = rhs[o + MF] * resting; u[o + MS] = rhs[o + MS] * resting;
  u[o + MI] = rhs[o + MI] * resting; u[o + BA] = rhs[o + BA] * resting; u[o + BN] = rhs[o + BN] * resting;
  u[o + BH] = rhs[o + BH] * resting; u[o + FISH] = rhs[o + FISH] * resting; u[o + LEAF] = rhs[o + LEAF] * resting;
  u[o + QN] = rhs[o + QN] * resting; u[o + QP] = rhs[o + QP] * resting; u[o + QK] = rhs[o + QK] * resting;
  u[o + QCA] = rhs[o + QCA] * resting; u[o + QFE] = rhs[o + QFE] * resting; u[o + ROOT] = rhs[o + ROOT] * resting;
  u[o + ROT] = rhs[o + ROT] * resting; u[o + CLOG] = rhs[o + CLOG] * resting;
  return held ? -(rhs[o + O2] + w[wo + 1] * u_TAN + w[wo + 2] * u_NO2 + w[wo + 3] * u_S2 + w[wo + 4] * u_SS) : 0;
}
