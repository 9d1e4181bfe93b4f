// The place of every process among the rates of a cell, by its id, under the condition that it runs on.
// Written by `npm run kernels` from the tables of components and processes: never edited, stale copies fail a test.
// --- everywhere
export const nitritation = 0, nitriteOxidation = 1, heterotrophsAerobic = 2, heterotrophsAnoxic = 3, sloughAmmoniaOxidisers = 4,
  sloughNitriteOxidisers = 5, sloughHeterotrophs = 6, lysisAmmoniaOxidisers = 7, lysisNitriteOxidisers = 8, lysisHeterotrophs = 9,
  sulfideOxidation = 10, methaneOxidation = 11, hydrolysisCoarseFast = 12, hydrolysisCoarseSlow = 13, hydrolysisFineFast = 14,
  hydrolysisFineSlow = 15, hydrolysisSuperfineFast = 16, hydrolysisSuperfineSlow = 17, oxygenTransfer = 18, carbonDioxideTransfer = 19,
  hydrogenSulfideTransfer = 20, methaneTransfer = 21, ammoniaTransfer = 22, nitrogenTransfer = 23, freeBacteriaGrowth = 24,
  freeBacteriaDecay = 25, ironLoss = 26;
// --- sludge: cell.bedThickness > 0
export const hydrolysisSludgeFast = 27, hydrolysisSludgeSlow = 28, sludgeAerobic = 29, sludgeAnoxic = 30, sludgeSulfate = 31,
  sludgeMethane = 32, sludgeMethaneGas = 33, sludgeLeak = 34, poreSulfideDiffusion = 35, poreSulfideByOxygen = 36,
  poreSulfideByNitrate = 37, poreSulfideGas = 38, poreSulfideGasOut = 39;
// --- caught: cell.holds
export const clumpDenitrificationFast = 40, clumpDenitrificationSlow = 41, hydrolysisCaughtFast = 42, hydrolysisCaughtSlow = 43;
// --- filter: cell.filter
export const filterUnclogging = 44;
// --- fish: cell.fish
export const fishGrowth = 45, fishExpenditure = 46, fishBasal = 47;
// --- crop: cell.bed
export const rootRespiration = 48, coatRespirationFast = 49, coatRespirationSlow = 50, rootRelaxation = 51, rootRot = 52,
  uptakeNitrate = 53, uptakeAmmonium = 54, uptakePhosphate = 55, uptakePotassium = 56, uptakeCalcium = 57, uptakeIron = 58, leafGrowth = 59;
// --- lamp: cell.kill > 0
export const freeBacteriaKill = 60;
// --- dosed: cell.doseRate > 0
export const doseCalciumHydroxide = 61, dosePotassiumHydroxide = 62, doseCalciumCarbonate = 63, dosePotassiumCarbonate = 64,
  doseSodiumBicarbonate = 65, dosePotassiumBicarbonate = 66;
// --- settle0: cell.settle0 > 0
export const settleCoarseFast = 67, settleCoarseSlow = 68, settleCoarseInert = 69;
// --- settle1: cell.settle1 > 0
export const settleFineFast = 70, settleFineSlow = 71, settleFineInert = 72;
// --- settle2: cell.settle2 > 0
export const settleSuperfineFast = 73, settleSuperfineSlow = 74, settleSuperfineInert = 75;
// --- catch0: cell.catch0 > 0
export const catchCoarseFast = 76, catchCoarseSlow = 77, catchCoarseInert = 78;
// --- catch1: cell.catch1 > 0
export const catchFineFast = 79, catchFineSlow = 80, catchFineInert = 81;
// --- catch2: cell.catch2 > 0
export const catchSuperfineFast = 82, catchSuperfineSlow = 83, catchSuperfineInert = 84;
// --- shear: cell.shear > 0
export const shearFast = 85, shearSlow = 86, shearInert = 87;
// --- stir: cell.stir > 0 && cell.sludgeRoom > 0
export const stirFast = 88, stirSlow = 89, stirInert = 90;
// --- release: cell.release > 0
export const releaseFast = 91, releaseSlow = 92, releaseInert = 93;
