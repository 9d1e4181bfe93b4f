// One water at equilibrium: what a person knows of it in, its acidity, gases and ionic strength out.
// Not for the inner loop of a season (it iterates ionic strength and allocates); that uses conditional.ts and solve.ts.
import { log10, exp10 } from '../../numerics/elementary';
import { debyeHuckelA } from './activity';
import { CONDITIONAL_LENGTH, foldActivities } from './conditional';
import { thermodynamicConstants } from './constants';
import type { StrongIons } from './ionicStrength';
import { ionicStrength } from './ionicStrength';
import { carbonOf, solveH } from './solve';
import type { Totals } from './speciation';
import { alkalinityOfH, ammoniaFraction, carbonDioxideFraction, carbonateFraction, hydrogenSulfideFraction } from './speciation';

/** The two of three that fix a water: alkalinity (eq/m³), inorganic carbon (mol/m³), pH. */
export type Known = { alkalinity: number; carbon: number } | { alkalinity: number; pH: number } | { carbon: number; pH: number };

export interface Water {
  /** °C, 0–40 */
  T_C: number;
  known: Known;
  /** mol/m³ */
  ammonia?: number;
  /** mol/m³ */
  sulfide?: number;
  /** mol/m³ */
  phosphate?: number;
  /** Nitrate, chloride, calcium and the like; none if absent. */
  strong?: StrongIons;
  /** mol/L: given instead of computed; 0 is the ideal solution. */
  ionicStrength?: number;
  /** mol/L: computed ionic strength is never taken below this. */
  ionicStrengthAtLeast?: number;
  /** Whether sodium (or an unnamed anion) closes the charge balance in the computed ionic strength. Default: yes. */
  closing?: boolean;
}

/** mol/m³; alkalinity eq/m³; ionicStrength mol/L; fractions 0–1. carbon < 0 says that pH and alkalinity contradict. */
export interface Equilibrium {
  pH: number;
  alkalinity: number;
  carbon: number;
  ionicStrength: number;
  CO2: number;
  HCO3: number;
  CO3: number;
  NH3: number;
  H2S: number;
  NH3Fraction: number;
  H2SFraction: number;
}

const SETTLED = 1e-13;
const MAX_ROUNDS = 60;

/**
 * Solves one water. Ionic strength shapes the constants and the species shape ionic strength: a few rounds of each settle it,
 * since activity moves with its root while it moves hardly at all with activity.
 */
export function equilibrate(water: Water): Equilibrium {
  const at = thermodynamicConstants(water.T_C);
  const A = debyeHuckelA(water.T_C);
  const strong = water.strong ?? { charge: 0, squares: 0 };
  const totals: Totals = { carbon: 0, ammonia: water.ammonia ?? 0, sulfide: water.sulfide ?? 0, phosphate: water.phosphate ?? 0 };
  const k = new Float64Array(CONDITIONAL_LENGTH);
  const floor = water.ionicStrengthAtLeast ?? 0;
  let I = water.ionicStrength ?? floor;
  let h = 0;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    foldActivities(at, A, I, k, 0);
    h = acidity(water.known, totals, k, h);
    if (water.ionicStrength !== undefined) break;
    const next = Math.max(floor, ionicStrength(h, totals, strong, water.closing ?? true, k, 0));
    const moved = Math.abs(next - I);
    I = next;
    if (!(moved > SETTLED)) break;
  }
  const carbon = totals.carbon;
  const CO2 = carbon * carbonDioxideFraction(h, k, 0);
  const CO3 = carbon * carbonateFraction(h, k, 0);
  const NH3Fraction = ammoniaFraction(h, k, 0);
  const H2SFraction = hydrogenSulfideFraction(h, k, 0);
  return {
    pH: 'pH' in water.known ? water.known.pH : 3 - log10(h),
    alkalinity: 'alkalinity' in water.known ? water.known.alkalinity : alkalinityOfH(h, totals, k, 0),
    carbon,
    ionicStrength: I,
    CO2,
    HCO3: carbon - CO2 - CO3,
    CO3,
    NH3: totals.ammonia * NH3Fraction,
    H2S: totals.sulfide * H2SFraction,
    NH3Fraction,
    H2SFraction,
  };
}

/** Fills in the total carbon and returns h. */
function acidity(known: Known, totals: Totals, k: Float64Array, guess: number): number {
  if ('carbon' in known) {
    totals.carbon = known.carbon;
    return 'pH' in known ? exp10(3 - known.pH) : solveH(known.alkalinity, totals, k, 0, guess);
  }
  const h = exp10(3 - known.pH);
  totals.carbon = carbonOf(known.alkalinity, h, totals, k, 0);
  return h;
}
