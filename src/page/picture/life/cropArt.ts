// Which drawing belongs to which crop, and how much leaf makes it fill its place.
import { basil, BASIL_FRAME } from './basilArt';
import { chard, CHARD_FRAME } from './chardArt';
import { lettuce, LETTUCE_FRAME } from './lettuceArt';
import type { CropDrawing } from '../kit/crops';
import { tomato, TOMATO_FRAME } from './tomatoArt';

/** Dry leaf mass at which lettuce fills its place on the raft, g/m². */
export const FULL_LEAF_g_m2 = 180;

const LETTUCE: CropDrawing = { frame: LETTUCE_FRAME, draw: lettuce, full_g_m2: FULL_LEAF_g_m2, scale: 1, reach: 74 };
const CROPS: Readonly<Record<string, CropDrawing>> = {
  lettuce: LETTUCE,
  basil: { frame: BASIL_FRAME, draw: basil, full_g_m2: 150, scale: 1, reach: 94 },
  chard: { frame: CHARD_FRAME, draw: chard, full_g_m2: 130, scale: 1, reach: 100 },
  tomato: { frame: TOMATO_FRAME, draw: tomato, full_g_m2: 340, scale: 0.98, reach: 168 },
};

/** Drawing of a crop; one without its own looks like lettuce. */
export const cropArt = (kind: string): CropDrawing => CROPS[kind] ?? LETTUCE;
