// The place of every coefficient that depends on parameters in the table that a season fills; equal ones share one.
// Written by `npm run kernels` from the tables of components and processes: never edited, stale copies fail a test.
// --- nitritation
export const nitritation_O2 = 0, nitritation_TAN = 1, nitritation_IC = 2, nitritation_ALK = 3, nitritation_BA = 4;
// --- nitriteOxidation
export const nitriteOxidation_O2 = 5, nitriteOxidation_NO2 = 6, nitriteOxidation_IC = 7, nitriteOxidation_ALK = 8, nitriteOxidation_BN = 9;
// --- heterotrophsAerobic
export const heterotrophsAerobic_O2 = 10, heterotrophsAerobic_TAN = 11, heterotrophsAerobic_IC = 12, heterotrophsAerobic_ALK = 13,
  heterotrophsAerobic_BH = 14;
// --- heterotrophsAnoxic
export const heterotrophsAnoxic_TAN = 15, heterotrophsAnoxic_NO3 = 16, heterotrophsAnoxic_IC = 17, heterotrophsAnoxic_ALK = 18,
  heterotrophsAnoxic_N2 = 19, heterotrophsAnoxic_BH = 20;
// --- sloughAmmoniaOxidisers
export const sloughAmmoniaOxidisers_TAN = 21, sloughAmmoniaOxidisers_IC = 22, sloughAmmoniaOxidisers_ALK = 23,
  sloughAmmoniaOxidisers_SO4 = 24, sloughAmmoniaOxidisers_P = 25, sloughAmmoniaOxidisers_FF = 26, sloughAmmoniaOxidisers_FS = 27;
// --- lysisAmmoniaOxidisers
export const lysisAmmoniaOxidisers_TAN = 28, lysisAmmoniaOxidisers_IC = 29, lysisAmmoniaOxidisers_ALK = 30;
// --- hydrolysisCoarseFast
export const hydrolysisCoarseFast_TAN = 31, hydrolysisCoarseFast_ALK = 32, hydrolysisCoarseFast_SO4 = 33, hydrolysisCoarseFast_P = 34;
// --- hydrolysisCoarseSlow
export const hydrolysisCoarseSlow_TAN = 35, hydrolysisCoarseSlow_ALK = 36, hydrolysisCoarseSlow_SO4 = 37, hydrolysisCoarseSlow_P = 38;
// --- hydrolysisSludgeFast
export const hydrolysisSludgeFast_IC = 39, hydrolysisSludgeFast_ALK = 40, hydrolysisSludgeFast_PO = 41;
// --- hydrolysisSludgeSlow
export const hydrolysisSludgeSlow_IC = 42, hydrolysisSludgeSlow_ALK = 43, hydrolysisSludgeSlow_PO = 44;
// --- sludgeAerobic
export const sludgeAerobic_IC = 45;
// --- sludgeMethane
export const sludgeMethane_IC = 46;
// --- clumpDenitrificationFast
export const clumpDenitrificationFast_NO3 = 47, clumpDenitrificationFast_ALK = 48, clumpDenitrificationFast_N2 = 49;
// --- clumpDenitrificationSlow
export const clumpDenitrificationSlow_NO3 = 50, clumpDenitrificationSlow_ALK = 51, clumpDenitrificationSlow_N2 = 52;
// --- fishGrowth
export const fishGrowth_O2 = 53, fishGrowth_TAN = 54, fishGrowth_IC = 55, fishGrowth_ALK = 56, fishGrowth_SS = 57, fishGrowth_SO4 = 58,
  fishGrowth_P = 59, fishGrowth_K = 60, fishGrowth_CA = 61, fishGrowth_MG = 62, fishGrowth_FE = 63, fishGrowth_CF = 64, fishGrowth_CS = 65,
  fishGrowth_CI = 66, fishGrowth_FF = 67, fishGrowth_FS = 68, fishGrowth_FI = 69, fishGrowth_UF = 70, fishGrowth_US = 71,
  fishGrowth_UI = 72, fishGrowth_FISH = 73;
// --- fishExpenditure
export const fishExpenditure_O2 = 74, fishExpenditure_TAN = 75, fishExpenditure_IC = 76, fishExpenditure_ALK = 77, fishExpenditure_SO4 = 78,
  fishExpenditure_P = 79, fishExpenditure_K = 80, fishExpenditure_CA = 81, fishExpenditure_MG = 82;
// --- fishBasal
export const fishBasal_O2 = 83, fishBasal_TAN = 84, fishBasal_IC = 85, fishBasal_ALK = 86, fishBasal_SO4 = 87, fishBasal_P = 88,
  fishBasal_K = 89, fishBasal_CA = 90, fishBasal_MG = 91;
// --- leafGrowth
export const leafGrowth_ALK = 92, leafGrowth_SO4 = 93, leafGrowth_MG = 94, leafGrowth_QN = 95, leafGrowth_QP = 96, leafGrowth_QK = 97,
  leafGrowth_QCA = 98, leafGrowth_QFE = 99;
// --- catchCoarseFast
export const catchCoarseFast_CLOG = 100;
// --- catchCoarseInert
export const catchCoarseInert_CLOG = 101;
// --- catchFineFast
export const catchFineFast_CLOG = 102;
// --- catchFineInert
export const catchFineInert_CLOG = 103;
// --- shearFast
export const shearFast_FF = 104, shearFast_UF = 105;
// --- stirFast
export const stirFast_CF = 106, stirFast_FF = 107;
