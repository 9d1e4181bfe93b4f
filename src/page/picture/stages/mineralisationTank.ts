// Mineralisation tank: a side tank in a pit that keeps drained sludge stirred and aired.
import { INK } from '../kit/palette';
import { stone, tankCut } from '../kit/parts';
import { AirBubbles } from '../kit/gas';
import type { Kit } from '../kit/kit';
import { type SideBox, WALL } from '../scene/layout';
import type { Live } from '../kit/moment';
import { flatBed, Sludge, Specks } from '../kit/solids';
import { StraightWater } from '../kit/water';

/** Puts the tank and everything that moves in it on the picture. */
export function mineralisationTank(kit: Kit, box: SideBox): Live[] {
  const space = { x: box.x - 20, y: box.rim - 10, w: box.w + 40, h: box.floor - box.rim + 30 };
  const water = new StraightWater(kit, { id: box.id, x: box.x, w: box.w, rim: box.rim, level: box.level, floor: box.floor, seed: 31, still: true, sign: box.w * 0.8 });
  const sludge = new Sludge(kit, flatBed(box.id, box.x, box.w, box.floor, 40));
  kit.studio.show(kit.studio.bake({ x: box.x, y: box.floor - 16, w: box.w, h: 16 }, (pen) => stone(pen, box.x + box.w / 2, box.floor - 8, 60)));
  const specks = new Specks(kit, { id: box.id, x: box.x, w: box.w, floor: box.floor, drift: 8, sink: 0 }, water);
  const air = new AirBubbles(kit, box.id, [{ x: box.x + box.w / 2, spread: 34, bottom: box.floor - 14 }], water);
  kit.studio.show(kit.studio.bake(space, (pen) => tankCut(pen, box.x, box.rim, box.w, box.floor - box.rim, WALL, INK.pitWall)));
  return [water, sludge, specks, air];
}
