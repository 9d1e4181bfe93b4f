// What ultraviolet light leaves alive: how much of it water lets through, and what a dose kills of free and of shielded germs.
import { LN10, exp, ln } from '../../numerics/elementary';

/** Depth over which transmittance is stated, cm. */
const STATED_OVER_CM = 1;

/**
 * Mean irradiance over a path of water as a share of the irradiance at its face: (1 − 10^(−aL))/(aL ln 10), Beer–Lambert
 * (water factor of Bolton & Linden 2003, from memory).
 * @param transmittance of 1 cm at 254 nm, above 0 to 1
 * @param path_cm 0 and up
 * @returns 0–1; 1 for clear water or no path
 */
export function uvWaterFactor(transmittance: number, path_cm: number): number {
  const depth = (-ln(transmittance) * path_cm) / STATED_OVER_CM; // a L ln 10
  // The series near zero, where the quotient loses its digits.
  return depth < 1e-5 ? 1 - depth / 2 : (1 - exp(-depth)) / depth;
}

/** Share of the free that outlives a dose when each tenfold kill takes D10 of it: 10^(−dose/D10). */
const freeSurvival = (dose: number, D10: number): number => exp((-dose * LN10) / D10);

/**
 * Share that outlives a dose: (1 − p)·10^(−dose/D10) + p·(1 − s). The shielded are those within or behind particles.
 * @param dose_mJ_cm2 mean irradiance × time, 0 and up
 * @param D10_mJ_cm2 dose that leaves a tenth of the free, above 0: about 0.5 for fish-pathogenic bacteria, 45 for hardy viruses
 * @param shieldedShare p, 0–1: grows with fine solids
 * @param shieldedKilled s, 0–1: share of the shielded that dies all the same
 * @returns 0–1
 */
export function uvSurvival(dose_mJ_cm2: number, D10_mJ_cm2: number, shieldedShare: number, shieldedKilled: number): number {
  return (1 - shieldedShare) * freeSurvival(dose_mJ_cm2, D10_mJ_cm2) + shieldedShare * (1 - shieldedKilled);
}
