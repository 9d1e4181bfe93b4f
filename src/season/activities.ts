// Activity coefficients of a cell's water at a cut: its ionic strength from the state, folded into its conditional constants.
import { ATOM, CA, CL, IC, K, MG, NA, NO2, NO3, P, S2, SO4, TAN } from '../model/components';
import { CONDITIONAL_LENGTH, foldActivities } from '../model/equilibrium/conditional';
import { addIon, ionicStrength } from '../model/equilibrium/ionicStrength';
import { offsetOf } from './runtime';
import type { Runtime } from './runtime';

/** mol/L: what a water is first taken for */
const USUAL_STRENGTH = 0.005;

/** What one cell's ions come to; filled anew for each. */
const strong = { charge: 0, squares: 0 };
const totals = { carbon: 0, ammonia: 0, sulfide: 0, phosphate: 0 };

/** Refreshes the conditional constants of cell `c` for the state y, from the pH and constants it had. */
export function setActivities(runtime: Runtime, y: Float64Array, c: number): void {
  const { data, at } = runtime;
  const o = offsetOf(c);
  const v = 1 / runtime.assembly.cells[c].volume;
  strong.charge = 0;
  strong.squares = 0;
  addIon(strong, -1, ((y[o + NO2] + y[o + NO3]) * v) / ATOM.N);
  addIon(strong, -2, (y[o + SO4] * v) / ATOM.S);
  addIon(strong, 1, (y[o + K] * v) / ATOM.K);
  addIon(strong, 2, (y[o + CA] * v) / ATOM.Ca);
  addIon(strong, 2, (y[o + MG] * v) / ATOM.Mg);
  addIon(strong, 1, (y[o + NA] * v) / ATOM.Na);
  addIon(strong, -1, (y[o + CL] * v) / ATOM.Cl);
  totals.carbon = y[o + IC] * v;
  totals.ammonia = (y[o + TAN] * v) / ATOM.N;
  totals.sulfide = (y[o + S2] * v) / ATOM.S;
  totals.phosphate = (y[o + P] * v) / ATOM.P;
  const offset = c * CONDITIONAL_LENGTH;
  if (data.constants[offset] === 0) foldActivities(at.constants, at.A, USUAL_STRENGTH, data.constants, offset);
  const I = Math.min(0.5, Math.max(1e-6, ionicStrength(data.h[c], totals, strong, false, data.constants, offset)));
  foldActivities(at.constants, at.A, I, data.constants, offset);
}
