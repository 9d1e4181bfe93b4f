// Radial-flow settler: water enters a centre well, turns and rises slowly; solids sink into the cone and leave by the valve.
import { INK } from '../../../page/picture/kit/palette';
import { SludgeGas } from '../../../page/picture/kit/gas';
import type { StageDrawing } from '../../../page/picture/kit/kit';
import { Sludge, Specks } from '../../../page/picture/kit/solids';
import { ShapedWater } from '../../../page/picture/kit/water';
import { coneBed, coneFront, coneSupport, inside, middle, shoulder } from '../../../page/picture/kit/coneVessel';

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [100, 122],
  inHand: [112, 190, 20],
  on: 'legs',
  inlet: 'well',
  tagY: (box) => box.level + (box.floor - box.level) * 0.4,
  support: coneSupport,
  back(pen, box) {
    pen.path(inside(box, box.rim), { fill: INK.back });
  },
  live(kit, box) {
    const pool = { id: box.id, x: box.x, w: box.w, level: box.level, floor: box.floor, seed: 9, sign: box.w - 16 };
    const water = new ShapedWater(kit, pool, inside(box, box.level));
    const bed = coneBed(box);
    const specks = new Specks(kit, { id: box.id, x: box.x + 10, w: box.w - 20, floor: shoulder(box) + 10, drift: 0, sink: 13 }, water);
    const sludge = new Sludge(kit, bed);
    return [water, specks, sludge, new SludgeGas(kit, box.id, middle(box), box.w * 0.26, sludge, water)];
  },
  front(pen, box) {
    const cx = middle(box);
    const well = box.level + (shoulder(box) - box.level) * 0.62;
    if (box.entry === 'wall') {
      const feed = `M${box.x} ${box.level + 1}H${cx - 14}`;
      pen.path(feed, { ink: INK.ink, width: 12, cap: 'butt' });
      pen.path(feed, { ink: INK.pipe, width: 8, cap: 'butt' });
    }
    pen.rect(cx - 20, box.level - 12, 40, well - box.level + 12, { fill: '#fff', alpha: 0.35 });
    pen.path(`M${cx - 20} ${box.level - 12}V${well}M${cx + 20} ${box.level - 12}V${well}`, { ink: INK.ink, width: 2.4 });
    pen.path(`M${cx - 9} ${well - 4}q-22 10 -30 32M${cx + 9} ${well - 4}q22 10 30 32`, { ink: INK.ink, width: 1.6, dash: [4, 5] });
    coneFront(pen, box);
  },
  waterPath: (box) => inside(box, box.level),
};
