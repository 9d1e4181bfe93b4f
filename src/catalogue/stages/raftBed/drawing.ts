// Raft bed: leafy plants on floating boards, roots hanging in a long trough that water passes from left to right.
import { INK } from '../../../page/picture/kit/palette';
import { stone, table, tankCut } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { AirBubbles } from '../../../page/picture/kit/gas';
import { hollowOf, type StageDrawing } from '../../../page/picture/kit/kit';
import { type StageBox, WALL } from '../../../page/picture/kit/boxes';
import { flatBed, Sludge, Specks } from '../../../page/picture/kit/solids';
import { StraightWater } from '../../../page/picture/kit/water';

const PLACE = 62;

/** Plants drawn along a bed of this drawn width. */
export function plantsDrawn(width: number): number {
  return Math.max(4, Math.min(8, Math.round(width / PLACE)));
}

/** The boards that carry the plants. */
function rafts(pen: Pen, box: StageBox): void {
  const count = Math.max(1, Math.round(plantsDrawn(box.w) / 2));
  const w = box.w / count;
  for (let i = 0; i < count; i += 1) {
    pen.rect(box.x + i * w + 3, box.level - 10, w - 6, 14, { fill: INK.white, ink: INK.ink }, 3);
    pen.rect(box.x + i * w + 6, box.level - 2, w - 12, 4, { fill: '#CFC4AA', alpha: 0.8 });
  }
}

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [250, 420],
  inHand: [300, 66, 16],
  on: 'table',
  inlet: 'side',
  lives: 'plants',
  over: 10,
  support(pen, box) {
    const y = box.floor + WALL;
    if (-y > 24) table(pen, box.x - 10, y, box.w + 20, box.w > 320 ? 4 : 3);
  },
  media: rafts,
  live(kit, box) {
    const water = new StraightWater(kit, { id: box.id, x: box.x, w: box.w, rim: box.rim, level: box.level, floor: box.floor, seed: 21 }, 3);
    const sludge = new Sludge(kit, flatBed(box.id, box.x, box.w, box.floor, Math.min(26, (box.floor - box.level) * 0.4)));
    const count = plantsDrawn(box.w);
    const stones = Array.from({ length: 3 }, (_, i) => ({
      x: box.x + (box.w * Math.round((count * (i + 0.5)) / 3)) / count,
      spread: 10,
      bottom: box.floor - 9,
    }));
    if (kit.aerated.has(box.id))
      kit.studio.show(
        kit.studio.bake({ x: box.x, y: box.floor - 14, w: box.w, h: 14 }, (pen) => {
          for (const one of stones) stone(pen, one.x, box.floor - 6, 30);
        }),
      );
    const specks = new Specks(kit, { id: box.id, x: box.x, w: box.w, floor: box.floor, drift: 12, sink: 1.5 }, water);
    const bubbles = new AirBubbles(kit, box.id, stones, water);
    const places = Array.from({ length: count }, (_, i) => {
      const x = box.x + ((i + 0.5) * box.w) / count;
      return { x, y: box.level - 11, rootX: x, rootY: box.level + 4, lean: 0 };
    });
    const crop = kit.crop(box.id, places, { scale: Math.min(0.92, box.w / count / 66), depth: box.floor - box.level, wide: 1 }, () => {
      kit.studio.show(kit.studio.bake({ x: box.x, y: box.level - 13, w: box.w, h: 20 }, (pen) => rafts(pen, box)));
    });
    return [water, sludge, specks, bubbles, crop];
  },
  front(pen, box) {
    tankCut(pen, box.x, box.rim, box.w, box.floor - box.rim);
  },
  hollow: (box) => hollowOf(box),
  waterPath: (box) => `M${box.x} ${box.level}h${box.w}V${box.floor}h${-box.w}Z`,
};
