// What a kind of stage is: its sizes with their ranges, what it can do, what a person sets on it, whom it is a danger to.
// Everything else asks for these and never for a kind by name. No words: keys only.
import type { StageSizes } from './stageScience';

/**
 * A number that a plan may give: from, to and unit; what it is where the shelf offers it; what it is where a plan leaves it out (else the
 * usual).
 */
export interface SizeRange {
  from: number;
  to: number;
  unit: string;
  usual: number;
  leftOut?: number;
}

export type SizeName = Exclude<keyof StageSizes, 'outlet' | 'count'>;

export type KindSizes = { readonly [Size in SizeName]?: SizeRange } & { readonly outlet?: readonly NonNullable<StageSizes['outlet']>[] };

export type StageGroup = 'keepFish' | 'catchSolids' | 'treatWater' | 'growPlants' | 'moveWater' | 'dosePolish';
export type StageControl = 'air' | 'feed' | 'drain' | 'rinse' | 'backwash' | 'pump' | 'base' | 'lamp';

/** What a kind can do or is, as far as somebody else asks. */
export interface Capabilities {
  /** fish live in it; the loop begins at it */
  keepsFish?: boolean;
  /** plants grow in it */
  grows?: boolean;
  /** lifts the water round, and holds none */
  pumps?: boolean;
  /** stands lowest, below the floor, and takes up what the others gain and lose */
  lowest?: boolean;
  /** stands beside the loop and takes what others drain or rinse out */
  takesSolids?: boolean;
  /** stands beside the loop and drips base into a tank */
  doses?: boolean;
  /** settled solids can be let out at the bottom */
  drains?: boolean;
  /** caught solids are got rid of by this deed, by a person or by itself (every midnight, or as soon as it blocks) */
  cleanedBy?: { deed: 'rinse' | 'backwash'; byItself: boolean };
  /** a closed housing: no open water */
  closed?: boolean;
  /** stands in a pressure pipe where it comes after the pump, so that its loss is the pump's */
  pressurised?: boolean;
  /** narrows to a cone at its foot */
  cone?: boolean;
  /** water is sprayed over its packing and trickles down */
  sprayed?: boolean;
  /** has a lamp in the water */
  lamp?: boolean;
}

export const CAPABILITIES = [
  'keepsFish',
  'grows',
  'pumps',
  'lowest',
  'takesSolids',
  'doses',
  'drains',
  'cleanedBy',
  'closed',
  'pressurised',
  'cone',
  'sprayed',
  'lamp',
] as const satisfies readonly (keyof Capabilities)[];

/** What the file kind.ts in a kind's folder says. */
export interface KindFacts extends Capabilities {
  group: StageGroup;
  controls: readonly StageControl[];
  /** most that the air control gives, L/min; 0: it has none */
  airMax_L_min: number;
  cautions: readonly string[];
  sizes: KindSizes;
}
