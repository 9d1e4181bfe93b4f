// What a stage's drawing file gives, and what it is given to draw with.
import type { Dials } from './dials';
import type { StageBox } from '../scene/layout';
import type { Live } from './moment';
import type { Sheets } from './sheets';
import type { Rect, Studio } from './studio';
import type { Pen } from './pen';

/** The tools a stage needs to put its moving parts on the picture, in the order in which they lie over each other. */
export interface Kit { studio: Studio; sheets: Sheets; dials: Dials; aerated: ReadonlySet<string>; unitsPerM: number }

/** The drawing of one kind of stage. Inks are in world coordinates, at the place the box gives. */
export interface StageDrawing {
  /** what carries it; drawn with the ground */
  support(pen: Pen, box: StageBox): void;
  /** behind its water, for a vessel whose walls are not straight; straight ones are filled plainly */
  back?(pen: Pen, box: StageBox): void;
  /** what stands still in its water, if anything; used for the picture of a part in the hand */
  media?(pen: Pen, box: StageBox): void;
  /** its water and everything that moves, from back to front */
  live(kit: Kit, box: StageBox): Live[];
  /** in front of its water: the cut wall and fittings */
  front(pen: Pen, box: StageBox): void;
  /** the inner space in which the front draws nothing, so that nothing need be laid over it */
  hollow?(box: StageBox): Rect;
  /** the water at rest, as path data: for the picture of a part in the hand */
  waterPath(box: StageBox): string;
}

/** The inner space of a tank with straight walls, less a fitting on its right. */
export function hollowOf(box: StageBox, right = 0): Rect {
  return { x: box.x + 5, y: box.rim + 4, w: box.w - 10 - right, h: box.floor - box.rim - 6 };
}

/** Shows a drawing without the hollow inside it, as four strips around it. */
export function showAround(studio: Studio, space: Rect, hollow: Rect, draw: (pen: Pen) => void): void {
  const right = hollow.x + hollow.w;
  const below = hollow.y + hollow.h;
  studio.show(studio.bake({ x: space.x, y: space.y, w: hollow.x - space.x, h: space.h }, draw));
  studio.show(studio.bake({ x: right, y: space.y, w: space.x + space.w - right, h: space.h }, draw));
  studio.show(studio.bake({ x: hollow.x, y: below, w: hollow.w, h: space.y + space.h - below }, draw));
  if (hollow.y - space.y > 1) studio.show(studio.bake({ x: hollow.x, y: space.y, w: hollow.w, h: hollow.y - space.y }, draw));
}

/** The cut wall of a tank: a little more than its inner space. */
export function wallSpace(box: StageBox): Rect {
  return { x: box.x - 16, y: box.rim - 8, w: box.w + 32, h: box.floor - box.rim + 24 };
}

/** Everything a stage's own ink may cover. */
export function spaceOf(box: StageBox): Rect {
  const top = Math.min(box.rim, box.level) - 44;
  return { x: box.x - 30, y: top, w: box.w + 60, h: box.floor + 34 - top };
}
