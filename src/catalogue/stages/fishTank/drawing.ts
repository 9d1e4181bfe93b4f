// Fish tank with a bottom-lift overflow: water leaves from the floor, up through a sleeve, over an inner weir.
import { INK } from '../../../page/picture/kit/palette';
import { arrowHead, block, stone, tankCut } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { AirBubbles } from '../../../page/picture/kit/gas';
import { hollowOf, type StageDrawing } from '../../../page/picture/kit/kit';
import { type StageBox, WALL } from '../../../page/picture/kit/boxes';
import { flatBed, Sludge, Specks } from '../../../page/picture/kit/solids';
import { StraightWater } from '../../../page/picture/kit/water';

const SLEEVE = 42;

function sleeve(pen: Pen, box: StageBox): void {
  const x = box.x + box.w - SLEEVE;
  const top = box.level - 16;
  pen.rect(x, top, 24, box.floor - top, { fill: '#fff', alpha: 0.4 });
  pen.path(`M${x} ${top}V${box.floor}M${x + 24} ${top}V${box.floor}`, { ink: INK.ink, width: 2.2 });
  for (let i = 0; i < 3; i += 1) pen.rect(x - 2, box.floor - 12 - i * 11, 5, 6, { fill: INK.white, ink: INK.ink, width: 1.2 });
  arrowHead(pen, x + 12, box.floor - 64, -Math.PI / 2, 0.72);
}

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [210, 300],
  inHand: [240, 200, 24],
  on: 'block',
  inlet: 'side',
  lives: 'fish',
  fitting: SLEEVE,
  support(pen, box) {
    block(pen, box.x - 14, box.floor + WALL, box.w + 28, -box.floor - WALL);
  },
  live(kit, box) {
    const water = new StraightWater(kit, {
      id: box.id,
      x: box.x,
      w: box.w,
      rim: box.rim,
      level: box.level,
      floor: box.floor,
      seed: 7,
      sign: box.w * 0.66,
    });
    const sludge = new Sludge(kit, flatBed(box.id, box.x, box.w - SLEEVE, box.floor, 34));
    const stones = [0.3, 0.62].map((u) => ({ x: box.x + (box.w - SLEEVE) * u, spread: 16, bottom: box.floor - 10 }));
    if (kit.aerated.has(box.id))
      kit.studio.show(
        kit.studio.bake({ x: box.x, y: box.floor - 14, w: box.w - SLEEVE, h: 14 }, (pen) => {
          for (const one of stones) stone(pen, one.x, box.floor - 6, 40);
        }),
      );
    const specks = new Specks(kit, { id: box.id, x: box.x, w: box.w - SLEEVE, floor: box.floor, drift: 5, sink: 2 }, water);
    const bubbles = new AirBubbles(kit, box.id, stones, water);
    const school = kit.school({ id: box.id, x: box.x + 2, w: box.w - SLEEVE - 4, floor: box.floor }, water);
    return [water, sludge, specks, bubbles, school];
  },
  front(pen, box) {
    sleeve(pen, box);
    tankCut(pen, box.x, box.rim, box.w, box.floor - box.rim);
  },
  hollow: (box) => hollowOf(box, SLEEVE + 4),
  waterPath: (box) => `M${box.x} ${box.level}h${box.w}V${box.floor}h${-box.w}Z`,
};
