// Activity of ions: how much less than their concentration they act, by the Davies equation. Neutral molecules count as 1.
import { LN10, exp } from '../../numerics/elementary';
import { davies, permittivity, seaSaltIonicStrength } from '../parameters/chemistry';
import { ZERO_CELSIUS_K } from './constants';

/**
 * Debye–Hückel A of the Davies equation (decimal logarithm): 0.509 or so at 25 °C.
 * @param T_C water temperature, °C, 0–100
 */
export function debyeHuckelA(T_C: number): number {
  const e = permittivity.coefficients;
  const epsilonT = (e[0] + T_C * (e[1] + T_C * (e[2] + T_C * e[3]))) * (T_C + ZERO_CELSIUS_K);
  return davies.coefficients[0] / (epsilonT * Math.sqrt(epsilonT));
}

/**
 * Activity coefficient of a singly charged ion. A charge of z gives this to the power z².
 * @param A Debye–Hückel A at the temperature
 * @param I ionic strength, mol/kg, 0–0.5; below zero counts as zero
 * @returns 0–1; exactly 1 at I = 0
 */
export function univalentActivity(A: number, I: number): number {
  if (!(I > 0)) return 1;
  const root = Math.sqrt(I);
  return exp(-LN10 * A * (root / (1 + root) - davies.coefficients[1] * I));
}

/**
 * Ionic strength of sea salt, mol/kg.
 * @param salinity g/kg, 0–40
 */
export function saltIonicStrength(salinity: number): number {
  const [a, b, c] = seaSaltIonicStrength.coefficients;
  return (a * salinity) / (b + c * salinity);
}
