// Degassing tank: air from stones on the floor strips gases and feeds the film on the carriers.
import { block, carriers, stone, tankCut } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { AirBubbles, Stripping } from '../../../page/picture/kit/gas';
import { hollowOf, type StageDrawing } from '../../../page/picture/kit/kit';
import { type StageBox, WALL } from '../../../page/picture/kit/boxes';
import { Specks } from '../../../page/picture/kit/solids';
import { StraightWater } from '../../../page/picture/kit/water';

/** Carriers drawn for a tank filled with media up to its brim. */
const FULL_OF_MEDIA = 60;

/** Carriers and air stones. */
function media(pen: Pen, box: StageBox): void {
  const fill = box.spec.media_m3 ?? 0;
  const volume = box.spec.volume_m3 ?? 0;
  const share = volume > 0 ? Math.min(1, fill / volume) : 0;
  if (share > 0)
    carriers(pen, box.x + 4, box.level + 12, box.w - 8, box.floor - box.level - 34, Math.max(6, Math.round(FULL_OF_MEDIA * share)), 6);
  for (const x of stones(box)) stone(pen, x, box.floor - 9, Math.min(46, box.w * 0.3));
}

const stones = (box: StageBox): number[] => [box.x + box.w * 0.27, box.x + box.w * 0.73];

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [118, 158],
  inHand: [146, 160, 26],
  on: 'block',
  inlet: 'side',
  over: 62,
  support(pen, box) {
    block(pen, box.x - 14, box.floor + WALL, box.w + 28, -box.floor - WALL);
  },
  media,
  live(kit, box) {
    const water = new StraightWater(kit, {
      id: box.id,
      x: box.x,
      w: box.w,
      rim: box.rim,
      level: box.level,
      floor: box.floor,
      seed: 15,
      sign: box.w * 0.5,
    });
    kit.studio.show(kit.studio.bake({ x: box.x, y: box.level + 4, w: box.w, h: box.floor - box.level - 2 }, (pen) => media(pen, box)));
    const specks = new Specks(kit, { id: box.id, x: box.x, w: box.w, floor: box.floor, drift: 9, sink: 0 }, water);
    const columns = stones(box).map((x) => ({ x, spread: box.w * 0.19, bottom: box.floor - 14 }));
    return [water, specks, new AirBubbles(kit, box.id, columns, water), new Stripping(kit, box.id, box.x + box.w / 2, box.rim)];
  },
  front(pen, box) {
    tankCut(pen, box.x, box.rim, box.w, box.floor - box.rim);
  },
  hollow: (box) => hollowOf(box),
  waterPath: (box) => `M${box.x} ${box.level}h${box.w}V${box.floor}h${-box.w}Z`,
};
