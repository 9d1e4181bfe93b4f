// Gas transfer of a cell from its air, surface and the fall of the water that comes in; m³/d of kLa × volume.
import { exp, pow } from '../../numerics/elementary';
import type { Cell } from '../cell';
import { gasOverWater, solubility_mol_m3_atm } from '../equilibrium/henry';
import { oxygenSaturation_mg_L } from '../equilibrium/oxygen';
import type { Values } from '../parameters/values';
import type { Saturation } from '../processes/gas';

/** kLa of a gas against oxygen's, (D/D_O2)^0.5, from diffusivities at 25 °C (phreeqc.dat). */
const RATIO = { CO2: 0.904, H2S: 0.945, CH4: 0.887, N2: 0.913 } as const;
/** g O2 per m³ of air at 20 °C, 1 atm: 0.2095 × 1.331 kg/m³. */
const OXYGEN_IN_AIR = 279;
const STANDARD_SATURATION = 9.092;
/** m³ of water brought to equilibrium by each m³ of fresh pore air, which holds some 30 times the oxygen of water but stays for minutes only */
const BREATH = 4;
/** partial pressures in air, atm */
const CO2_IN_AIR = 4.2e-4;
const N2_IN_AIR = 0.78;

/** What gases do at one temperature: Henry's numbers (Cg/Cw) and the transfer's temperature factor. */
export interface GasAt { CO2: number; H2S: number; CH4: number; N2: number; theta: number; T_C: number }

export const gasAt = (T_C: number): GasAt => ({
  CO2: gasOverWater('CO2', T_C), H2S: gasOverWater('H2S', T_C), CH4: gasOverWater('CH4', T_C), N2: gasOverWater('N2', T_C), theta: pow(1.024, T_C - 20), T_C,
});

/** Saturation with air: O2 g/m³, CO2 mol/m³, N2 g N/m³. */
export const saturationAt = (T_C: number): Saturation => ({
  O2: oxygenSaturation_mg_L(T_C), CO2: CO2_IN_AIR * solubility_mol_m3_atm('CO2', T_C), N2: N2_IN_AIR * solubility_mol_m3_atm('N2', T_C) * 28.014,
});

/** Bubbles give or take no more than their gas can hold: G·H·(1 − exp(−k/(G·H))). */
const limited = (k: number, capacity: number): number => (capacity > 0 ? capacity * (1 - exp(-k / capacity)) : 0);

/**
 * Sets the six transfer constants of a cell.
 * @param air_L_min air through its stones
 * @param fall_m height that the incoming water falls, and flow_m3_d how much of it
 */
export function setGasForcing(cell: Cell, values: Values, at: GasAt, air_L_min: number, fall_m: number, flow_m3_d: number): void {
  const k = values.kinetics;
  const air = air_L_min * 1.44; // m³/d
  if (cell.gasFor.air === air && cell.gasFor.fall === fall_m && cell.gasFor.flow === flow_m3_d && cell.gasFor.T_C === at.T_C) return;
  cell.gasFor = { air, fall: fall_m, flow: flow_m3_d, T_C: at.T_C };
  cell.air = air;
  const efficiency = Math.min(0.3, k.transferEfficiency * cell.depth);
  const bubbles = ((air * OXYGEN_IN_AIR * efficiency * k.alphaFactor) / STANDARD_SATURATION) * at.theta;
  // Deficit ratio of a small fall, r = 1 + 0.38 h (1 − 0.11 h)(1 + 0.046 T).
  const fall = Math.min(Math.max(fall_m, 0) + cell.spray, 3);
  const ratio = 1 + k.weirCoefficient * fall * (1 - 0.11 * fall) * (1 + 0.046 * at.T_C);
  const open = k.surfaceTransfer * cell.surface * at.theta + flow_m3_d * (1 - 1 / ratio) + cell.breath * BREATH;
  cell.kO2 = bubbles + open;
  cell.kCO2 = limited(bubbles * RATIO.CO2, air * at.CO2) + open * RATIO.CO2;
  cell.kH2S = limited(bubbles * RATIO.H2S, air * at.H2S) + open * RATIO.H2S;
  cell.kCH4 = limited(bubbles * RATIO.CH4, air * at.CH4) + open * RATIO.CH4;
  cell.kN2 = limited(bubbles * RATIO.N2, air * at.N2) + open * RATIO.N2;
  cell.kNH3 = (bubbles + open) * values.practice.ammoniaTransfer;
}
