// Solubility of gases by Henry's law, for what bubbles and surfaces give and take.
// Oxygen follows Benson & Krause's saturation and carbon dioxide Plummer & Busenberg's solubility; the rest is Sander's.
import { LN10, exp } from '../../numerics/elementary';
import { atmosphere, gasConstant, henrySolubility, molarMass, oxygenInAir } from '../parameters/chemistry';
import { ZERO_CELSIUS_K, logCarbonDioxideSolubility } from './constants';
import { oxygenSaturation_mg_L, vapourPressure_atm } from './oxygen';

export type Gas = 'O2' | 'CO2' | keyof typeof henrySolubility;

/**
 * Dissolved over partial pressure at a temperature, in fresh water.
 * @param T_C water temperature, °C, 0–40
 * @returns mol/m³/atm (carbon dioxide: all that is undissociated)
 */
export function solubility_mol_m3_atm(gas: Gas, T_C: number): number {
  if (gas === 'CO2') return 1000 * exp(LN10 * logCarbonDioxideSolubility(T_C));
  if (gas === 'O2') {
    const pressure_atm = oxygenInAir.value * (1 - vapourPressure_atm(T_C));
    return oxygenSaturation_mg_L(T_C) / molarMass.O2.value / pressure_atm;
  }
  const [at25, slope] = henrySolubility[gas].coefficients;
  return atmosphere.value * at25 * exp(slope * (1 / (T_C + ZERO_CELSIUS_K) - 1 / 298.15));
}

/** Concentration in the gas over concentration in the water at equilibrium, dimensionless: 31 or so for oxygen at 25 °C. */
export function gasOverWater(gas: Gas, T_C: number): number {
  const gas_mol_m3_atm = atmosphere.value / (gasConstant.value * (T_C + ZERO_CELSIUS_K));
  return gas_mol_m3_atm / solubility_mol_m3_atm(gas, T_C);
}
