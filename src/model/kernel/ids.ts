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
export const uptakeNitrate = 48, uptakeAmmonium = 49, uptakePhosphate = 50, uptakePotassium = 51, uptakeCalcium = 52, uptakeIron = 53,
  leafGrowth = 54, rootRelaxation = 55;
// --- lamp: cell.kill > 0
export const freeBacteriaKill = 56;
// --- dosed: cell.doseRate > 0
export const doseCalciumHydroxide = 57, dosePotassiumHydroxide = 58, doseCalciumCarbonate = 59, dosePotassiumCarbonate = 60,
  doseSodiumBicarbonate = 61, dosePotassiumBicarbonate = 62;
// --- settle0: cell.settle0 > 0
export const settleCoarseFast = 63, settleCoarseSlow = 64, settleCoarseInert = 65;
// --- settle1: cell.settle1 > 0
export const settleFineFast = 66, settleFineSlow = 67, settleFineInert = 68;
// --- settle2: cell.settle2 > 0
export const settleSuperfineFast = 69, settleSuperfineSlow = 70, settleSuperfineInert = 71;
// --- catch0: cell.catch0 > 0
export const catchCoarseFast = 72, catchCoarseSlow = 73, catchCoarseInert = 74;
// --- catch1: cell.catch1 > 0
export const catchFineFast = 75, catchFineSlow = 76, catchFineInert = 77;
// --- catch2: cell.catch2 > 0
export const catchSuperfineFast = 78, catchSuperfineSlow = 79, catchSuperfineInert = 80;
// --- shear: cell.shear > 0
export const shearFast = 81, shearSlow = 82, shearInert = 83;
// --- stir: cell.stir > 0 && cell.sludgeRoom > 0
export const stirFast = 84, stirSlow = 85, stirInert = 86;
// --- release: cell.release > 0
export const releaseFast = 87, releaseSlow = 88, releaseInert = 89;
