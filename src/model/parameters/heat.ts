// What warms and cools the loop: heat held by water, losses over surface and walls, evaporation, light, heater and pump.
// Vapour pressure is the one of chemistry.ts, shared with the oxygen saturation.
import type { Correlation, ParameterGroup } from './parameter';

/** Heat that a kilogram of water takes along as vapour, J/kg, t in °C. */
export const latentHeat: Correlation<readonly [number, number]> = {
  coefficients: [2.501e6, -2361],
  formula: 'λ = a + b t', unit: 'J/kg', from_C: 0, to_C: 50,
  source: 'FAO Irrigation and Drainage Paper 56 annex 3, from memory', flag: 'memory',
};

export const heat = {
  waterHeat: { value: 4182, unit: 'J/kg/K', low: 4178, high: 4195, source: 'water at 5 to 35 °C, from memory', flag: 'memory' },
  evaporativeLoss: { value: 0.0655, unit: 'W/m²/Pa', low: 0.05, high: 0.09, source: 'Smith, Löf & Jones 1998, ASHRAE Trans. 104: a quiet pool indoors gives 74 % of 95 Btu/h/ft² per inch of mercury (Carrier 1918)', flag: 'derived' },
  surfaceConvection: { value: 4.3, unit: 'W/m²/K', low: 3, high: 6, source: 'evaporativeLoss × 66 Pa/K (Bowen: heat and vapour leave by the same air); 5.7 for inner surfaces of a greenhouse fish pond (Sarkar & Tiwari)', flag: 'derived' },
  surfaceRadiation: { value: 5.6, unit: 'W/m²/K', low: 4.5, high: 6, source: '4 ε σ T³ at 24 °C and ε 0.95, towards surroundings as warm as the air', flag: 'derived' },
  wallLoss: { value: 5, unit: 'W/m²/K', low: 2.5, high: 8, source: 'bare plastic walls, floors counted; chosen so that loops of 2.7 to 4 m³ lag the air by 1.1 to 1.6 d, a lag itself assumed', flag: 'assumption' },
  humidity: { value: 0.7, unit: 'share of saturation', low: 0.5, high: 0.9, source: 'greenhouse air over beds, from memory', flag: 'memory' },
  photonsPerJoule: { value: 4.57, unit: 'mol/MJ', low: 4.4, high: 4.8, source: 'daylight within 400–700 nm, from memory', flag: 'memory' },
  visibleShare: { value: 0.47, unit: 'share of short-wave energy', low: 0.42, high: 0.52, source: 'daylight under glass, from memory', flag: 'memory' },
  lightTaken: { value: 0.3, unit: 'share', low: 0.1, high: 0.6, source: 'tanks stand in the shade of walls, lids and leaves; light at the leaves is what the plan gives', flag: 'assumption' },
  heaterBand: { value: 1, unit: '°C', low: 0.3, high: 2, source: 'full power half of this below the target, none half of this above', flag: 'assumption' },
  pumpWarmth: { value: 0.9, unit: 'share of electrical power', low: 0.3, high: 1, source: 'a pump under water gives all but little of its power to it; one outside the share it lifts with', flag: 'assumption' },
} as const satisfies ParameterGroup;
