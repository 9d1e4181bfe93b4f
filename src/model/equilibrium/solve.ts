// From alkalinity and totals to acidity, and back. Newton in ln h, kept inside a bracket that only ever shrinks.
import type { Totals } from './speciation';
import {
  BUFFER,
  CARBONATE_ALKALINITY,
  OTHER_ALKALINITY,
  alkalinityPerCarbon,
  balance,
  bufferIntensity,
  carbonDioxideFraction,
  otherAlkalinity,
} from './speciation';

/** h of pH 7: where a search begins when nothing better is known. */
export const NEUTRAL_H = 1e-4;

/** pH 20 and −9: alkalinities outside ±10⁹ eq/m³ would be needed to leave this bracket. */
const H_MIN = 1e-17;
const H_MAX = 1e12;
/** Longest Newton step in ln h; the rational stand-in for exp holds below 2. */
const LONGEST_STEP = 1.5;
/** Newton's error is about the square of its last step: a step of 1e-6 leaves 1e-12 of h, less than 1e-12 in pH. */
const LAST_STEP = 1e-6;
/** Width of a bracket that can shrink no more, relative. */
const CLOSED = 1e-14;
const MAX_STEPS = 200;

const now = new Float64Array(3);

/**
 * Acidity of a water of known alkalinity and totals.
 * Alkalinity falls strictly with h, so there is exactly one answer; every step either is Newton's or halves the bracket.
 * @param alkalinity eq/m³; any finite number
 * @param guess h to start from (the last answer, in a season)
 * @returns h = 1000 · 10^−pH; NaN only if alkalinity, a total or a constant is NaN
 */
export function solveH(alkalinity: number, totals: Totals, k: Float64Array, o: number, guess: number = NEUTRAL_H): number {
  let low = H_MIN;
  let high = H_MAX;
  let h = guess > low && guess < high ? guess : NEUTRAL_H;
  for (let n = 0; n < MAX_STEPS; n++) {
    balance(h, totals, k, o, now);
    const excess = now[CARBONATE_ALKALINITY] + now[OTHER_ALKALINITY] - alkalinity;
    if (excess > 0) low = h;
    else if (excess < 0) high = h;
    else return excess === 0 ? h : NaN;
    const newton = excess / now[BUFFER];
    const step = Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, newton));
    const next = (h * (2 + step)) / (2 - step);
    if (Math.abs(step) < LAST_STEP) return next;
    h = next > low && next < high ? next : Math.sqrt(low * high);
    if (!(high - low > CLOSED * high)) return h;
  }
  return h;
}

/**
 * Inorganic carbon that gives a water this alkalinity at this acidity.
 * @returns mol/m³; below zero where alkalinity and pH contradict each other (the other bases alone exceed it)
 */
export function carbonOf(alkalinity: number, h: number, totals: Totals, k: Float64Array, o: number): number {
  return (alkalinity - otherAlkalinity(h, totals, k, o)) / alkalinityPerCarbon(h, k, o);
}

/**
 * How free CO2 answers to its causes with pH following, for Jacobians.
 * Writes d[CO2]/d(carbon), mol/mol, and d[CO2]/d(alkalinity), mol/eq, at out[at] and out[at + 1].
 */
export function carbonDioxideSlopes(h: number, totals: Totals, k: Float64Array, o: number, out: Float64Array, at: number): void {
  const share = carbonDioxideFraction(h, k, o);
  const perCarbon = alkalinityPerCarbon(h, k, o);
  // d ln(share)/d ln h = perCarbon; d ln h/d carbon = perCarbon/β; d ln h/d alkalinity = −1/β
  const pull = (Math.max(totals.carbon, 0) * share * perCarbon) / bufferIntensity(h, totals, k, o);
  out[at] = share + pull * perCarbon;
  out[at + 1] = -pull;
}
