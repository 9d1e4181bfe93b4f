// The numbers of a run with all that the catalogue knows: the model's own, and those in the folders of stages, crops and fish.
import type { ParameterGroup } from '../model/parameters/parameter';
import { groupsWith, valuesOf } from '../model/parameters/values';
import type { LivingParameters, Values } from '../model/parameters/values';
import { CROPS, KIND_CONSTANTS, SPECIES } from './kinds';

const LIVING: LivingParameters = { fish: SPECIES, crops: CROPS, kinds: KIND_CONSTANTS };

/** Every parameter that a run draws or replaces, by group. */
export const GROUPS: Readonly<Record<string, ParameterGroup>> = groupsWith(LIVING);

/**
 * All values, with some replaced. Names are `group.parameter`, e.g. `kinetics.rootCoat`, or with a species, crop or kind as the group.
 * @throws RangeError where a name is unknown, a parameter is fixed, or a value is not finite.
 */
export const valuesWith = (replaced: Readonly<Record<string, number>> = {}): Values => valuesOf(LIVING, replaced);

/** All values as recorded: what the page shows of a stage before any run. */
export const RECORDED: Values = valuesWith();
