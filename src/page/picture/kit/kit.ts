// What a kind's drawing file gives, and what it is given to draw with.
import type { PumpBox, SideBox, StageBox } from './boxes';
import type { Fit, Place } from './crops';
import type { Dials } from './dials';
import type { Surfaced } from './surfaced';
import type { Load } from './loads';
import type { Live, Moment } from './moment';
import type { StageSpec } from './terms';
import type { Rect, Sheet, Studio } from './studio';
import type { Pen } from './pen';

/** The tools a drawing needs to put its moving parts on the picture, in the order in which they lie over each other. */
export interface Kit {
  studio: Studio;
  dials: Dials;
  /** small pictures of what all stages share: gas, specks, dashes, drops */
  sheets: { bits: Sheet };
  /** ids of the stages that get air at some time */
  aerated: ReadonlySet<string>;
  /** height of a metre */
  unitsPerM: number;
  /** the fish of a tank, swimming in its water */
  school(tank: { id: string; x: number; w: number; floor: number }, water: Surfaced): Live;
  /** the plants of a bed. @param layers what is put between the roots and the leaves */
  crop(bed: string, places: readonly Place[], fit: Fit, layers: () => void): Live;
  /** whether the pump in this tank drew air and has not been looked after since */
  drewAir(tank: string, moment: Moment): boolean;
}

/**
 * The drawing of one kind of stage of the loop: what the picture must know before it is drawn, and how it is drawn.
 * Inks are in world coordinates, at the place the box gives.
 */
export interface StageDrawing {
  place: 'loop';
  /** narrowest and widest, world units */
  widths: readonly [number, number];
  /** in the hand, before the design knows its levels: width, depth of water, freeboard, world units */
  inHand: readonly [number, number, number];
  /** what carries it where it stands over the ground */
  on: 'block' | 'legs' | 'table';
  /**
   * how water comes in: over the rim or through the wall on the left, into a well in the middle, through a fitting of a closed hull, onto a
   * spray bar
   */
  inlet: 'side' | 'well' | 'fitting' | 'bar';
  /** what lives in it: its water is judged for them. Leaves of plants rise over its rim, or lean out at its sides */
  lives?: 'fish' | 'plants' | 'leaningPlants';
  /** room that a fitting takes inside at the right */
  fitting?: number;
  /** room over the rim taken by what stands there, plants aside */
  over?: number;
  /** sets its heights where its water is not where a plain tank has it. @param drop the fall that it may use, world units */
  raise?(box: StageBox, drop: number): void;
  /** what tells how dirty its filling is, where that is not its blockage */
  dirt?(spec: StageSpec): Load;
  /** y of its number tag, where a stage of its shape would have it in the way. @param scale of the tag against its art */
  tagY?(box: StageBox, scale: number): number;
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

/** The drawing of a kind that stands beside the loop: in a pit under its host, or over the rim of the tank that it gives to. */
export interface SideDrawing {
  place: 'pit' | 'overRim';
  /** inner width, and how far rim, water and floor stand from the ground (in a pit) or from its floor (over a rim); world units */
  size: { w: number; rim: number; level: number; floor: number };
  live(kit: Kit, box: SideBox, host: StageBox): Live[];
}

/** The drawing of a pump that stands in the last tank. */
export interface PumpDrawing {
  place: 'inTank';
  /** what it takes around the middle of its housing */
  outline: Rect;
  /** @param width of the whole picture */
  live(kit: Kit, box: PumpBox, host: StageBox, width: number): Live[];
}

export type KindDrawing = StageDrawing | SideDrawing | PumpDrawing;

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
