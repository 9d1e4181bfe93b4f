// A plain vessel in section, for a kind of stage without a drawing of its own: straight walls, water, specks and sludge.
import { block, tankCut } from './parts';
import { hollowOf, type StageDrawing } from './kit';
import { WALL } from './boxes';
import { flatBed, Sludge, Specks } from './solids';
import { StraightWater } from './water';

export const plainVessel: StageDrawing = {
  place: 'loop',
  widths: [110, 140],
  inHand: [120, 120, 24],
  on: 'block',
  inlet: 'side',
  support(pen, box) {
    block(pen, box.x - 14, box.floor + WALL, box.w + 28, -box.floor - WALL);
  },
  live(kit, box) {
    const { id, x, w, rim, level, floor } = box;
    const water = new StraightWater(kit, { id, x, w, rim, level, floor, seed: 17, sign: w * 0.7 });
    const sludge = new Sludge(kit, flatBed(id, x, w, floor, Math.max(8, Math.min(30, (floor - level) * 0.4))));
    return [water, sludge, new Specks(kit, { id, x, w, floor, drift: 7, sink: 1 }, water)];
  },
  front(pen, box) {
    tankCut(pen, box.x, box.rim, box.w, box.floor - box.rim);
  },
  hollow: (box) => hollowOf(box),
  waterPath: (box) => `M${box.x} ${box.level}h${box.w}V${box.floor}h${-box.w}Z`,
};
