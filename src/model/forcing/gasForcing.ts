// Gas transfer of a cell from its air, surface and the fall of the water that comes in; m³/d of kLa × volume.
import { exp, pow } from '../../numerics/elementary';
import type { Cell } from '../cell';
import { gasOverWater, solubility_mol_m3_atm } from '../equilibrium/henry';
import { oxygenSaturation_mg_L } from '../equilibrium/oxygen';
import type { Values } from '../parameters/values';
import type { Saturation } from '../processes/saturation';

/**
 * g O2 per m³ of air at 20 °C, 1 atm (0.2095 × 1.331 kg/m³), and saturation there, g/m³: the standard that bubbles' transfer is stated at
 */
const OXYGEN_IN_AIR = 279;
const STANDARD_SATURATION = 9.092;
/** A guard: share of their oxygen that bubbles give at most; no usual tank is deep enough for it. */
const MOST_TAKEN = 0.3;
/** m: as far as the formula of a weir goes */
const MOST_FALL = 3;
/** L/min in m³/d */
export const PER_L_MIN = 1.44;
/** g of nitrogen in a mol of N2 */
const NITROGEN_MOLAR = 28.014;

/** What gases do at one temperature: Henry's numbers (Cg/Cw) and the transfer's temperature factor. */
export interface GasAt {
  CO2: number;
  H2S: number;
  CH4: number;
  N2: number;
  theta: number;
  T_C: number;
}

export const gasAt = (T_C: number, values: Values): GasAt => ({
  CO2: gasOverWater('CO2', T_C),
  H2S: gasOverWater('H2S', T_C),
  CH4: gasOverWater('CH4', T_C),
  N2: gasOverWater('N2', T_C),
  theta: pow(values.kinetics.transferTheta, T_C - 20),
  T_C,
});

/** Saturation with air: O2 g/m³, CO2 mol/m³, N2 g N/m³. */
export const saturationAt = (T_C: number, values: Values): Saturation => ({
  O2: oxygenSaturation_mg_L(T_C),
  CO2: values.kinetics.airCO2 * solubility_mol_m3_atm('CO2', T_C),
  N2: values.kinetics.airN2 * solubility_mol_m3_atm('N2', T_C) * NITROGEN_MOLAR,
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
  const air = air_L_min * PER_L_MIN; // m³/d
  if (cell.gasFor.air === air && cell.gasFor.fall === fall_m && cell.gasFor.flow === flow_m3_d && cell.gasFor.T_C === at.T_C) return;
  cell.gasFor = { air, fall: fall_m, flow: flow_m3_d, T_C: at.T_C };
  cell.air = air;
  const efficiency = Math.min(MOST_TAKEN, k.transferEfficiency * cell.depth);
  const bubbles = ((air * OXYGEN_IN_AIR * efficiency * k.alphaFactor) / STANDARD_SATURATION) * at.theta;
  // Deficit ratio of a small fall, r = 1 + a h (1 − b h)(1 + c T).
  const fall = Math.min(Math.max(fall_m, 0) + cell.spray, MOST_FALL);
  const ratio = 1 + k.weirCoefficient * fall * (1 - k.weirCurve * fall) * (1 + k.weirWarmth * at.T_C);
  const open = k.surfaceTransfer * cell.surface * at.theta + flow_m3_d * (1 - 1 / ratio) + cell.breath * k.poreAir;
  cell.kO2 = bubbles + open;
  cell.kCO2 = limited(bubbles * k.transferCO2, air * at.CO2) + open * k.transferCO2;
  cell.kH2S = limited(bubbles * k.transferH2S, air * at.H2S) + open * k.transferH2S;
  cell.kCH4 = limited(bubbles * k.transferCH4, air * at.CH4) + open * k.transferCH4;
  cell.kN2 = limited(bubbles * k.transferN2, air * at.N2) + open * k.transferN2;
  cell.kNH3 = (bubbles + open) * values.practice.ammoniaTransfer;
}
