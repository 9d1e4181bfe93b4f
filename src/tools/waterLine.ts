// One water composition in, its equilibrium out, both as a line of JSON. Pure: same line, same answer.
//
// Without alkalinity or DIC the bicarbonate is unknown, so the ionic strength cannot be summed from ammonia alone: it is 0
// (Emerson's fraction as published) unless nitrate, calcium or chloride describe the water, or it or a salinity is given.
import { equilibrate } from '../model/equilibrium/equilibrate';
import type { Equilibrium, Known } from '../model/equilibrium/equilibrate';
import type { StrongIons } from '../model/equilibrium/ionicStrength';
import { addIon } from '../model/equilibrium/ionicStrength';
import { saltIonicStrength } from '../model/equilibrium/activity';
import { oxygenSaturation_mg_L } from '../model/equilibrium/oxygen';
import { daviesLimit, molarMass } from '../model/parameters/chemistry';
import { say } from '../words/say';
import type { WaterLine } from './waterFields';
import { complaint, readWater } from './waterFields';

/** Digits kept in printed numbers: beyond any constant's own, short of rounding noise. */
const DIGITS = 9;

const printed = (x: number): number => Number(x.toPrecision(DIGITS));

/**
 * Answers one line.
 * @returns JSON: pH, CO2_mg_L, DIC_mmol_L, NH3_fraction, H2S_fraction, O2_saturation_mg_L, ionicStrength_mol_L, with null
 *   for what the line does not tell; or `{"error": "key: found …, expected …"}`
 */
export function answerLine(text: string): string {
  const read = readWater(text);
  return JSON.stringify('error' in read ? read : answerWater(read.water));
}

function answerWater(water: WaterLine): Record<string, number | null> | { error: string } {
  const O2_saturation_mg_L = printed(oxygenSaturation_mg_L(water.T_C, water.salinity_g_kg ?? 0, water.pressure_atm ?? 1));
  const known = knownOf(water);
  if (!known) {
    return {
      pH: null,
      CO2_mg_L: null,
      DIC_mmol_L: null,
      NH3_fraction: null,
      H2S_fraction: null,
      O2_saturation_mg_L,
      ionicStrength_mol_L: null,
    };
  }
  const solved = solve(water, known);
  const carbonKnown = 'alkalinity' in known || water.DIC_mmol_L !== undefined;
  const fault = faultOf(water, solved);
  if (fault) return { error: fault };
  return {
    pH: printed(solved.pH),
    CO2_mg_L: carbonKnown ? printed(solved.CO2 * molarMass.CO2.value) : null,
    DIC_mmol_L: carbonKnown ? printed(solved.carbon) : null,
    NH3_fraction: printed(solved.NH3Fraction),
    H2S_fraction: printed(solved.H2SFraction),
    O2_saturation_mg_L,
    ionicStrength_mol_L: printed(solved.ionicStrength),
  };
}

function knownOf(water: WaterLine): Known | undefined {
  const { alkalinity_meq_L: alkalinity, DIC_mmol_L: carbon, pH } = water;
  if (alkalinity !== undefined && carbon !== undefined) return { alkalinity, carbon };
  if (alkalinity !== undefined && pH !== undefined) return { alkalinity, pH };
  if (pH !== undefined) return { carbon: carbon ?? 0, pH };
  return undefined;
}

function solve(water: WaterLine, known: Known): Equilibrium {
  const strong: StrongIons = { charge: 0, squares: 0 };
  addIon(strong, -1, (water.nitrate_mgN_L ?? 0) / molarMass.N.value);
  addIon(strong, 2, water.calcium_mmol_L ?? 0);
  addIon(strong, -1, water.chloride_mmol_L ?? 0);
  const described = 'alkalinity' in known || water.DIC_mmol_L !== undefined || strong.squares > 0;
  const salt = saltIonicStrength(water.salinity_g_kg ?? 0);
  return equilibrate({
    T_C: water.T_C,
    known,
    ammonia: (water.TAN_mgN_L ?? 0) / molarMass.N.value,
    sulfide: (water.sulfide_mgS_L ?? 0) / molarMass.S.value,
    phosphate: (water.phosphate_mgP_L ?? 0) / molarMass.P.value,
    strong,
    ionicStrength: water.ionicStrength_mol_L ?? (described ? undefined : salt),
    ionicStrengthAtLeast: salt,
  });
}

/** What only shows once the water is solved. */
function faultOf(water: WaterLine, solved: Equilibrium): string | undefined {
  const limit = daviesLimit.value;
  if (!(solved.ionicStrength <= limit)) {
    return complaint(
      'ionicStrength_mol_L',
      say('waterLine.computed', { value: String(printed(solved.ionicStrength)) }),
      say('waterLine.ionicStrength', { limit: String(limit) }),
    );
  }
  if (solved.carbon < 0) {
    return complaint(
      'alkalinity_meq_L',
      say('waterLine.atPH', { value: String(water.alkalinity_meq_L), pH: String(water.pH) }),
      say('waterLine.alkalinity', { least: String(printed(baseWithoutCarbonate(water, solved))) }),
    );
  }
  return undefined;
}

function baseWithoutCarbonate(water: WaterLine, solved: Equilibrium): number {
  return solve({ ...water, ionicStrength_mol_L: solved.ionicStrength }, { carbon: 0, pH: solved.pH }).alkalinity;
}
