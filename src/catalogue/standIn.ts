// Whose numbers serve where a bed stands empty or a tank holds no fish. Nothing grows or swims there, so any would do.
import type { CropName, SpeciesName } from './kinds';

export const EMPTY_BED: CropName = 'lettuce';
export const EMPTY_TANK: SpeciesName = 'tilapia';
