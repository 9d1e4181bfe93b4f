// The place of every process among the rates, by its id; the ids are those of MODEL.md. One constant each, so that code which names
// one holds its number itself.
// --- film
export const nitritation = 0, nitriteOxidation = 1, heterotrophsAerobic = 2, heterotrophsAnoxic = 3;
export const sloughAmmoniaOxidisers = 4, sloughNitriteOxidisers = 5, sloughHeterotrophs = 6, lysisAmmoniaOxidisers = 7, lysisNitriteOxidisers = 8, lysisHeterotrophs = 9;
export const sulfideOxidation = 10, methaneOxidation = 11;
// --- hydrolysis of suspended (coarse, fine, superfine), caught and settled solids
export const hydrolysisCoarseFast = 12, hydrolysisCoarseSlow = 13, hydrolysisFineFast = 14, hydrolysisFineSlow = 15, hydrolysisSuperfineFast = 16, hydrolysisSuperfineSlow = 17;
export const hydrolysisCaughtFast = 18, hydrolysisCaughtSlow = 19, hydrolysisSludgeFast = 20, hydrolysisSludgeSlow = 21;
// --- sludge bed
export const sludgeAerobic = 22, sludgeAnoxic = 23, sludgeSulfate = 24, sludgeMethane = 25, sludgeMethaneGas = 26, sludgeLeak = 27;
export const poreSulfideDiffusion = 28, poreSulfideByOxygen = 29, poreSulfideByNitrate = 30, poreSulfideGas = 31, poreSulfideGasOut = 32;
// --- solids on the move (fast, slow, inert parts)
export const settleCoarseFast = 33, settleCoarseSlow = 34, settleCoarseInert = 35, settleFineFast = 36, settleFineSlow = 37, settleFineInert = 38;
export const settleSuperfineFast = 39, settleSuperfineSlow = 40, settleSuperfineInert = 41;
export const catchCoarseFast = 42, catchCoarseSlow = 43, catchCoarseInert = 44, catchFineFast = 45, catchFineSlow = 46, catchFineInert = 47;
export const catchSuperfineFast = 48, catchSuperfineSlow = 49, catchSuperfineInert = 50;
export const shearFast = 51, shearSlow = 52, shearInert = 53, stirFast = 54, stirSlow = 55, stirInert = 56, releaseFast = 57, releaseSlow = 58, releaseInert = 59;
// --- gas
export const oxygenTransfer = 60, carbonDioxideTransfer = 61, hydrogenSulfideTransfer = 62, methaneTransfer = 63, ammoniaTransfer = 64, nitrogenTransfer = 65;
// --- life
export const fishGrowth = 66, fishExpenditure = 67, fishBasal = 68;
export const uptakeNitrate = 69, uptakeAmmonium = 70, uptakePhosphate = 71, uptakePotassium = 72, uptakeCalcium = 73, uptakeIron = 74, leafGrowth = 75, rootRelaxation = 76, filterUnclogging = 77;
// --- clumps of caught solids
export const clumpDenitrificationFast = 78, clumpDenitrificationSlow = 79;
// --- free bacteria, iron
export const freeBacteriaGrowth = 80, freeBacteriaDecay = 81, freeBacteriaKill = 82, ironLoss = 83;
// --- dosing
export const doseCalciumHydroxide = 84, dosePotassiumHydroxide = 85, doseCalciumCarbonate = 86, dosePotassiumCarbonate = 87, doseSodiumBicarbonate = 88, dosePotassiumBicarbonate = 89;
