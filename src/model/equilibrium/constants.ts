// Equilibrium constants of fresh water at a temperature and zero ionic strength, molal scale.
// Sources stand beside the coefficients in parameters/chemistry.ts.
import { LN10, exp, ln, log10 } from '../../numerics/elementary';
import {
  ammonium,
  bicarbonate,
  carbonDioxideSolubility,
  carbonicAcid,
  dihydrogenPhosphate,
  gasConstant,
  hydrogenPhosphate,
  hydrogenSulfide,
  phosphoricAcid,
  waterIonProduct,
} from '../parameters/chemistry';

export const ZERO_CELSIUS_K = 273.15;
const T25_K = 298.15;

type Five = readonly [number, number, number, number, number];
type Three = readonly [number, number, number];

/** Every constant an equilibrium at one temperature needs. mol/kg; Kw in (mol/kg)²; KH in mol/kg/atm. */
export interface ThermodynamicConstants {
  /** CO2(g) = CO2(aq) */
  KH: number;
  /** CO2(aq) = HCO3⁻ + H⁺ */
  K1: number;
  /** HCO3⁻ = CO3²⁻ + H⁺ */
  K2: number;
  /** H2O = H⁺ + OH⁻ */
  Kw: number;
  /** NH4⁺ = NH3 + H⁺ */
  KN: number;
  /** H2S = HS⁻ + H⁺ */
  KS: number;
  /** H3PO4 = H2PO4⁻ + H⁺ */
  KP1: number;
  /** H2PO4⁻ = HPO4²⁻ + H⁺ */
  KP2: number;
  /** HPO4²⁻ = PO4³⁻ + H⁺ */
  KP3: number;
}

function carbonateLog10(c: Five, T: number): number {
  return c[0] + c[1] * T + c[2] / T + c[3] * log10(T) + c[4] / (T * T);
}

function phosphateLn(c: Three, T: number): number {
  const R = gasConstant.value;
  return -c[0] * LN10 + (c[1] / R) * (1 / T25_K - 1 / T) + (c[2] / R) * (T25_K / T - 1 + ln(T / T25_K));
}

/** log10 of the solubility of CO2, mol/kg/atm. 0–90 °C. */
export const logCarbonDioxideSolubility = (T_C: number): number =>
  carbonateLog10(carbonDioxideSolubility.coefficients, T_C + ZERO_CELSIUS_K);

/** log10 K1 of carbonic acid, mol/kg. 0–90 °C. */
export const logCarbonicAcid = (T_C: number): number => carbonateLog10(carbonicAcid.coefficients, T_C + ZERO_CELSIUS_K);

/** log10 K2 of carbonic acid, mol/kg. 0–90 °C. */
export const logBicarbonate = (T_C: number): number => carbonateLog10(bicarbonate.coefficients, T_C + ZERO_CELSIUS_K);

/** log10 of the ion product of water, (mol/kg)². 0–100 °C. */
export function logWaterIonProduct(T_C: number): number {
  const T = T_C + ZERO_CELSIUS_K;
  const c = waterIonProduct.coefficients;
  return c[0] + c[1] * T + c[2] / T + c[3] * log10(T) + c[4] * T * T;
}

/** pKa of ammonium at zero ionic strength. 0–50 °C. */
export function ammoniumPKa(T_C: number): number {
  const c = ammonium.coefficients;
  return c[0] + c[1] / (T_C + ZERO_CELSIUS_K);
}

/** pK1 of hydrogen sulfide at zero salinity. 5–40 °C. */
export function sulfidePK1(T_C: number): number {
  const T = T_C + ZERO_CELSIUS_K;
  const c = hydrogenSulfide.coefficients;
  return -(c[0] + c[1] / T + c[2] * ln(T)) / LN10;
}

/**
 * All constants at a temperature.
 * @param T_C water temperature, °C, 0–40
 */
export function thermodynamicConstants(T_C: number): ThermodynamicConstants {
  const T = T_C + ZERO_CELSIUS_K;
  return {
    KH: exp(LN10 * logCarbonDioxideSolubility(T_C)),
    K1: exp(LN10 * logCarbonicAcid(T_C)),
    K2: exp(LN10 * logBicarbonate(T_C)),
    Kw: exp(LN10 * logWaterIonProduct(T_C)),
    KN: exp(-LN10 * ammoniumPKa(T_C)),
    KS: exp(-LN10 * sulfidePK1(T_C)),
    KP1: exp(phosphateLn(phosphoricAcid.coefficients, T)),
    KP2: exp(phosphateLn(dihydrogenPhosphate.coefficients, T)),
    KP3: exp(phosphateLn(hydrogenPhosphate.coefficients, T)),
  };
}
