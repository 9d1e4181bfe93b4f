// Oxygen saturation of water under air: Benson & Krause 1984, as in APHA 4500-O.
import { exp } from '../../numerics/elementary';
import { oxygenPressure, oxygenSalting, oxygenSaturation, waterVapour } from '../parameters/chemistry';
import { ZERO_CELSIUS_K } from './constants';

/**
 * Vapour pressure of water, atm.
 * @param T_C water temperature, °C, 0–40
 */
export function vapourPressure_atm(T_C: number): number {
  const T = T_C + ZERO_CELSIUS_K;
  const [a, b, c] = waterVapour.coefficients;
  return exp(a + b / T + c / (T * T));
}

/**
 * Dissolved oxygen at equilibrium with water-saturated air, mg/L.
 * @param T_C water temperature, °C, 0–40
 * @param salinity g/kg, 0–40
 * @param pressure_atm total pressure of the air, atm, above the vapour pressure of water
 */
export function oxygenSaturation_mg_L(T_C: number, salinity = 0, pressure_atm = 1): number {
  const T = T_C + ZERO_CELSIUS_K;
  const [a, b, c, d, e] = oxygenSaturation.coefficients;
  const [p, q, r] = oxygenSalting.coefficients;
  const logarithm = a + (b + (c + (d + e / T) / T) / T) / T - salinity * (p + (q + r / T) / T);
  if (pressure_atm === 1) return exp(logarithm);
  const [u, v, w] = oxygenPressure.coefficients;
  const theta = u + v * T_C + w * T_C * T_C;
  const vapour = vapourPressure_atm(T_C);
  const P = pressure_atm;
  return (exp(logarithm) * P * ((1 - vapour / P) * (1 - theta * P))) / ((1 - vapour) * (1 - theta));
}
