// Compositions may name what a table shows: carbon dioxide, un-ionised ammonia, hydrogen sulfide, methane by mass.
// Here these become what the model starts from: pH, alkalinity, inorganic carbon and totals.
import { ATOM } from '../model/components';
import { equilibrate } from '../model/equilibrium/equilibrate';
import { addIon } from '../model/equilibrium/ionicStrength';
import type { StrongIons } from '../model/equilibrium/ionicStrength';
import { molarMass } from '../model/parameters/chemistry';
import type { Composition } from '../season/plan';
import type { CompositionRead } from './compositionSchema';
import type { Expected } from './problem';

/** What the water's surroundings pin: °C, and a rig's pH where the composition names none. */
export interface Surroundings {
  T_C: number;
  pH?: number;
}

// Methane burns with two O2.
const METHANE_gCOD_g = (4 * ATOM.O) / (ATOM.C + 4 * ATOM.H);
const H2S_g_mol = ATOM.S + 2 * ATOM.H;
const HALVINGS = 60;
const ROUNDS = 12;
/** mol/m³: enough to take a share of. */
const SOME_CARBON = 1e-6;

function strongIons(water: CompositionRead): StrongIons {
  const strong: StrongIons = { charge: 0, squares: 0 };
  addIon(strong, -1, (water.NO3_mgN_L ?? 0) / ATOM.N);
  addIon(strong, -1, (water.Cl_mg_L ?? 0) / ATOM.Cl);
  addIon(strong, -2, (water.SO4_mgS_L ?? 0) / ATOM.S);
  addIon(strong, 2, (water.Ca_mg_L ?? 0) / ATOM.Ca);
  addIon(strong, 2, (water.Mg_mg_L ?? 0) / ATOM.Mg);
  addIon(strong, 1, (water.Na_mg_L ?? 0) / ATOM.Na);
  addIon(strong, 1, (water.K_mg_L ?? 0) / ATOM.K);
  return strong;
}

/** The pH at which a water of this alkalinity holds this much CO2 (mol/m³): CO2 falls as pH rises, so it is bracketed. */
function acidityOf(alkalinity: number, CO2: number, T_C: number, strong: StrongIons): number {
  let low = 2;
  let high = 12;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const pH = (low + high) / 2;
    if (equilibrate({ T_C, known: { alkalinity, pH }, strong }).CO2 > CO2) low = pH;
    else high = pH;
  }
  return (low + high) / 2;
}

/** The inorganic carbon (mol/m³) of a water of this pH that holds this much CO2; more carbon means more ions, so a few rounds. */
function carbonOf(pH: number, CO2: number, T_C: number, strong: StrongIons): number {
  let carbon = CO2;
  for (let round = 0; round < ROUNDS; round += 1) {
    const guess = Math.max(carbon, SOME_CARBON);
    carbon = (CO2 * guess) / equilibrate({ T_C, known: { carbon: guess, pH }, strong }).CO2;
  }
  return carbon;
}

/** pH and inorganic carbon fix the alkalinity; the model starts from pH and alkalinity. */
function withAlkalinity(water: Composition, pH: number, T_C: number, strong: StrongIons): Composition {
  if (water.alkalinity_meq_L !== undefined || water.DIC_mmol_L === undefined) return water;
  const { DIC_mmol_L: carbon, ...rest } = water;
  const { alkalinity } = equilibrate({
    T_C,
    known: { carbon, pH },
    strong,
    ammonia: (water.TAN_mgN_L ?? 0) / ATOM.N,
    sulfide: (water.sulfide_mgS_L ?? 0) / ATOM.S,
    phosphate: (water.PO4_mgP_L ?? 0) / ATOM.P,
  });
  return { ...rest, pH, alkalinity_meq_L: alkalinity };
}

/** Names what a derived quantity lacks to be resolved: its key and what should stand beside it. None lacking: null. */
export function lacking(read: CompositionRead, around: Surroundings): { key: keyof CompositionRead; expected: Expected } | null {
  const pHKnown = (read.pH ?? around.pH) !== undefined;
  if (read.CO2_mg_L !== undefined && read.DIC_mmol_L === undefined && !pHKnown && read.alkalinity_meq_L === undefined)
    return { key: 'CO2_mg_L', expected: { code: 'beside.CO2_mg_L' } };
  const pHFollows = pHKnown || (read.CO2_mg_L !== undefined && read.alkalinity_meq_L !== undefined);
  if (read.NH3_mgN_L !== undefined && read.TAN_mgN_L === undefined && !pHFollows)
    return { key: 'NH3_mgN_L', expected: { code: 'beside.NH3_mgN_L' } };
  if (read.H2S_ug_L !== undefined && read.sulfide_mgS_L === undefined && !pHFollows)
    return { key: 'H2S_ug_L', expected: { code: 'beside.H2S_ug_L' } };
  return null;
}

/**
 * The composition as the model reads it. A derived quantity counts only where what it follows from is not given: TAN before
 * NH3, sulfide before H2S, pH with alkalinity before CO2. So a printed row can be given back as a start.
 */
export function asMeasured(read: CompositionRead, around: Surroundings): Composition {
  const { CO2_mg_L, NH3_mgN_L, H2S_ug_L, CH4_mg_L, ...water } = read;
  const { T_C } = around;
  const strong = strongIons(read);
  const made: Composition = water;
  if (CH4_mg_L !== undefined && made.CH4_mgCOD_L === undefined) made.CH4_mgCOD_L = CH4_mg_L * METHANE_gCOD_g;
  const held = made.pH ?? around.pH;
  if (CO2_mg_L !== undefined && made.DIC_mmol_L === undefined) {
    const CO2 = CO2_mg_L / molarMass.CO2.value;
    if (held === undefined && made.alkalinity_meq_L !== undefined) made.pH = acidityOf(made.alkalinity_meq_L, CO2, T_C, strong);
    if (held !== undefined && made.alkalinity_meq_L === undefined) made.DIC_mmol_L = carbonOf(held, CO2, T_C, strong);
  }
  const pH = made.pH ?? held;
  if (pH === undefined) return made;
  const known = made.alkalinity_meq_L === undefined ? { carbon: made.DIC_mmol_L ?? 0, pH } : { alkalinity: made.alkalinity_meq_L, pH };
  const { NH3Fraction, H2SFraction } = equilibrate({ T_C, known, strong });
  if (NH3_mgN_L !== undefined && made.TAN_mgN_L === undefined) made.TAN_mgN_L = NH3_mgN_L / NH3Fraction;
  if (H2S_ug_L !== undefined && made.sulfide_mgS_L === undefined)
    made.sulfide_mgS_L = ((H2S_ug_L / 1000 / H2S_g_mol) * ATOM.S) / H2SFraction;
  return withAlkalinity(made, pH, T_C, strong);
}
