// One stroke of rain, as it is baked with the other small pictures.
import { INK } from '../kit/palette';
import type { SheetEntry } from '../kit/studio';

/** How far a stroke is blown aside for each unit that it falls. */
export const BLOWN = 0.22;
/** Length of a stroke, world units. */
export const STROKE = 19;

export const RAINDROP: SheetEntry = {
  name: 'rain',
  x: -3 - STROKE * BLOWN,
  y: -3 - STROKE,
  w: STROKE * BLOWN + 6,
  h: STROKE + 6,
  draw: (pen) => pen.line(0, 0, -STROKE * BLOWN, -STROKE, { ink: INK.blue, width: 2, alpha: 0.8 }),
};
