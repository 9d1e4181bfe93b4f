// Where a thing stands in the picture, as its drawing is told: world units, the ground at y = 0, up is negative.
import type { StageSpec } from './terms';

/** Thickness of a cut wall. */
export const WALL = 9;

export type Stand = 'block' | 'legs' | 'table' | 'pit';

/** A tank: x and w are its inner left edge and inner width; y of rim, of the water at rest and of the inner floor. */
export interface StageBox {
  id: string;
  kind: string;
  spec: StageSpec;
  /** place in the loop */
  index: number;
  x: number;
  w: number;
  rim: number;
  level: number;
  floor: number;
  /** y at which its water runs over, true to the design; the drawn rim may stand higher */
  brim: number;
  stand: Stand;
  /** whether its water comes over the rim or through the wall on the left */
  entry: 'above' | 'wall';
  /** level above the ground, cm, and the fall to the next stage, cm, as designed */
  level_cm: number;
  fall_cm: number;
}

/** A tank beside the loop, and the stage by which it stands. */
export interface SideBox {
  id: string;
  kind: string;
  host: string;
  x: number;
  w: number;
  rim: number;
  level: number;
  floor: number;
}

/** The pump, by the middle of its housing, and the stage in which it stands. */
export interface PumpBox {
  id: string;
  kind: string;
  host: string;
  x: number;
  y: number;
}
