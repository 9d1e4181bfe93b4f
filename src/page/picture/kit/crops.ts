// How a crop is drawn, and how the plants of a bed stand. Types only.
import type { Pen } from './pen';

/** The drawing of one crop; its base is at (0, 0), in a net pot. */
export interface CropDrawing {
  /** space a plant takes in its own units */
  frame: { readonly x: number; readonly y: number; readonly w: number; readonly h: number };
  /** @param size 1 (seedling) … 4 (ripe) @param stress leaves curl out, narrow and turn straw */
  draw(pen: Pen, size: 1 | 2 | 3 | 4, stress: boolean, seed: number): void;
  /** dry leaf mass at which it fills its place, g/m²; only the drawn size depends on it */
  full_g_m2: number;
  /** drawn against its place: a plant that stands alone is drawn larger */
  scale: number;
  /** how high it may stand, world units: names keep clear of it */
  reach: number;
}

/** Where a plant stands and its roots begin; lean in radians, 0 upright. */
export interface Place {
  x: number;
  y: number;
  rootX: number;
  rootY: number;
  lean: number;
}
/** Size of plants against their art, room under them for roots, and how wide roots spread in it. */
export interface Fit {
  scale: number;
  depth: number;
  wide: number;
}
