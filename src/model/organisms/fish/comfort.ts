// How fish fare: discomfort from each quality of the water, welfare, hazard of death, and appetite.
// Hazard: ln2/t50 × ((c − c0)/(c50 − c0))³, so that a constant c50 kills half in t50. Welfare: 1 − worst − a share of the rest.
import { exp, pow } from '../../../numerics/elementary';
import type { FishNumbers } from '../../parameters/fishNumbers';
import { plateau } from '../plants/growth';

const LN2 = 0.6931471805599453;

/** The water a fish lives in: g/m³ (N, S as elements; CO2 as CO2), °C. */
export interface FishWater {
  NH3: number;
  NO2: number;
  H2S: number;
  CO2: number;
  O2: number;
  pH: number;
  chloride: number;
  solids: number;
  T_C: number;
  freeBacteria: number;
}

const rise = (c: number, safe: number, harm: number): number => Math.min(1, Math.max(0, (c - safe) / (harm - safe)));
const cube = (c: number, safe: number, half: number): number => {
  const x = Math.max(0, (c - safe) / (half - safe));
  return x * x * x;
};

/** Nitrite that kills half in 96 h, g N/m³: chloride protects (line through Wang et al. 2006). */
export const nitriteLC50 = (f: FishNumbers, chloride: number): number =>
  f.no2LC50Base + f.no2LC50Chloride * Math.min(chloride, f.no2ChlorideMax);

/**
 * Discomforts 0–1, in the order NH3, NO2, H2S, CO2, O2, pH, solids, temperature, crowding, hunger.
 * @param state kg/m³ of fish, and the share of what they need to keep their mass that they went without
 */
export function discomforts(f: FishNumbers, w: FishWater, state: { density: number; hunger: number }): number[] {
  const no2 = nitriteLC50(f, w.chloride);
  return [
    // growth falls evenly: half of it at nh3Harm (Abdalla & McNabb 1998)
    rise(w.NH3, f.nh3Safe, 2 * f.nh3Harm - f.nh3Safe),
    rise(w.NO2, f.no2Safe * no2, f.no2Harm * no2),
    rise(w.H2S, f.h2sSafe, f.h2sHarm),
    rise(w.CO2, f.co2Safe, f.co2Harm),
    rise(-w.O2, -f.o2Safe, -f.o2Harm),
    Math.max(rise(-w.pH, -f.pHSafe, -f.pHHarm), rise(w.pH, f.pHHighSafe, f.pHHighHarm)),
    rise(w.solids, f.solidsSafe, f.solidsHarm),
    1 - Math.max(0, plateau(w.T_C, f.coldLethal, f.optimumLow - f.easeBelow, f.optimumHigh + f.easeAbove, f.hotLethal)),
    rise(state.density, f.density, f.densityHarm),
    f.hungerWeight * state.hunger,
  ];
}

/** 0–1: 1 − worst discomfort − a share of the rest. */
export function welfare(f: FishNumbers, parts: readonly number[]): number {
  let worst = 0;
  let sum = 0;
  for (const part of parts) {
    sum += part;
    if (part > worst) worst = part;
  }
  return Math.max(0, 1 - worst - f.lesserWeight * (sum - worst));
}

/** Hazard of death, 1/d. @param wellbeing 0–1: free bacteria take stressed fish first */
export function hazard(f: FishNumbers, w: FishWater, wellbeing: number): number {
  const no2 = nitriteLC50(f, w.chloride);
  const days = 4; // the LC50s are of 96 h
  const toxic =
    cube(w.NH3, f.nh3Safe * f.nh3Onset, f.nh3LC50)
    + cube(w.NO2, f.no2Onset * f.no2Safe * no2, no2)
    + cube(w.H2S, f.h2sSafe, f.h2sLC50)
    + cube(w.CO2, f.co2Harm, f.co2LC50);
  const acid = cube(-w.pH, -(f.pHHarm + f.acidOnset), -f.pHLethal) + cube(w.pH, f.pHHighSafe + f.baseOnset, f.pHHighHarm + f.baseLethal);
  const air = cube(-w.O2, -f.o2Harm, -f.o2Lethal);
  const cold = cube(-w.T_C, -(f.coldLethal + f.warmthOnset), -f.coldLethal) + cube(w.T_C, f.hotLethal - f.warmthOnset, f.hotLethal);
  return (
    (LN2 / days) * toxic
    + LN2 * acid
    + (LN2 / f.o2LethalTime) * air
    + LN2 * cold
    + f.diseaseHazard * w.freeBacteria * (1 - wellbeing) * (1 - wellbeing)
    + f.handlingLoss
  );
}

/** Most that fish of a mass eat in a day when nothing holds them back, g/g/d. */
export const fullRation = (f: FishNumbers, mass_g: number): number => f.rationAt50g * pow(Math.max(mass_g, 1) / 50, f.rationExponent);

/** 0–1: what temperature leaves of appetite. */
export const warmthOfAppetite = (f: FishNumbers, T_C: number): number => plateau(T_C, f.coldStop, f.optimumLow, f.optimumHigh, f.hotStop);

/** Places in `discomforts` that appetite answers to in its own way, or that make hungry: oxygen, temperature, hunger. */
const OWN: ReadonlySet<number> = new Set([4, 7, 9]);

/** 0–1: what oxygen and stress leave of appetite. @param parts discomforts */
export function appetite(f: FishNumbers, w: FishWater, parts: readonly number[]): number {
  const x = Math.min(1, Math.max(0, (w.O2 - f.appetiteNone) / (f.appetiteFull - f.appetiteNone)));
  return (
    x
    * welfare(
      f,
      parts.map((part, i) => (OWN.has(i) ? 0 : part)),
    )
  );
}

/** Survivors of a number after a cumulated hazard. */
export const survivors = (number: number, cumulated: number): number => number * exp(-cumulated);
