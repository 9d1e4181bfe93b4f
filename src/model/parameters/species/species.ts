// The kinds of fish a person can stock. A new one is a new record with the same keys.
import type { Parameter } from '../parameter';
import { channelCatfish } from './channelCatfish';
import { commonCarp } from './commonCarp';
import { rainbowTrout } from './rainbowTrout';
import { tilapia } from './tilapia';

export type SpeciesParameters = Readonly<Record<keyof typeof tilapia, Parameter>>;

export const SPECIES = { tilapia, channelCatfish, commonCarp, rainbowTrout } as const satisfies Record<string, SpeciesParameters>;

export type SpeciesName = keyof typeof SPECIES;
