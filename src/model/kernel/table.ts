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
  sloughAmmoniaOxidisers_SO4 = 24, sloughAmmoniaOxidisers_P = 25;
// --- lysisAmmoniaOxidisers
export const lysisAmmoniaOxidisers_TAN = 26, lysisAmmoniaOxidisers_IC = 27, lysisAmmoniaOxidisers_ALK = 28;
// --- hydrolysisCoarseFast
export const hydrolysisCoarseFast_TAN = 29, hydrolysisCoarseFast_ALK = 30, hydrolysisCoarseFast_SO4 = 31, hydrolysisCoarseFast_P = 32;
// --- hydrolysisCoarseSlow
export const hydrolysisCoarseSlow_TAN = 33, hydrolysisCoarseSlow_ALK = 34, hydrolysisCoarseSlow_SO4 = 35, hydrolysisCoarseSlow_P = 36;
// --- hydrolysisSludgeFast
export const hydrolysisSludgeFast_IC = 37, hydrolysisSludgeFast_ALK = 38, hydrolysisSludgeFast_PO = 39;
// --- hydrolysisSludgeSlow
export const hydrolysisSludgeSlow_IC = 40, hydrolysisSludgeSlow_ALK = 41, hydrolysisSludgeSlow_PO = 42;
// --- sludgeAerobic
export const sludgeAerobic_IC = 43;
// --- sludgeMethane
export const sludgeMethane_IC = 44;
// --- clumpDenitrificationFast
export const clumpDenitrificationFast_NO3 = 45, clumpDenitrificationFast_ALK = 46, clumpDenitrificationFast_N2 = 47;
// --- clumpDenitrificationSlow
export const clumpDenitrificationSlow_NO3 = 48, clumpDenitrificationSlow_ALK = 49, clumpDenitrificationSlow_N2 = 50;
// --- fishGrowth
export const fishGrowth_O2 = 51, fishGrowth_TAN = 52, fishGrowth_IC = 53, fishGrowth_ALK = 54, fishGrowth_SS = 55, fishGrowth_SO4 = 56,
  fishGrowth_P = 57, fishGrowth_K = 58, fishGrowth_CA = 59, fishGrowth_MG = 60, fishGrowth_FE = 61, fishGrowth_CF = 62, fishGrowth_CS = 63,
  fishGrowth_CI = 64, fishGrowth_FF = 65, fishGrowth_FS = 66, fishGrowth_FI = 67, fishGrowth_UF = 68, fishGrowth_US = 69,
  fishGrowth_UI = 70, fishGrowth_FISH = 71;
// --- fishExpenditure
export const fishExpenditure_O2 = 72, fishExpenditure_TAN = 73, fishExpenditure_IC = 74, fishExpenditure_ALK = 75, fishExpenditure_SO4 = 76,
  fishExpenditure_P = 77, fishExpenditure_K = 78, fishExpenditure_CA = 79, fishExpenditure_MG = 80;
// --- fishBasal
export const fishBasal_O2 = 81, fishBasal_TAN = 82, fishBasal_IC = 83, fishBasal_ALK = 84, fishBasal_SO4 = 85, fishBasal_P = 86,
  fishBasal_K = 87, fishBasal_CA = 88, fishBasal_MG = 89;
// --- leafGrowth
export const leafGrowth_ALK = 90, leafGrowth_SO4 = 91, leafGrowth_MG = 92, leafGrowth_QN = 93, leafGrowth_QP = 94, leafGrowth_QK = 95,
  leafGrowth_QCA = 96, leafGrowth_QFE = 97;
// --- catchCoarseFast
export const catchCoarseFast_CLOG = 98;
// --- catchCoarseInert
export const catchCoarseInert_CLOG = 99;
// --- catchFineFast
export const catchFineFast_CLOG = 100;
// --- catchFineInert
export const catchFineInert_CLOG = 101;
// --- shearFast
export const shearFast_FF = 102, shearFast_UF = 103;
