// Which drawing belongs to which crop, and how much leaf makes it fill its place.
import { basil, BASIL_FRAME } from './basilArt';
import { chard, CHARD_FRAME } from './chardArt';
import { lettuce, LETTUCE_FRAME } from './lettuceArt';
import type { Pen } from '../kit/pen';
import { tomato, TOMATO_FRAME } from './tomatoArt';

export interface CropArt {
  frame: { readonly x: number; readonly y: number; readonly w: number; readonly h: number };
  draw(pen: Pen, size: 1 | 2 | 3 | 4, stress: boolean, seed: number): void;
  /** dry leaf mass at which it fills its place, g/m²; only the drawn size depends on it */
  full_g_m2: number;
  /** drawn against its place: a plant that stands alone is drawn larger */
  scale: number;
  /** how high it may stand, world units: names keep clear of it */
  reach: number;
}

/** Dry leaf mass at which lettuce fills its place on the raft, g/m². */
export const FULL_LEAF_g_m2 = 180;

const LETTUCE: CropArt = { frame: LETTUCE_FRAME, draw: lettuce, full_g_m2: FULL_LEAF_g_m2, scale: 1, reach: 74 };
const CROPS: Readonly<Record<string, CropArt>> = {
  lettuce: LETTUCE,
  basil: { frame: BASIL_FRAME, draw: basil, full_g_m2: 150, scale: 1, reach: 94 },
  chard: { frame: CHARD_FRAME, draw: chard, full_g_m2: 130, scale: 1, reach: 100 },
  tomato: { frame: TOMATO_FRAME, draw: tomato, full_g_m2: 340, scale: 0.98, reach: 168 },
};

/** Drawing of a crop; one without its own looks like lettuce. */
export const cropArt = (kind: string): CropArt => CROPS[kind] ?? LETTUCE;
