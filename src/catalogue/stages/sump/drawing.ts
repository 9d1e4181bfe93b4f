// Sump: the lowest tank, in a pit. Its level swings, and the return pump stands in it.
import { INK } from '../../../page/picture/kit/palette';
import { block, tankCut } from '../../../page/picture/kit/parts';
import { hollowOf, type StageDrawing } from '../../../page/picture/kit/kit';
import { WALL } from '../../../page/picture/kit/boxes';
import { flatBed, Sludge, Specks } from '../../../page/picture/kit/solids';
import { StraightWater } from '../../../page/picture/kit/water';

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [132, 156],
  inHand: [140, 110, 40],
  on: 'block',
  inlet: 'side',
  support(pen, box) {
    if (box.stand === 'pit')
      pen.rect(box.x - WALL - 7, 0, box.w + 2 * WALL + 14, box.floor + WALL + 7, { fill: INK.soilDeep, alpha: 0.3 }, 4);
    else block(pen, box.x - 14, box.floor + WALL, box.w + 28, -box.floor - WALL);
  },
  live(kit, box) {
    const water = new StraightWater(kit, {
      id: box.id,
      x: box.x,
      w: box.w,
      rim: box.rim,
      level: box.level,
      floor: box.floor,
      seed: 25,
      sign: box.w * 0.84,
    });
    const sludge = new Sludge(kit, flatBed(box.id, box.x, box.w, box.floor, 30));
    const specks = new Specks(kit, { id: box.id, x: box.x, w: box.w, floor: box.floor, drift: 6, sink: 1 }, water);
    return [water, sludge, specks];
  },
  front(pen, box) {
    tankCut(pen, box.x, box.rim, box.w, box.floor - box.rim, WALL, INK.pitWall);
  },
  hollow: (box) => hollowOf(box),
  waterPath: (box) => `M${box.x} ${box.level}h${box.w}V${box.floor}h${-box.w}Z`,
};
