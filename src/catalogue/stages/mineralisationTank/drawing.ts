// Mineralisation tank: a side tank in a pit that keeps drained sludge stirred and aired.
import { INK } from '../../../page/picture/kit/palette';
import { stone, tankCut } from '../../../page/picture/kit/parts';
import { AirBubbles } from '../../../page/picture/kit/gas';
import type { SideDrawing } from '../../../page/picture/kit/kit';
import { WALL } from '../../../page/picture/kit/boxes';
import { flatBed, Sludge, Specks } from '../../../page/picture/kit/solids';
import { StraightWater } from '../../../page/picture/kit/water';

export const drawing: SideDrawing = {
  place: 'pit',
  size: { w: 146, rim: 24, level: 52, floor: 150 },
  live(kit, box) {
    const space = { x: box.x - 20, y: box.rim - 10, w: box.w + 40, h: box.floor - box.rim + 30 };
    const water = new StraightWater(kit, {
      id: box.id,
      x: box.x,
      w: box.w,
      rim: box.rim,
      level: box.level,
      floor: box.floor,
      seed: 31,
      still: true,
      sign: box.w * 0.8,
    });
    const sludge = new Sludge(kit, flatBed(box.id, box.x, box.w, box.floor, 40));
    kit.studio.show(
      kit.studio.bake({ x: box.x, y: box.floor - 16, w: box.w, h: 16 }, (pen) => stone(pen, box.x + box.w / 2, box.floor - 8, 60)),
    );
    const specks = new Specks(kit, { id: box.id, x: box.x, w: box.w, floor: box.floor, drift: 8, sink: 0 }, water);
    const air = new AirBubbles(kit, box.id, [{ x: box.x + box.w / 2, spread: 34, bottom: box.floor - 14 }], water);
    kit.studio.show(kit.studio.bake(space, (pen) => tankCut(pen, box.x, box.rim, box.w, box.floor - box.rim, WALL, INK.pitWall)));
    return [water, sludge, specks, air];
  },
};
