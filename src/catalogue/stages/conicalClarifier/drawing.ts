// Conical clarifier: water dives under a baffle, crosses the quiet tank and leaves over a lip; solids sink into a steep cone.
import { INK } from '../../../page/picture/kit/palette';
import { arrowHead } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { SludgeGas } from '../../../page/picture/kit/gas';
import type { StageDrawing } from '../../../page/picture/kit/kit';
import type { StageBox } from '../../../page/picture/kit/boxes';
import { Sludge, Specks } from '../../../page/picture/kit/solids';
import { ShapedWater } from '../../../page/picture/kit/water';
import { coneBed, coneFront, coneSupport, inside, middle, shoulder } from '../../../page/picture/kit/coneVessel';

const BAFFLE = 30;
const LIP = 24;

/** Baffle at the inlet, notched lip and trough at the outlet. */
function fittings(pen: Pen, box: StageBox): void {
  const dive = box.level + (shoulder(box) - box.level) * 0.5;
  const x = box.x + BAFFLE;
  pen.rect(x - 3, box.level - 14, 6, dive - box.level + 14, { fill: INK.white, ink: INK.ink });
  pen.path(`M${x - 14} ${dive - 18}Q${x - 12} ${dive + 14} ${x + 18} ${dive + 12}`, { ink: INK.ink, width: 1.6, dash: [4, 5] });
  arrowHead(pen, x + 22, dive + 10, -0.15, 0.5);
  const lip = box.x + box.w - LIP;
  pen.rect(lip, box.level - 2, LIP, 26, { fill: INK.pipe, alpha: 0.85 });
  pen.path(`M${lip} ${box.level - 3}V${box.level + 24}H${box.x + box.w}`, { ink: INK.ink, width: 2.4 });
  let notches = '';
  for (let i = 0; i < 4; i += 1) notches += `M${lip - 3} ${box.level + i * 5 + 2}l3 2l-3 2`;
  pen.path(notches, { ink: INK.ink, width: 1.2 });
}

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [104, 130],
  inHand: [112, 200, 20],
  on: 'legs',
  inlet: 'side',
  support: coneSupport,
  back(pen, box) {
    pen.path(inside(box, box.rim), { fill: INK.back });
  },
  live(kit, box) {
    const water = new ShapedWater(
      kit,
      { id: box.id, x: box.x, w: box.w, level: box.level, floor: box.floor, seed: 10, sign: box.w * 0.56 },
      inside(box, box.level),
    );
    const specks = new Specks(
      kit,
      { id: box.id, x: box.x + BAFFLE + 6, w: box.w - BAFFLE - LIP - 8, floor: shoulder(box) + 12, drift: 8, sink: 10 },
      water,
    );
    const sludge = new Sludge(kit, coneBed(box));
    return [water, specks, sludge, new SludgeGas(kit, box.id, middle(box), box.w * 0.26, sludge, water)];
  },
  front(pen, box) {
    fittings(pen, box);
    coneFront(pen, box);
  },
  waterPath: (box) => inside(box, box.level),
};
