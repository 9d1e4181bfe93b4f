// The numbers that the model asks of a species of fish: appetite, growth, what it bears. A kind's folder gives each with its source.
import type { Parameter } from './parameter';

export const FISH_NUMBERS = [
  'rationAt50g', 'rationExponent', 'gain', 'basal', 'digestion', 'respirationO2', 'appetiteFull', 'appetiteNone', 'coldStop',
  'optimumLow', 'optimumHigh', 'hotStop', 'nh3LC50', 'nh3Safe', 'nh3Harm', 'no2LC50Base', 'no2LC50Chloride', 'no2Safe', 'no2Harm',
  'h2sLC50', 'h2sSafe', 'h2sHarm', 'co2LC50', 'co2Safe', 'co2Harm', 'o2Safe', 'o2Harm', 'o2Lethal', 'o2LethalTime', 'pHSafe', 'pHHarm',
  'pHHighSafe', 'pHHighHarm', 'pHLethal', 'solidsSafe', 'solidsHarm', 'handlingLoss', 'coldLethal', 'hotLethal', 'no2ChlorideMax',
  'diseaseHazard', 'density', 'densityHarm', 'warmthTheta', 'hungerWeight', 'lesserWeight', 'nh3Onset', 'no2Onset', 'acidOnset',
  'baseOnset', 'baseLethal', 'warmthOnset', 'easeBelow', 'easeAbove',
] as const;

export type FishNumbers = Record<(typeof FISH_NUMBERS)[number], number>;
export type FishParameters = Readonly<Record<(typeof FISH_NUMBERS)[number], Parameter>>;
