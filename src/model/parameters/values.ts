// The numbers a run uses: every parameter's value, or the one drawn or given in its place.
import { CROPS } from './crops/crops';
import type { CropName } from './crops/crops';
import { devices } from './devices';
import { heat } from './heat';
import { hydraulics } from './hydraulics';
import { kinetics } from './kinetics';
import { matter } from './matter';
import type { ParameterGroup } from './parameter';
import { practice } from './practice';
import { SPECIES } from './species/species';
import type { SpeciesName } from './species/species';
import { stages } from './stages';

type Numbers<G> = { [Key in keyof G]: number };

/** A species' numbers; all species have the same keys. */
export type FishNumbers = Numbers<(typeof SPECIES)['tilapia']>;
/** A crop's numbers; all crops have the same keys. */
export type CropNumbers = Numbers<(typeof CROPS)['lettuce']>;

export interface Values extends Record<SpeciesName, FishNumbers>, Record<CropName, CropNumbers> {
  matter: Numbers<typeof matter>;
  kinetics: Numbers<typeof kinetics>;
  stages: Numbers<typeof stages>;
  devices: Numbers<typeof devices>;
  practice: Numbers<typeof practice>;
  hydraulics: Numbers<typeof hydraulics>;
  heat: Numbers<typeof heat>;
}

export const GROUPS: Record<keyof Values, ParameterGroup> = { matter, kinetics, ...SPECIES, ...CROPS, stages, devices, practice, hydraulics, heat };

/**
 * All values, with some replaced. Names are `group.parameter`, e.g. `kinetics.rootHalf`.
 * @throws RangeError where a name is unknown or a value is not finite.
 */
export function valuesWith(replaced: Readonly<Record<string, number>> = {}): Values {
  // Made whole at once: an object grown name by name is looked up in like a dictionary ever after.
  const out: Record<string, Record<string, number>> = Object.fromEntries(Object.entries(GROUPS).map(([group, parameters]) => (
    [group, Object.fromEntries(Object.entries(parameters).map(([name, parameter]) => [name, parameter.value]))])));
  for (const [path, value] of Object.entries(replaced)) {
    const [group = '', name = ''] = path.split('.');
    const numbers = out[group];
    if (!numbers || !(name in numbers)) throw new RangeError(`parameter ${path} is not known`);
    if (!Number.isFinite(value)) throw new RangeError(`parameter ${path}: got ${value}, expected a finite number`);
    numbers[name] = value;
  }
  return out as unknown as Values;
}
