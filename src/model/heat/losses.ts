// What the loop's surface gives to the air: evaporation, and what short-wave light brings in its place.
import { vapourPressure_atm } from '../equilibrium/oxygen';
import { latentHeat } from '../parameters/heat';
import type { HeatNumbers } from '../parameters/values';

const PA_PER_ATM = 101325;
const SECONDS_PER_DAY = 86400;
const JOULES_PER_MJ = 1e6;

/**
 * Heat that evaporation takes from open water, W/m²: c (p(water) − humidity · p(air)). Below 0 where dew falls on cold water.
 * @param T_C, air_C 0 to 45
 */
export function evaporativeLoss_W_m2(T_C: number, air_C: number, k: HeatNumbers): number {
  return k.evaporativeLoss * PA_PER_ATM * (vapourPressure_atm(T_C) - k.humidity * vapourPressure_atm(air_C));
}

/** Water that evaporates, kg/m²/d (which is L/m²/d); below 0 where dew falls. */
export function evaporation_kg_m2_d(T_C: number, air_C: number, k: HeatNumbers): number {
  return (evaporativeLoss_W_m2(T_C, air_C, k) * SECONDS_PER_DAY) / latentHeat_J_kg(T_C);
}

/** Heat a kilogram of water takes along as vapour, J/kg. Source: latentHeat. */
export function latentHeat_J_kg(T_C: number): number {
  const [a, b] = latentHeat.coefficients;
  return a + b * T_C;
}

/**
 * Short-wave power on the bed at a light, W/m²: photosynthetic photons to joules, joules to all of daylight.
 * @param light_mol_m2_d photosynthetic light, mol/m²/d, as a daily sum or as the rate of an hour
 */
export const shortwave_W_m2 = (light_mol_m2_d: number, k: HeatNumbers): number =>
  ((light_mol_m2_d / k.photonsPerJoule) * JOULES_PER_MJ) / k.visibleShare / SECONDS_PER_DAY;
