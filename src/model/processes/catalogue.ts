// Every process by its id, in the order their rates stand in. The ids are those of MODEL.md.

export const PROCESS_NAMES = [
  // film
  'nitritation', 'nitriteOxidation', 'heterotrophsAerobic', 'heterotrophsAnoxic',
  'sloughAmmoniaOxidisers', 'sloughNitriteOxidisers', 'sloughHeterotrophs', 'lysisAmmoniaOxidisers', 'lysisNitriteOxidisers', 'lysisHeterotrophs',
  'sulfideOxidation', 'methaneOxidation',
  // hydrolysis of suspended (coarse, fine, superfine), caught and settled solids
  'hydrolysisCoarseFast', 'hydrolysisCoarseSlow', 'hydrolysisFineFast', 'hydrolysisFineSlow', 'hydrolysisSuperfineFast', 'hydrolysisSuperfineSlow',
  'hydrolysisCaughtFast', 'hydrolysisCaughtSlow', 'hydrolysisSludgeFast', 'hydrolysisSludgeSlow',
  // sludge bed
  'sludgeAerobic', 'sludgeAnoxic', 'sludgeSulfate', 'sludgeMethane', 'sludgeMethaneGas', 'sludgeLeak',
  'poreSulfideDiffusion', 'poreSulfideByOxygen', 'poreSulfideByNitrate', 'poreSulfideGas', 'poreSulfideGasOut',
  // solids on the move (fast, slow, inert parts)
  'settleCoarseFast', 'settleCoarseSlow', 'settleCoarseInert', 'settleFineFast', 'settleFineSlow', 'settleFineInert',
  'settleSuperfineFast', 'settleSuperfineSlow', 'settleSuperfineInert',
  'catchCoarseFast', 'catchCoarseSlow', 'catchCoarseInert', 'catchFineFast', 'catchFineSlow', 'catchFineInert',
  'catchSuperfineFast', 'catchSuperfineSlow', 'catchSuperfineInert',
  'shearFast', 'shearSlow', 'shearInert', 'stirFast', 'stirSlow', 'stirInert', 'releaseFast', 'releaseSlow', 'releaseInert',
  // gas
  'oxygenTransfer', 'carbonDioxideTransfer', 'hydrogenSulfideTransfer', 'methaneTransfer', 'ammoniaTransfer', 'nitrogenTransfer',
  // life
  'fishGrowth', 'fishExpenditure', 'fishBasal',
  'uptakeNitrate', 'uptakeAmmonium', 'uptakePhosphate', 'uptakePotassium', 'uptakeCalcium', 'uptakeIron', 'leafGrowth', 'rootRelaxation', 'filterUnclogging',
  // clumps of caught solids
  'clumpDenitrificationFast', 'clumpDenitrificationSlow',
  // opportunists, iron
  'opportunistGrowth', 'opportunistDecay', 'opportunistKill', 'ironLoss',
  // dosing
  'doseCalciumHydroxide', 'dosePotassiumHydroxide', 'doseCalciumCarbonate', 'dosePotassiumCarbonate', 'doseSodiumBicarbonate', 'dosePotassiumBicarbonate',
] as const;

export type ProcessName = (typeof PROCESS_NAMES)[number];
export const PROCESSES = PROCESS_NAMES.length;

type Ids = { readonly [Name in ProcessName]: number };
/** id → index of its rate */
export const ID: Ids = Object.freeze(Object.fromEntries(PROCESS_NAMES.map((name, index) => [name, index]))) as Ids;

/** Derivatives kept per process. */
export const SLOTS = 3;
