// The numbers a run uses: every parameter's value, or the one drawn or given in its place.
import * as chemistry from './chemistry';
import { CROPS } from './crops/crops';
import type { CropName } from './crops/crops';
import { devices } from './devices';
import { heat, latentHeat } from './heat';
import { hydraulics, swameeJain, waterDensity, waterViscosity } from './hydraulics';
import { kinetics } from './kinetics';
import { matter } from './matter';
import type { Correlation, Parameter, ParameterGroup } from './parameter';
import { practice } from './practice';
import { SPECIES } from './species/species';
import type { SpeciesName } from './species/species';
import { stages } from './stages';

type Numbers<G> = { [Key in keyof G]: number };

/** A species' numbers; all species have the same keys. */
export type FishNumbers = Numbers<(typeof SPECIES)['tilapia']>;
/** A crop's numbers; all crops have the same keys. */
export type CropNumbers = Numbers<(typeof CROPS)['lettuce']>;

/** The numbers of pipes, lips and pumps, and of warmth. */
export type HydraulicNumbers = Numbers<typeof hydraulics>;
export type HeatNumbers = Numbers<typeof heat>;

export interface Values extends Record<SpeciesName, FishNumbers>, Record<CropName, CropNumbers> {
  matter: Numbers<typeof matter>;
  kinetics: Numbers<typeof kinetics>;
  stages: Numbers<typeof stages>;
  devices: Numbers<typeof devices>;
  practice: Numbers<typeof practice>;
  hydraulics: HydraulicNumbers;
  heat: HeatNumbers;
}

/** Every parameter that a run draws or replaces, by group. */
export const GROUPS: Record<keyof Values, ParameterGroup> = { matter, kinetics, ...SPECIES, ...CROPS, stages, devices, practice, hydraulics, heat };

type Fixed = Parameter | Correlation | Readonly<Record<string, Parameter | Correlation>>;
const { molarMass, henrySolubility, ...alone } = chemistry;
/** What is known but the same in every run: formulas, and numbers that are definitions. */
const FIXED: Readonly<Record<string, Readonly<Record<string, Fixed>>>> = {
  chemistry: { ...alone, ...molarMass, ...henrySolubility }, hydraulics: { waterDensity, waterViscosity, swameeJain }, heat: { latentHeat },
};

/** Why a parameter cannot be replaced; undefined where it can, or is not known. */
function whyFixed(group: string, name: string): string | undefined {
  const found = FIXED[group]?.[name] ?? GROUPS[group as keyof Values]?.[name];
  if (!found) return undefined;
  if ('coefficients' in found) return 'the coefficients of a formula mean something only together';
  return 'fixed' in found && typeof found.fixed === 'string' ? found.fixed : undefined;
}

/**
 * All values, with some replaced. Names are `group.parameter`, e.g. `kinetics.rootHalf`, `lettuce.radiationUse`, `tilapia.gain`.
 * @throws RangeError where a name is unknown, a parameter is fixed, or a value is not finite.
 */
export function valuesWith(replaced: Readonly<Record<string, number>> = {}): Values {
  // Made whole at once: an object grown name by name is looked up in like a dictionary ever after.
  const out: Record<string, Record<string, number>> = Object.fromEntries(Object.entries(GROUPS).map(([group, parameters]) => (
    [group, Object.fromEntries(Object.entries(parameters).map(([name, parameter]) => [name, parameter.value]))])));
  for (const [path, value] of Object.entries(replaced)) {
    const [group = '', name = ''] = path.split('.');
    const numbers = out[group];
    const fixed = whyFixed(group, name);
    if (fixed) throw new RangeError(`parameter ${path} is fixed: ${fixed}`);
    if (!numbers || !Object.hasOwn(numbers, name)) throw new RangeError(`parameter ${path} is not known`);
    if (!Number.isFinite(value)) throw new RangeError(`parameter ${path}: got ${value}, expected a finite number`);
    numbers[name] = value;
  }
  return out as unknown as Values;
}
