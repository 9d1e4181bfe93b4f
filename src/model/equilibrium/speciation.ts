// How totals split into species at a given acidity, and the alkalinity they make up.
// Concentrations in mol/m³ (= mmol/L), alkalinity in eq/m³ (= meq/L), h = 1000 · 10^−pH as in conditional.ts.
// Nothing here allocates or calls a transcendental function: it runs in the innermost loop of a season.
import { GAMMA1, K1, K2, KN, KP1, KP2, KP3, KS, KW } from './conditional';

/** Total dissolved amounts, mol/m³. Below zero (a solver's rounding) counts as zero. */
export interface Totals {
  /** CO2 + HCO3⁻ + CO3²⁻ */
  carbon: number;
  /** NH4⁺ + NH3 */
  ammonia: number;
  /** H2S + HS⁻ */
  sulfide: number;
  /** H3PO4 … PO4³⁻ */
  phosphate: number;
}

/** Share of total ammonia that is NH3 (un-ionised), 0–1. */
export const ammoniaFraction = (h: number, k: Float64Array, o: number): number => k[o + KN] / (k[o + KN] + h);

/** Share of total sulfide that is H2S (undissociated), 0–1. */
export const hydrogenSulfideFraction = (h: number, k: Float64Array, o: number): number => h / (k[o + KS] + h);

/** Share of inorganic carbon that is CO2, 0–1. */
export const carbonDioxideFraction = (h: number, k: Float64Array, o: number): number => (h * h) / (h * h + k[o + K1] * (h + k[o + K2]));

/** Share of inorganic carbon that is CO3²⁻, 0–1. */
export const carbonateFraction = (h: number, k: Float64Array, o: number): number =>
  (k[o + K1] * k[o + K2]) / (h * h + k[o + K1] * (h + k[o + K2]));

/** Equivalents of alkalinity per mole of inorganic carbon, 0 (all CO2) to 2 (all CO3²⁻). */
export const alkalinityPerCarbon = (h: number, k: Float64Array, o: number): number =>
  (k[o + K1] * (h + 2 * k[o + K2])) / (h * h + k[o + K1] * (h + k[o + K2]));

/** What balance() writes, from the start of its array. */
export const CARBONATE_ALKALINITY = 0;
export const OTHER_ALKALINITY = 1;
export const BUFFER = 2;

/**
 * The alkalinity of a water, eq/m³, by the definition of titration:
 * [HCO3⁻] + 2[CO3²⁻], and beside it [NH3] + [HS⁻] + [HPO4²⁻] + 2[PO4³⁻] − [H3PO4] + [OH⁻] − [H⁺];
 * and its buffer intensity β = −d(alkalinity)/d(ln h), eq/m³: each acid adds its total times the variance of the protons its
 * molecules hold. All three in one pass, as the search for h needs them together.
 */
export function balance(h: number, totals: Totals, k: Float64Array, o: number, out: Float64Array): void {
  const square = h * h;
  const one = k[o + K1] * h;
  const two = k[o + K1] * k[o + K2];
  const share = 1 / (square + one + two);
  const carbon = totals.carbon > 0 ? totals.carbon : 0;
  const perCarbon = (one + two + two) * share;
  out[CARBONATE_ALKALINITY] = carbon * perCarbon;
  let buffer = carbon * ((one + 4 * two) * share - perCarbon * perCarbon);

  const ammonia = k[o + KN] / (k[o + KN] + h);
  const bisulfide = k[o + KS] / (k[o + KS] + h);
  const ammoniaTotal = totals.ammonia > 0 ? totals.ammonia : 0;
  const sulfideTotal = totals.sulfide > 0 ? totals.sulfide : 0;
  const hydroxide = k[o + KW] / h;
  const hydrogen = h / k[o + GAMMA1];
  let other = ammoniaTotal * ammonia + sulfideTotal * bisulfide + hydroxide - hydrogen;
  buffer += ammoniaTotal * ammonia * (1 - ammonia) + sulfideTotal * bisulfide * (1 - bisulfide) + hydroxide + hydrogen;

  if (totals.phosphate > 0) {
    const p3 = square * h;
    const p2 = square * k[o + KP1];
    const p1 = h * k[o + KP1] * k[o + KP2];
    const p0 = k[o + KP1] * k[o + KP2] * k[o + KP3];
    const part = 1 / (p3 + p2 + p1 + p0);
    const perPhosphate = (p1 + p0 + p0 - p3) * part;
    other += totals.phosphate * perPhosphate;
    buffer += totals.phosphate * ((p1 + 4 * p0 + p3) * part - perPhosphate * perPhosphate);
  }
  out[OTHER_ALKALINITY] = other;
  out[BUFFER] = buffer;
}

const scratch = new Float64Array(3);

/** Titration alkalinity, eq/m³. Falls strictly with h, from +∞ to −∞. */
export function alkalinityOfH(h: number, totals: Totals, k: Float64Array, o: number): number {
  balance(h, totals, k, o, scratch);
  return scratch[CARBONATE_ALKALINITY] + scratch[OTHER_ALKALINITY];
}

/** The same without the carbonates, eq/m³. */
export function otherAlkalinity(h: number, totals: Totals, k: Float64Array, o: number): number {
  balance(h, totals, k, o, scratch);
  return scratch[OTHER_ALKALINITY];
}

/** Buffer intensity β = −d(alkalinity)/d(ln h), always above zero, eq/m³; so d(alkalinity)/dh is −β/h. */
export function bufferIntensity(h: number, totals: Totals, k: Float64Array, o: number): number {
  balance(h, totals, k, o, scratch);
  return scratch[BUFFER];
}
