// The numbers a run uses: every parameter's value, or the one drawn or given in its place. What the catalogue adds comes from there.
import * as chemistry from './chemistry';
import type { CropNumbers, CropParameters } from './cropNumbers';
import { devices } from './devices';
import type { FishNumbers, FishParameters } from './fishNumbers';
import { heat, latentHeat } from './heat';
import { hydraulics, swameeJain, waterDensity, waterViscosity } from './hydraulics';
import { kinetics } from './kinetics';
import { matter } from './matter';
import type { Correlation, Parameter, ParameterGroup } from './parameter';
import { practice } from './practice';
import { stages } from './stages';

type Numbers<G> = { [Key in keyof G]: number };

/** The numbers of pipes, lips and pumps, and of warmth. */
export type HydraulicNumbers = Numbers<typeof hydraulics>;
export type HeatNumbers = Numbers<typeof heat>;

export interface Values {
  matter: Numbers<typeof matter>;
  kinetics: Numbers<typeof kinetics>;
  stages: Numbers<typeof stages>;
  devices: Numbers<typeof devices>;
  practice: Numbers<typeof practice>;
  hydraulics: HydraulicNumbers;
  heat: HeatNumbers;
  /** numbers of each species and crop that is known, by its name */
  fish: Readonly<Record<string, FishNumbers>>;
  crops: Readonly<Record<string, CropNumbers>>;
  /** numbers that a kind of stage has for itself, by the kind: see ownNumbers */
  kinds: Readonly<Record<string, Readonly<Record<string, number>>>>;
}

/** Parameters of what lives in a loop and stands in it, by name; they lie in the folders of the catalogue. */
export interface LivingParameters {
  fish: Readonly<Record<string, FishParameters>>;
  crops: Readonly<Record<string, CropParameters>>;
  kinds: Readonly<Record<string, ParameterGroup>>;
}

/** Every parameter of the model's own that a run draws or replaces, by group. */
const OWN = { matter, kinetics, stages, devices, practice, hydraulics, heat };

/**
 * Reads a kind's own numbers off those of a run.
 * @param kind the name of its folder
 * @param recorded what its folder records, whose keys the numbers have
 * @throws RangeError where the run knows none of that kind
 */
export function ownNumbers<G extends ParameterGroup>(values: Values, kind: string, recorded: G): Numbers<G> {
  const own = values.kinds[kind];
  if (own === undefined) throw new RangeError(`no numbers ${Object.keys(recorded).join(', ')} are known for a stage ${kind}`);
  return own as Numbers<G>;
}

/** Every parameter that a run draws or replaces, by group: the model's, and one for each species, crop, and kind with numbers of its own. */
export const groupsWith = (living: LivingParameters): Readonly<Record<string, ParameterGroup>> => ({ ...OWN, ...living.fish, ...living.crops, ...living.kinds });

type Fixed = Parameter | Correlation | Readonly<Record<string, Parameter | Correlation>>;
const { molarMass, henrySolubility, ...alone } = chemistry;
/** What is known but the same in every run: formulas, and numbers that are definitions. */
const FIXED: Readonly<Record<string, Readonly<Record<string, Fixed>>>> = {
  chemistry: { ...alone, ...molarMass, ...henrySolubility }, hydraulics: { waterDensity, waterViscosity, swameeJain }, heat: { latentHeat },
};

/** Why a parameter cannot be replaced; undefined where it can, or is not known. */
function whyFixed(groups: Readonly<Record<string, ParameterGroup>>, group: string, name: string): string | undefined {
  const found = FIXED[group]?.[name] ?? groups[group]?.[name];
  if (!found) return undefined;
  if ('coefficients' in found) return 'the coefficients of a formula mean something only together';
  return 'fixed' in found && typeof found.fixed === 'string' ? found.fixed : undefined;
}

/**
 * All values, with some replaced. Names are `group.parameter`, e.g. `kinetics.rootCoat`, or with a species, crop or kind as the group.
 * @throws RangeError where a name is unknown, a parameter is fixed, or a value is not finite.
 */
export function valuesOf(living: LivingParameters, replaced: Readonly<Record<string, number>> = {}): Values {
  const groups = groupsWith(living);
  // Made whole at once: an object grown name by name is looked up in like a dictionary ever after.
  const out: Record<string, Record<string, number>> = Object.fromEntries(Object.entries(groups).map(([group, parameters]) => (
    [group, Object.fromEntries(Object.entries(parameters).map(([name, parameter]) => [name, parameter.value]))])));
  for (const [path, value] of Object.entries(replaced)) {
    const [group = '', name = ''] = path.split('.');
    const numbers = out[group];
    const fixed = whyFixed(groups, group, name);
    if (fixed) throw new RangeError(`parameter ${path} is fixed: ${fixed}`);
    if (!numbers || !Object.hasOwn(numbers, name)) throw new RangeError(`parameter ${path} is not known`);
    if (!Number.isFinite(value)) throw new RangeError(`parameter ${path}: got ${value}, expected a finite number`);
    numbers[name] = value;
  }
  const named = (kinds: object): Record<string, Record<string, number>> => Object.fromEntries(Object.keys(kinds).map((kind) => [kind, out[kind]]));
  const own = Object.fromEntries(Object.keys(OWN).map((group) => [group, out[group]]));
  return { ...own, fish: named(living.fish), crops: named(living.crops), kinds: named(living.kinds) } as unknown as Values;
}
