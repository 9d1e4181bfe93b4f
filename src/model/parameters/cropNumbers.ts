// The numbers that the model asks of a crop: growth by light and warmth, hunger, stores, harvest. A kind's folder gives each with its source.
import type { Parameter } from './parameter';

export const CROP_NUMBERS = [
  'radiationUse', 'radiationHalf', 'leafAreaPerMass', 'extinction', 'transplant', 'ripe', 'coldStop', 'optimumLow', 'optimumHigh',
  'hotStop', 'halfN', 'halfP', 'halfK', 'halfCa', 'halfFe', 'halfS', 'pHOptimum', 'pHLoss', 'waterUse', 'dryShare', 'harvestShare',
  'cutShare', 'plants_m2', 'quotaN', 'quotaP', 'quotaK', 'quotaCa', 'quotaFe', 'halfMg', 'ironHighPH', 'acidFrom',
  'rootLeast', 'rootWider',
] as const;

export type CropNumbers = Record<(typeof CROP_NUMBERS)[number], number>;
export type CropParameters = Readonly<Record<(typeof CROP_NUMBERS)[number], Parameter>>;
