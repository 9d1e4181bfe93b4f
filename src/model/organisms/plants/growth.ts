// What light and leaf area let a crop grow, with no other limit; and how water temperature and pH trim it.
import { exp } from '../../../numerics/elementary';
import type { CropNumbers } from '../../parameters/cropNumbers';

/** Between two limits 0–1–1–0, straight sides. */
export function plateau(x: number, stop: number, low: number, high: number, hot: number): number {
  if (x <= stop || x >= hot) return 0;
  if (x < low) return (x - stop) / (low - stop);
  return x > high ? (hot - x) / (hot - high) : 1;
}

/**
 * Growth by light alone, g dry/m²/d, at the day's mean light.
 * @param leaf_g_m2 standing leaf dry mass
 * @param dli_mol_m2_d daily light integral of the day
 * @param photonsPerJoule mol of photons in a MJ of them
 */
export function lightGrowth(c: CropNumbers, leaf_g_m2: number, dli_mol_m2_d: number, T_C: number, photonsPerJoule: number): number {
  const use = c.radiationUse / (1 + dli_mol_m2_d / c.radiationHalf);
  const covered = 1 - exp(-c.extinction * c.leafAreaPerMass * leaf_g_m2);
  return use * (dli_mol_m2_d / photonsPerJoule) * covered * plateau(T_C, c.coldStop, c.optimumLow, c.optimumHigh, c.hotStop);
}

/** A guard for pH beyond all usual waters, where the line would fall below nothing. */
const HIGH_PH_LEAST = 0.2;

/** What pH leaves of growth: 1 at the optimum, falling evenly above it to a least, and below `acidFrom` by the square. */
export function acidityFactor(c: CropNumbers, pH: number): number {
  const above = Math.max(0, pH - c.pHOptimum);
  const below = Math.max(0, c.acidFrom - pH);
  return Math.max(HIGH_PH_LEAST, 1 - c.pHLoss * above) * Math.max(0, 1 - below * below);
}
