// What all processes of a cell do to its slope: each rate times its whole column.
// Written by `npm run kernels` from the tables of components and processes: never edited, stale copies fail a test.
import type { Cell } from '../cell';
import { ALK, BA, BH, BN, CA, CF, CH4, CI, CLOG, CS, FE, FF, FI, FISH, FS, GUT, IC, K, LEAF, MF, MG, MI, MS, N2, NA, NO2, NO3, O2, OP, P,
  PO, PS, QCA, QFE, QK, QN, QP, ROOT, ROT, S2, SF, SI, SL, SO4, SS, TAN, UF, UI, US } from '../components';
import { ID, TABLE } from '../processes/catalogue';

/**
 * Adds all rates of a cell to its slope, and works out those of the moves of solids.
 * @param v 1/volume @param m the matrix's table; state and slope begin at `o`, rates at `ro`
 */
export function applyColumns(cell: Cell, v: number, m: Float64Array, y: Float64Array, r: Float64Array, ro: number, out: Float64Array,
  o: number): void {
  // --- everywhere
  const nitritation = r[ro + ID.nitritation], nitriteOxidation = r[ro + ID.nitriteOxidation],
    heterotrophsAerobic = r[ro + ID.heterotrophsAerobic], heterotrophsAnoxic = r[ro + ID.heterotrophsAnoxic],
    sloughAmmoniaOxidisers = r[ro + ID.sloughAmmoniaOxidisers], sloughNitriteOxidisers = r[ro + ID.sloughNitriteOxidisers],
    sloughHeterotrophs = r[ro + ID.sloughHeterotrophs], lysisAmmoniaOxidisers = r[ro + ID.lysisAmmoniaOxidisers],
    lysisNitriteOxidisers = r[ro + ID.lysisNitriteOxidisers], lysisHeterotrophs = r[ro + ID.lysisHeterotrophs],
    sulfideOxidation = r[ro + ID.sulfideOxidation], methaneOxidation = r[ro + ID.methaneOxidation],
    hydrolysisCoarseFast = r[ro + ID.hydrolysisCoarseFast], hydrolysisCoarseSlow = r[ro + ID.hydrolysisCoarseSlow],
    hydrolysisFineFast = r[ro + ID.hydrolysisFineFast], hydrolysisFineSlow = r[ro + ID.hydrolysisFineSlow],
    hydrolysisSuperfineFast = r[ro + ID.hydrolysisSuperfineFast], hydrolysisSuperfineSlow = r[ro + ID.hydrolysisSuperfineSlow],
    oxygenTransfer = r[ro + ID.oxygenTransfer], carbonDioxideTransfer = r[ro + ID.carbonDioxideTransfer],
    hydrogenSulfideTransfer = r[ro + ID.hydrogenSulfideTransfer], methaneTransfer = r[ro + ID.methaneTransfer],
    ammoniaTransfer = r[ro + ID.ammoniaTransfer], nitrogenTransfer = r[ro + ID.nitrogenTransfer],
    freeBacteriaGrowth = r[ro + ID.freeBacteriaGrowth], freeBacteriaDecay = r[ro + ID.freeBacteriaDecay], ironLoss = r[ro + ID.ironLoss];
  const sloughAll = sloughAmmoniaOxidisers + sloughNitriteOxidisers + sloughHeterotrophs;
  const lysisAll = lysisAmmoniaOxidisers + lysisNitriteOxidisers + lysisHeterotrophs;
  const hydrolysisAll = hydrolysisCoarseFast + hydrolysisFineFast + hydrolysisSuperfineFast;
  const hydrolysisAll2 = hydrolysisCoarseSlow + hydrolysisFineSlow + hydrolysisSuperfineSlow;
  out[o + O2] += m[TABLE.nitritation_O2] * nitritation + m[TABLE.nitriteOxidation_O2] * nitriteOxidation
    + m[TABLE.heterotrophsAerobic_O2] * heterotrophsAerobic + oxygenTransfer - 1.9961322520274485 * sulfideOxidation - methaneOxidation;
  out[o + TAN] += m[TABLE.nitritation_TAN] * nitritation + m[TABLE.heterotrophsAerobic_TAN] * heterotrophsAerobic
    + m[TABLE.heterotrophsAnoxic_TAN] * heterotrophsAnoxic + m[TABLE.sloughAmmoniaOxidisers_TAN] * sloughAll
    + m[TABLE.lysisAmmoniaOxidisers_TAN] * lysisAll + m[TABLE.hydrolysisCoarseFast_TAN] * hydrolysisAll
    + m[TABLE.hydrolysisCoarseSlow_TAN] * hydrolysisAll2 - ammoniaTransfer;
  out[o + NO2] += nitritation + m[TABLE.nitriteOxidation_NO2] * nitriteOxidation;
  out[o + NO3] += nitriteOxidation + m[TABLE.heterotrophsAnoxic_NO3] * heterotrophsAnoxic;
  out[o + IC] += m[TABLE.nitritation_IC] * nitritation + m[TABLE.nitriteOxidation_IC] * nitriteOxidation
    + m[TABLE.heterotrophsAerobic_IC] * heterotrophsAerobic + m[TABLE.heterotrophsAnoxic_IC] * heterotrophsAnoxic
    + m[TABLE.sloughAmmoniaOxidisers_IC] * sloughAll + m[TABLE.lysisAmmoniaOxidisers_IC] * lysisAll
    + 0.01562597662353897 * methaneOxidation - carbonDioxideTransfer;
  out[o + ALK] += m[TABLE.nitritation_ALK] * nitritation + m[TABLE.nitriteOxidation_ALK] * nitriteOxidation
    + m[TABLE.heterotrophsAerobic_ALK] * heterotrophsAerobic + m[TABLE.heterotrophsAnoxic_ALK] * heterotrophsAnoxic
    + m[TABLE.sloughAmmoniaOxidisers_ALK] * sloughAll + m[TABLE.lysisAmmoniaOxidisers_ALK] * lysisAll
    + m[TABLE.hydrolysisCoarseFast_ALK] * hydrolysisAll + m[TABLE.hydrolysisCoarseSlow_ALK] * hydrolysisAll2
    - 0.06238303181534622 * sulfideOxidation - 0.0713928749910759 * ammoniaTransfer;
  out[o + S2] -= sulfideOxidation + hydrogenSulfideTransfer;
  out[o + SS] += lysisAmmoniaOxidisers + lysisNitriteOxidisers + lysisHeterotrophs + hydrolysisCoarseFast + hydrolysisCoarseSlow
    + hydrolysisFineFast + hydrolysisFineSlow + hydrolysisSuperfineFast + hydrolysisSuperfineSlow - heterotrophsAerobic
    - heterotrophsAnoxic;
  out[o + CH4] -= methaneOxidation + methaneTransfer;
  out[o + N2] += m[TABLE.heterotrophsAnoxic_N2] * heterotrophsAnoxic - nitrogenTransfer;
  out[o + SO4] += m[TABLE.sloughAmmoniaOxidisers_SO4] * sloughAll + sulfideOxidation + m[TABLE.hydrolysisCoarseFast_SO4] * hydrolysisAll
    + m[TABLE.hydrolysisCoarseSlow_SO4] * hydrolysisAll2;
  out[o + P] += m[TABLE.sloughAmmoniaOxidisers_P] * sloughAll + m[TABLE.hydrolysisCoarseFast_P] * hydrolysisAll
    + m[TABLE.hydrolysisCoarseSlow_P] * hydrolysisAll2;
  out[o + FE] -= ironLoss; out[o + OP] += freeBacteriaGrowth - freeBacteriaDecay; out[o + CF] -= hydrolysisCoarseFast;
  out[o + CS] -= hydrolysisCoarseSlow; out[o + FF] += m[TABLE.sloughAmmoniaOxidisers_FF] * sloughAll - hydrolysisFineFast;
  out[o + FS] += m[TABLE.sloughAmmoniaOxidisers_FS] * sloughAll - hydrolysisFineSlow; out[o + UF] -= hydrolysisSuperfineFast;
  out[o + US] -= hydrolysisSuperfineSlow;
  out[o + BA] += m[TABLE.nitritation_BA] * nitritation - sloughAmmoniaOxidisers - lysisAmmoniaOxidisers;
  out[o + BN] += m[TABLE.nitriteOxidation_BN] * nitriteOxidation - sloughNitriteOxidisers - lysisNitriteOxidisers;
  out[o + BH] += m[TABLE.heterotrophsAerobic_BH] * heterotrophsAerobic + m[TABLE.heterotrophsAnoxic_BH] * heterotrophsAnoxic
    - sloughHeterotrophs - lysisHeterotrophs;
  // --- sludge
  if (cell.bedThickness > 0) {
    const hydrolysisSludgeFast = r[ro + ID.hydrolysisSludgeFast], hydrolysisSludgeSlow = r[ro + ID.hydrolysisSludgeSlow],
      sludgeAerobic = r[ro + ID.sludgeAerobic], sludgeAnoxic = r[ro + ID.sludgeAnoxic], sludgeSulfate = r[ro + ID.sludgeSulfate],
      sludgeMethane = r[ro + ID.sludgeMethane], sludgeMethaneGas = r[ro + ID.sludgeMethaneGas], sludgeLeak = r[ro + ID.sludgeLeak],
      poreSulfideDiffusion = r[ro + ID.poreSulfideDiffusion], poreSulfideByOxygen = r[ro + ID.poreSulfideByOxygen],
      poreSulfideByNitrate = r[ro + ID.poreSulfideByNitrate], poreSulfideGas = r[ro + ID.poreSulfideGas],
      poreSulfideGasOut = r[ro + ID.poreSulfideGasOut];
    out[o + O2] -= sludgeAerobic + 1.9961322520274485 * poreSulfideByOxygen;
    out[o + TAN] += m[TABLE.hydrolysisCoarseFast_TAN] * hydrolysisSludgeFast + m[TABLE.hydrolysisCoarseSlow_TAN] * hydrolysisSludgeSlow;
    out[o + NO3] -= 0.3501968873054566 * sludgeAnoxic + 0.6990393013100437 * poreSulfideByNitrate;
    out[o + IC] += m[TABLE.hydrolysisSludgeFast_IC] * hydrolysisSludgeFast + m[TABLE.hydrolysisSludgeSlow_IC] * hydrolysisSludgeSlow
      + m[TABLE.sludgeAerobic_IC] * (sludgeAerobic + sludgeAnoxic + sludgeSulfate) + m[TABLE.sludgeMethane_IC] * (sludgeMethane
      + sludgeMethaneGas);
    out[o + ALK] += m[TABLE.hydrolysisSludgeFast_ALK] * hydrolysisSludgeFast + m[TABLE.hydrolysisSludgeSlow_ALK] * hydrolysisSludgeSlow
      + 0.025001562597662355 * sludgeAnoxic + 0.03125195324707794 * sludgeSulfate - 0.06238303181534622 * poreSulfideByOxygen
      - 0.012476606363069236 * poreSulfideByNitrate;
    out[o + S2] += poreSulfideDiffusion + poreSulfideGas; out[o + SS] += sludgeLeak; out[o + CH4] += sludgeMethane;
    out[o + N2] += 0.35019688730545656 * sludgeAnoxic + 0.6990393013100437 * poreSulfideByNitrate;
    out[o + SO4] += poreSulfideByOxygen + poreSulfideByNitrate - 0.5009688105506594 * sludgeSulfate;
    out[o + P] += m[TABLE.hydrolysisCoarseFast_P] * hydrolysisSludgeFast + m[TABLE.hydrolysisCoarseSlow_P] * hydrolysisSludgeSlow;
    out[o + SF] -= hydrolysisSludgeFast; out[o + SL] -= hydrolysisSludgeSlow;
    out[o + PO] += m[TABLE.hydrolysisSludgeFast_PO] * hydrolysisSludgeFast + m[TABLE.hydrolysisSludgeSlow_PO] * hydrolysisSludgeSlow
      - sludgeAerobic - sludgeAnoxic - sludgeSulfate - sludgeMethane - sludgeMethaneGas - sludgeLeak;
    out[o + PS] += m[TABLE.hydrolysisCoarseFast_SO4] * hydrolysisSludgeFast + m[TABLE.hydrolysisCoarseSlow_SO4] * hydrolysisSludgeSlow
      + 0.5009688105506594 * sludgeSulfate - poreSulfideDiffusion - poreSulfideByOxygen - poreSulfideByNitrate - poreSulfideGas
      - poreSulfideGasOut;
  }
  // --- caught
  if (cell.holds) {
    const clumpDenitrificationFast = r[ro + ID.clumpDenitrificationFast], clumpDenitrificationSlow = r[ro + ID.clumpDenitrificationSlow],
      hydrolysisCaughtFast = r[ro + ID.hydrolysisCaughtFast], hydrolysisCaughtSlow = r[ro + ID.hydrolysisCaughtSlow];
    const sum = clumpDenitrificationFast + hydrolysisCaughtFast;
    const sum2 = clumpDenitrificationSlow + hydrolysisCaughtSlow;
    out[o + TAN] += m[TABLE.hydrolysisCoarseFast_TAN] * sum + m[TABLE.hydrolysisCoarseSlow_TAN] * sum2;
    out[o + NO3] += m[TABLE.clumpDenitrificationFast_NO3] * clumpDenitrificationFast
      + m[TABLE.clumpDenitrificationSlow_NO3] * clumpDenitrificationSlow;
    out[o + IC] += m[TABLE.sludgeAerobic_IC] * (clumpDenitrificationFast + clumpDenitrificationSlow)
      + m[TABLE.hydrolysisSludgeFast_IC] * hydrolysisCaughtFast + m[TABLE.hydrolysisSludgeSlow_IC] * hydrolysisCaughtSlow;
    out[o + ALK] += m[TABLE.clumpDenitrificationFast_ALK] * clumpDenitrificationFast
      + m[TABLE.clumpDenitrificationSlow_ALK] * clumpDenitrificationSlow + m[TABLE.hydrolysisSludgeFast_ALK] * hydrolysisCaughtFast
      + m[TABLE.hydrolysisSludgeSlow_ALK] * hydrolysisCaughtSlow;
    out[o + S2] += m[TABLE.hydrolysisCoarseFast_SO4] * sum + m[TABLE.hydrolysisCoarseSlow_SO4] * sum2;
    out[o + SS] += m[TABLE.hydrolysisSludgeFast_PO] * hydrolysisCaughtFast + m[TABLE.hydrolysisSludgeSlow_PO] * hydrolysisCaughtSlow;
    out[o + N2] += m[TABLE.clumpDenitrificationFast_N2] * clumpDenitrificationFast
      + m[TABLE.clumpDenitrificationSlow_N2] * clumpDenitrificationSlow;
    out[o + P] += m[TABLE.hydrolysisCoarseFast_P] * sum + m[TABLE.hydrolysisCoarseSlow_P] * sum2;
    out[o + MF] -= clumpDenitrificationFast + hydrolysisCaughtFast; out[o + MS] -= clumpDenitrificationSlow + hydrolysisCaughtSlow;
  }
  // --- filter
  if (cell.filter) {
    const filterUnclogging = r[ro + ID.filterUnclogging];
    out[o + CLOG] -= filterUnclogging;
  }
  // --- fish
  if (cell.fish) {
    const fishGrowth = r[ro + ID.fishGrowth], fishExpenditure = r[ro + ID.fishExpenditure], fishBasal = r[ro + ID.fishBasal];
    const fishAll = fishGrowth + fishExpenditure;
    out[o + O2] += m[TABLE.fishGrowth_O2] * fishGrowth + m[TABLE.fishExpenditure_O2] * fishExpenditure + m[TABLE.fishBasal_O2] * fishBasal;
    out[o + TAN] += m[TABLE.fishGrowth_TAN] * fishGrowth + m[TABLE.fishExpenditure_TAN] * fishExpenditure
      + m[TABLE.fishBasal_TAN] * fishBasal;
    out[o + IC] += m[TABLE.fishGrowth_IC] * fishGrowth + m[TABLE.fishExpenditure_IC] * fishExpenditure + m[TABLE.fishBasal_IC] * fishBasal;
    out[o + ALK] += m[TABLE.fishGrowth_ALK] * fishGrowth + m[TABLE.fishExpenditure_ALK] * fishExpenditure
      + m[TABLE.fishBasal_ALK] * fishBasal;
    out[o + SS] += m[TABLE.fishGrowth_SS] * fishAll;
    out[o + SO4] += m[TABLE.fishGrowth_SO4] * fishGrowth + m[TABLE.fishExpenditure_SO4] * fishExpenditure
      + m[TABLE.fishBasal_SO4] * fishBasal;
    out[o + P] += m[TABLE.fishGrowth_P] * fishGrowth + m[TABLE.fishExpenditure_P] * fishExpenditure + m[TABLE.fishBasal_P] * fishBasal;
    out[o + K] += m[TABLE.fishGrowth_K] * fishGrowth + m[TABLE.fishExpenditure_K] * fishExpenditure + m[TABLE.fishBasal_K] * fishBasal;
    out[o + CA] += m[TABLE.fishGrowth_CA] * fishGrowth + m[TABLE.fishExpenditure_CA] * fishExpenditure + m[TABLE.fishBasal_CA] * fishBasal;
    out[o + MG] += m[TABLE.fishGrowth_MG] * fishGrowth + m[TABLE.fishExpenditure_MG] * fishExpenditure + m[TABLE.fishBasal_MG] * fishBasal;
    out[o + FE] += m[TABLE.fishGrowth_FE] * fishAll; out[o + CF] += m[TABLE.fishGrowth_CF] * fishAll;
    out[o + CS] += m[TABLE.fishGrowth_CS] * fishAll; out[o + CI] += m[TABLE.fishGrowth_CI] * fishAll;
    out[o + FF] += m[TABLE.fishGrowth_FF] * fishAll; out[o + FS] += m[TABLE.fishGrowth_FS] * fishAll;
    out[o + FI] += m[TABLE.fishGrowth_FI] * fishAll; out[o + UF] += m[TABLE.fishGrowth_UF] * fishAll;
    out[o + US] += m[TABLE.fishGrowth_US] * fishAll; out[o + UI] += m[TABLE.fishGrowth_UI] * fishAll;
    out[o + GUT] -= fishGrowth + fishExpenditure; out[o + FISH] += m[TABLE.fishGrowth_FISH] * fishGrowth - fishBasal;
  }
  // --- crop
  if (cell.bed) {
    const rootRespiration = r[ro + ID.rootRespiration], coatRespirationFast = r[ro + ID.coatRespirationFast],
      coatRespirationSlow = r[ro + ID.coatRespirationSlow], rootRelaxation = r[ro + ID.rootRelaxation], rootRot = r[ro + ID.rootRot],
      uptakeNitrate = r[ro + ID.uptakeNitrate], uptakeAmmonium = r[ro + ID.uptakeAmmonium], uptakePhosphate = r[ro + ID.uptakePhosphate],
      uptakePotassium = r[ro + ID.uptakePotassium], uptakeCalcium = r[ro + ID.uptakeCalcium], uptakeIron = r[ro + ID.uptakeIron],
      leafGrowth = r[ro + ID.leafGrowth];
    out[o + O2] -= rootRespiration + coatRespirationFast + coatRespirationSlow;
    out[o + TAN] += m[TABLE.hydrolysisCoarseFast_TAN] * coatRespirationFast + m[TABLE.hydrolysisCoarseSlow_TAN] * coatRespirationSlow
      - uptakeAmmonium;
    out[o + NO3] -= uptakeNitrate;
    out[o + IC] += 0.03125195324707794 * rootRespiration + m[TABLE.sludgeAerobic_IC] * (coatRespirationFast + coatRespirationSlow);
    out[o + ALK] += m[TABLE.hydrolysisCoarseFast_ALK] * coatRespirationFast + m[TABLE.hydrolysisCoarseSlow_ALK] * coatRespirationSlow
      + 0.0713928749910759 * (uptakeNitrate - uptakeAmmonium) + 0.032285142377477885 * uptakePhosphate
        + m[TABLE.leafGrowth_ALK] * leafGrowth
      - 0.02557675584428871 * uptakePotassium - 0.04990268975497779 * uptakeCalcium;
    out[o + SO4] += m[TABLE.hydrolysisCoarseFast_SO4] * coatRespirationFast + m[TABLE.hydrolysisCoarseSlow_SO4] * coatRespirationSlow
      + m[TABLE.leafGrowth_SO4] * leafGrowth;
    out[o + P] += m[TABLE.hydrolysisCoarseFast_P] * coatRespirationFast + m[TABLE.hydrolysisCoarseSlow_P] * coatRespirationSlow
      - uptakePhosphate;
    out[o + K] -= uptakePotassium; out[o + CA] -= uptakeCalcium; out[o + MG] += m[TABLE.leafGrowth_MG] * leafGrowth;
    out[o + FE] -= uptakeIron; out[o + MF] -= coatRespirationFast; out[o + MS] -= coatRespirationSlow; out[o + LEAF] += leafGrowth;
    out[o + QN] += uptakeNitrate + uptakeAmmonium + m[TABLE.leafGrowth_QN] * leafGrowth;
    out[o + QP] += uptakePhosphate + m[TABLE.leafGrowth_QP] * leafGrowth;
    out[o + QK] += uptakePotassium + m[TABLE.leafGrowth_QK] * leafGrowth;
    out[o + QCA] += uptakeCalcium + m[TABLE.leafGrowth_QCA] * leafGrowth; out[o + QFE] += uptakeIron + m[TABLE.leafGrowth_QFE] * leafGrowth;
    out[o + ROOT] += rootRelaxation; out[o + ROT] += rootRot;
  }
  // --- lamp
  if (cell.kill > 0) {
    const freeBacteriaKill = r[ro + ID.freeBacteriaKill];
    out[o + OP] -= freeBacteriaKill;
  }
  // --- dosed
  if (cell.doseRate > 0) {
    const doseCalciumHydroxide = r[ro + ID.doseCalciumHydroxide], dosePotassiumHydroxide = r[ro + ID.dosePotassiumHydroxide],
      doseCalciumCarbonate = r[ro + ID.doseCalciumCarbonate], dosePotassiumCarbonate = r[ro + ID.dosePotassiumCarbonate],
      doseSodiumBicarbonate = r[ro + ID.doseSodiumBicarbonate], dosePotassiumBicarbonate = r[ro + ID.dosePotassiumBicarbonate];
    out[o + IC] += 0.009991407389644906 * doseCalciumCarbonate + 0.007235680588116118 * dosePotassiumCarbonate
      + 0.011903911625360093 * doseSodiumBicarbonate + 0.00998861298120143 * dosePotassiumBicarbonate;
    out[o + ALK] += 0.02699346758084543 * doseCalciumHydroxide + 0.017823723375813207 * dosePotassiumHydroxide
      + 0.01998281477928981 * doseCalciumCarbonate + 0.014471361176232236 * dosePotassiumCarbonate
      + 0.011903911625360095 * doseSodiumBicarbonate + 0.00998861298120143 * dosePotassiumBicarbonate;
    out[o + K] += 0.6968719365475448 * dosePotassiumHydroxide + 0.5658012792683279 * dosePotassiumCarbonate
      + 0.3905347903390135 * dosePotassiumBicarbonate;
    out[o + CA] += 0.5409220968525617 * doseCalciumHydroxide + 0.4004356253621886 * doseCalciumCarbonate;
    out[o + NA] += 0.27367092826702855 * doseSodiumBicarbonate;
  }
  // --- settle0
  if (cell.settle0 > 0) {
    const cleared = cell.settle0 * v, settleCoarseFast = r[ro + ID.settleCoarseFast] = cleared * y[o + CF],
      settleCoarseSlow = r[ro + ID.settleCoarseSlow] = cleared * y[o + CS],
      settleCoarseInert = r[ro + ID.settleCoarseInert] = cleared * y[o + CI];
    out[o + CF] -= settleCoarseFast; out[o + CS] -= settleCoarseSlow; out[o + CI] -= settleCoarseInert; out[o + SF] += settleCoarseFast;
    out[o + SL] += settleCoarseSlow; out[o + SI] += settleCoarseInert;
  }
  // --- settle1
  if (cell.settle1 > 0) {
    const cleared = cell.settle1 * v, settleFineFast = r[ro + ID.settleFineFast] = cleared * y[o + FF],
      settleFineSlow = r[ro + ID.settleFineSlow] = cleared * y[o + FS], settleFineInert = r[ro + ID.settleFineInert] = cleared * y[o + FI];
    out[o + FF] -= settleFineFast; out[o + FS] -= settleFineSlow; out[o + FI] -= settleFineInert; out[o + SF] += settleFineFast;
    out[o + SL] += settleFineSlow; out[o + SI] += settleFineInert;
  }
  // --- settle2
  if (cell.settle2 > 0) {
    const cleared = cell.settle2 * v, settleSuperfineFast = r[ro + ID.settleSuperfineFast] = cleared * y[o + UF],
      settleSuperfineSlow = r[ro + ID.settleSuperfineSlow] = cleared * y[o + US],
      settleSuperfineInert = r[ro + ID.settleSuperfineInert] = cleared * y[o + UI];
    out[o + UF] -= settleSuperfineFast; out[o + US] -= settleSuperfineSlow; out[o + UI] -= settleSuperfineInert;
    out[o + SF] += settleSuperfineFast; out[o + SL] += settleSuperfineSlow; out[o + SI] += settleSuperfineInert;
  }
  // --- catch0
  if (cell.catch0 > 0) {
    const cleared = cell.catch0 * v, catchCoarseFast = r[ro + ID.catchCoarseFast] = cleared * y[o + CF],
      catchCoarseSlow = r[ro + ID.catchCoarseSlow] = cleared * y[o + CS],
      catchCoarseInert = r[ro + ID.catchCoarseInert] = cleared * y[o + CI];
    out[o + CF] -= catchCoarseFast; out[o + CS] -= catchCoarseSlow; out[o + CI] -= catchCoarseInert; out[o + MF] += catchCoarseFast;
    out[o + MS] += catchCoarseSlow; out[o + MI] += catchCoarseInert;
    out[o + CLOG] += m[TABLE.catchCoarseFast_CLOG] * (catchCoarseFast + catchCoarseSlow)
      + m[TABLE.catchCoarseInert_CLOG] * catchCoarseInert;
  }
  // --- catch1
  if (cell.catch1 > 0) {
    const cleared = cell.catch1 * v, catchFineFast = r[ro + ID.catchFineFast] = cleared * y[o + FF],
      catchFineSlow = r[ro + ID.catchFineSlow] = cleared * y[o + FS], catchFineInert = r[ro + ID.catchFineInert] = cleared * y[o + FI];
    out[o + FF] -= catchFineFast; out[o + FS] -= catchFineSlow; out[o + FI] -= catchFineInert; out[o + MF] += catchFineFast;
    out[o + MS] += catchFineSlow; out[o + MI] += catchFineInert;
    out[o + CLOG] += m[TABLE.catchFineFast_CLOG] * (catchFineFast + catchFineSlow) + m[TABLE.catchFineInert_CLOG] * catchFineInert;
  }
  // --- catch2
  if (cell.catch2 > 0) {
    const cleared = cell.catch2 * v, catchSuperfineFast = r[ro + ID.catchSuperfineFast] = cleared * y[o + UF],
      catchSuperfineSlow = r[ro + ID.catchSuperfineSlow] = cleared * y[o + US],
      catchSuperfineInert = r[ro + ID.catchSuperfineInert] = cleared * y[o + UI];
    out[o + UF] -= catchSuperfineFast; out[o + US] -= catchSuperfineSlow; out[o + UI] -= catchSuperfineInert;
    out[o + MF] += catchSuperfineFast; out[o + MS] += catchSuperfineSlow; out[o + MI] += catchSuperfineInert;
    out[o + CLOG] += m[TABLE.catchFineFast_CLOG] * (catchSuperfineFast + catchSuperfineSlow)
      + m[TABLE.catchFineInert_CLOG] * catchSuperfineInert;
  }
  // --- shear
  if (cell.shear > 0) {
    const shearFast = r[ro + ID.shearFast] = cell.shear * y[o + CF], shearSlow = r[ro + ID.shearSlow] = cell.shear * y[o + CS],
      shearInert = r[ro + ID.shearInert] = cell.shear * y[o + CI];
    out[o + CF] -= shearFast; out[o + CS] -= shearSlow; out[o + CI] -= shearInert; out[o + FF] += m[TABLE.shearFast_FF] * shearFast;
    out[o + FS] += m[TABLE.shearFast_FF] * shearSlow; out[o + FI] += m[TABLE.shearFast_FF] * shearInert;
    out[o + UF] += m[TABLE.shearFast_UF] * shearFast; out[o + US] += m[TABLE.shearFast_UF] * shearSlow;
    out[o + UI] += m[TABLE.shearFast_UF] * shearInert;
  }
  // --- stir
  if (cell.stir > 0 && cell.sludgeRoom > 0) {
    const stirFast = r[ro + ID.stirFast] = cell.stir * y[o + SF], stirSlow = r[ro + ID.stirSlow] = cell.stir * y[o + SL],
      stirInert = r[ro + ID.stirInert] = cell.stir * y[o + SI];
    out[o + CF] += m[TABLE.stirFast_CF] * stirFast; out[o + CS] += m[TABLE.stirFast_CF] * stirSlow;
    out[o + CI] += m[TABLE.stirFast_CF] * stirInert; out[o + FF] += m[TABLE.stirFast_FF] * stirFast;
    out[o + FS] += m[TABLE.stirFast_FF] * stirSlow; out[o + FI] += m[TABLE.stirFast_FF] * stirInert; out[o + SF] -= stirFast;
    out[o + SL] -= stirSlow; out[o + SI] -= stirInert;
  }
  // --- release
  if (cell.release > 0) {
    const releaseFast = r[ro + ID.releaseFast] = cell.release * y[o + MF], releaseSlow = r[ro + ID.releaseSlow] = cell.release * y[o + MS],
      releaseInert = r[ro + ID.releaseInert] = cell.release * y[o + MI];
    out[o + FF] += releaseFast; out[o + FS] += releaseSlow; out[o + FI] += releaseInert; out[o + MF] -= releaseFast;
    out[o + MS] -= releaseSlow; out[o + MI] -= releaseInert;
  }
}
