// How far water is from letting limestone dissolve: the saturation ratio of calcite.
import { exp10, log10 } from '../../numerics/elementary';
import { calciteProduct } from '../parameters/chemistry';
import { GAMMA1, K1, K2 } from './conditional';
import { ZERO_CELSIUS_K } from './constants';

/** Solubility product of calcite, (mol/kg)². Source: calciteProduct. @param T_C 0–90 */
export function calciteKsp(T_C: number): number {
  const [a, b, c, d] = calciteProduct.coefficients;
  const T = T_C + ZERO_CELSIUS_K;
  return exp10(a + b * T + c / T + d * log10(T));
}

/**
 * Saturation ratio Ω = {Ca²⁺}{CO3²⁻}/Ksp; limestone dissolves below 1. Calcium pairs are left out.
 * @param calcium mol/m³ @param carbon inorganic carbon, mol/m³ @param h hydrogen ion activity, mol/m³
 * @param k conditional constants, from `ko`
 */
export function calciteSaturation(T_C: number, calcium: number, carbon: number, h: number, k: Float64Array, ko: number): number {
  const k12 = k[ko + K1] * k[ko + K2];
  const carbonate = (carbon * k12) / (h * h + k[ko + K1] * h + k12);
  const g1 = k[ko + GAMMA1];
  const g2 = g1 * g1 * g1 * g1;
  return (calcium * carbonate * g2 * g2 * 1e-6) / calciteKsp(T_C);
}
