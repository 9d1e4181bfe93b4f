// Conditional constants: equilibrium constants with the activities of one ionic strength folded in, for concentrations
// in mol/m³. A cell of the engine keeps eleven of them in a flat array; no speciation needs a logarithm after that.
//
// The acid variable everywhere is h = 1000 · 10^−pH, that is the *activity* of H⁺ on a mol/m³ scale, so pH = 3 − log10 h.
// One cubic metre of water counts as one tonne: below 0.5 % up to 32 °C, and it cancels in every ratio.
import { debyeHuckelA, univalentActivity } from './activity';
import type { ThermodynamicConstants } from './constants';
import { thermodynamicConstants } from './constants';

/** Places in the array, from the offset on. γz is the activity coefficient of charge z; K the constant at I = 0. */
export const K1 = 0; // h [HCO3⁻]/[CO2] = 1000 K1/γ1
export const K2 = 1; // h [CO3²⁻]/[HCO3⁻] = 1000 K2 γ1/γ2
export const KW = 2; // h [OH⁻] = 10⁶ Kw/γ1
export const KN = 3; // h [NH3]/[NH4⁺] = 1000 Ka γ1
export const KS = 4; // h [HS⁻]/[H2S] = 1000 Ks/γ1
export const KP1 = 5; // h [H2PO4⁻]/[H3PO4] = 1000 Kp1/γ1
export const KP2 = 6; // h [HPO4²⁻]/[H2PO4⁻] = 1000 Kp2 γ1/γ2
export const KP3 = 7; // h [PO4³⁻]/[HPO4²⁻] = 1000 Kp3 γ2/γ3
export const GAMMA1 = 8; // [H⁺] = h/γ1
export const KH = 9; // CO2(aq) over partial pressure, mol/m³/atm
export const DEBYE_A = 10; // Debye–Hückel A at the temperature, as used for γ

/** Length of one set. */
export const CONDITIONAL_LENGTH = 11;

/**
 * Folds activities into constants already at hand: one exponential. For a changed ionic strength at unchanged temperature.
 * @param at constants at the temperature (thermodynamicConstants)
 * @param A Debye–Hückel A at the temperature (debyeHuckelA)
 * @param I ionic strength, mol/kg, 0–0.5; 0 gives the ideal solution
 */
export function foldActivities(at: ThermodynamicConstants, A: number, I: number, out: Float64Array, offset: number): void {
  const g1 = univalentActivity(A, I);
  const square = g1 * g1;
  const g2 = square * square;
  const g3 = g2 * g2 * g1;
  out[offset + K1] = (1e3 * at.K1) / g1;
  out[offset + K2] = (1e3 * at.K2 * g1) / g2;
  out[offset + KW] = (1e6 * at.Kw) / g1;
  out[offset + KN] = 1e3 * at.KN * g1;
  out[offset + KS] = (1e3 * at.KS) / g1;
  out[offset + KP1] = (1e3 * at.KP1) / g1;
  out[offset + KP2] = (1e3 * at.KP2 * g1) / g2;
  out[offset + KP3] = (1e3 * at.KP3 * g2) / g3;
  out[offset + GAMMA1] = g1;
  out[offset + KH] = 1e3 * at.KH;
  out[offset + DEBYE_A] = A;
}

/**
 * Writes one set at a temperature and ionic strength.
 * @param T_C water temperature, °C, 0–40
 * @param I ionic strength, mol/kg, 0–0.5; 0 gives the ideal solution
 */
export function conditionalConstants(T_C: number, I: number, out: Float64Array, offset: number): void {
  foldActivities(thermodynamicConstants(T_C), debyeHuckelA(T_C), I, out, offset);
}
