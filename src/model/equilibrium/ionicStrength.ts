// Ionic strength of a water from its species and its strong ions. Concentrations in mol/m³, the answer in mol/L (= mol/kg).
import { GAMMA1, KP1, KP2, KP3, KW } from './conditional';
import type { Totals } from './speciation';
import { ammoniaFraction, carbonDioxideFraction, carbonateFraction, hydrogenSulfideFraction } from './speciation';

/** Ions that neither take nor give protons (nitrate, chloride, sulfate, calcium, …), summed. */
export interface StrongIons {
  /** Σ z c, eq/m³ */
  charge: number;
  /** Σ z² c, mol/m³ */
  squares: number;
}

/** Adds an ion of charge z and concentration c (mol/m³; below zero counts as zero) to a sum. */
export function addIon(sum: StrongIons, z: number, c: number): void {
  const present = Math.max(c, 0);
  sum.charge += z * present;
  sum.squares += z * z * present;
}

/**
 * Ionic strength, mol/L.
 * @param closing true: what is missing in the charge balance is sodium, or an unnamed singly charged anion where cations
 *   exceed; false: the ions named are all there are
 */
export function ionicStrength(h: number, totals: Totals, strong: StrongIons, closing: boolean, k: Float64Array, o: number): number {
  const carbon = Math.max(totals.carbon, 0);
  const carbonate = carbon * carbonateFraction(h, k, o);
  const bicarbonate = carbon * (1 - carbonDioxideFraction(h, k, o)) - carbonate;
  const ammonium = Math.max(totals.ammonia, 0) * (1 - ammoniaFraction(h, k, o));
  const bisulfide = Math.max(totals.sulfide, 0) * (1 - hydrogenSulfideFraction(h, k, o));
  const two = h * h * k[o + KP1];
  const one = h * k[o + KP1] * k[o + KP2];
  const none = k[o + KP1] * k[o + KP2] * k[o + KP3];
  const phosphate = Math.max(totals.phosphate, 0) / (h * h * h + two + one + none);
  const hydrogen = h / k[o + GAMMA1];
  const hydroxide = k[o + KW] / h;
  const charge =
    strong.charge + hydrogen + ammonium - bicarbonate - 2 * carbonate - bisulfide - hydroxide - phosphate * (two + 2 * one + 3 * none);
  const squares =
    strong.squares + hydrogen + ammonium + bicarbonate + 4 * carbonate + bisulfide + hydroxide + phosphate * (two + 4 * one + 9 * none);
  return (squares + (closing ? Math.abs(charge) : 0)) / 2000;
}
