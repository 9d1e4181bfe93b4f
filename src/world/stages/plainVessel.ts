// A plain vessel in section, for kinds of stage without a drawing of their own: straight walls, water, what is in it (media, pleats, air), and plants over a bed.
import { INK } from '../draw/palette';
import { block, carriers, pebbles, stone, table, tankCut } from '../draw/parts';
import type { Pen } from '../draw/pen';
import { Crop } from '../crop';
import { AirBubbles, Stripping } from '../gas';
import { hollowOf, type StageDrawing } from '../kit';
import { type StageBox, WALL } from '../layout';
import { flatBed, MatDirt, Sludge, Specks } from '../solids';
import { StraightWater } from '../water';

/** How a kind fills its vessel and what becomes of its surface. */
interface Filling {
  media?: 'carriers' | 'gravel' | 'packing' | 'fill';
  /** plants stand over it */
  plants?: boolean;
  /** solids show as dirt in its filling as they block it; else as sludge on its floor */
  blocks?: boolean;
  /** gases leave its surface where air drives them out */
  strips?: boolean;
  lid?: boolean;
}

/** Drawn width of a plant's place; carriers drawn in a vessel. */
const PLACE = 62;
const CARRIERS = 42;

const plantsAlong = (width: number): number => Math.max(2, Math.min(8, Math.round(width / PLACE)));
const stonesOf = (box: StageBox): number[] => [box.x + box.w * 0.27, box.x + box.w * 0.73];

/** Slanted bands, as open packing is built. */
function packing(pen: Pen, x: number, y: number, w: number, h: number): void {
  let d = '';
  for (let row = 0; row * 15 < h - 6; row += 1) d += `M${x} ${y + 4 + row * 15}l${w} 9M${x} ${y + 13 + row * 15}l${w} -9`;
  pen.within(`M${x} ${y}h${w}v${h}h${-w}Z`, () => pen.path(d, { ink: INK.mediaDark, width: 1.8 }));
}

function media(pen: Pen, box: StageBox, filling: Filling): void {
  const top = box.level + 8;
  const h = Math.max(0, box.floor - top - 10);
  if (filling.media === 'carriers') carriers(pen, box.x + 4, top, box.w - 8, h, CARRIERS, 8);
  if (filling.media === 'gravel') pebbles(pen, box.x + 1, box.level - 4, box.w - 2, box.floor - box.level + 2, 12, 8.4);
  if (filling.media === 'packing') packing(pen, box.x + 3, Math.min(box.rim + 10, box.level), box.w - 6, box.floor - Math.min(box.rim + 10, box.level) - 6);
  if (filling.media === 'fill') {
    pen.rect(box.x + box.w * 0.12, top, box.w * 0.76, h, { fill: INK.mat, ink: INK.ink, width: 1.8 }, 4);
    let folds = '';
    for (let x = box.x + box.w * 0.2; x < box.x + box.w * 0.86; x += 9) folds += `M${x} ${top + 4}V${top + h - 4}`;
    pen.path(folds, { ink: INK.matLight, width: 1.6 });
  }
}

export function plainVessel(filling: Filling = {}): StageDrawing {
  return {
    support(pen, box) {
      const y = box.floor + WALL;
      if (filling.plants && -y > 24) table(pen, box.x - 10, y, box.w + 20, box.w > 320 ? 4 : 3);
      else block(pen, box.x - 14, y, box.w + 28, -y);
    },
    media: (pen, box) => { media(pen, box, filling); },
    live(kit, box) {
      const { id, x, w, rim, level, floor } = box;
      const water = new StraightWater(kit, { id, x, w, rim, level, floor, seed: 17, sign: w * 0.7 });
      const aired = kit.aerated.has(id);
      kit.studio.show(kit.studio.bake({ x, y: Math.min(rim, level) - 6, w, h: floor - Math.min(rim, level) + 6 }, (pen) => {
        media(pen, box, filling);
        if (aired) for (const at of stonesOf(box)) stone(pen, at, floor - 7, Math.min(40, w * 0.28));
      }));
      const rests = filling.blocks ? new MatDirt(kit, id, x + 3, level + 8, w - 6, Math.max(6, floor - level - 20)) : new Sludge(kit, flatBed(id, x, w, floor, Math.max(8, Math.min(30, (floor - level) * 0.4))));
      const specks = new Specks(kit, { id, x, w, floor, drift: 7, sink: 1 }, water);
      const bubbles = aired ? [new AirBubbles(kit, id, stonesOf(box).map((at) => ({ x: at, spread: w * 0.16, bottom: floor - 12 })), water)] : [];
      const gases = filling.strips ? [new Stripping(kit, id, x + w / 2, rim)] : [];
      const count = plantsAlong(w);
      const crop = filling.plants ? [new Crop(kit, id, x, w, Math.min(rim + 6, level), Math.min(0.92, w / count / 66), count, floor - Math.min(rim + 6, level), () => undefined)] : [];
      return [water, rests, specks, ...bubbles, ...gases, ...crop];
    },
    front(pen, box) {
      tankCut(pen, box.x, box.rim, box.w, box.floor - box.rim);
      if (filling.lid) pen.rect(box.x - WALL - 3, box.rim - 12, box.w + 2 * WALL + 6, 10, { fill: INK.steel, ink: INK.ink, width: 2.2 }, 4);
    },
    hollow: (box) => hollowOf(box),
    waterPath: (box) => `M${box.x} ${box.level}h${box.w}V${box.floor}h${-box.w}Z`,
  };
}
