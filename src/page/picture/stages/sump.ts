// Sump: the lowest tank, in a pit. Its level swings, and the return pump stands in it.
import { INK } from '../kit/palette';
import { block, tankCut } from '../kit/parts';
import { hollowOf, type StageDrawing } from '../kit/kit';
import { WALL } from '../scene/layout';
import { flatBed, Sludge, Specks } from '../kit/solids';
import { StraightWater } from '../kit/water';

export const sump: StageDrawing = {
  support(pen, box) {
    if (box.stand === 'pit') pen.rect(box.x - WALL - 7, 0, box.w + 2 * WALL + 14, box.floor + WALL + 7, { fill: INK.soilDeep, alpha: 0.3 }, 4);
    else block(pen, box.x - 14, box.floor + WALL, box.w + 28, -box.floor - WALL);
  },
  live(kit, box) {
    const water = new StraightWater(kit, { id: box.id, x: box.x, w: box.w, rim: box.rim, level: box.level, floor: box.floor, seed: 25, sign: box.w * 0.84 });
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
