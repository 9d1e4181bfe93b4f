// Swirl separator: water enters along the round wall and turns; solids gather in the middle and sink, clear water leaves by a standpipe.
import { INK } from '../../../page/picture/kit/palette';
import { arrowHead } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { SludgeGas } from '../../../page/picture/kit/gas';
import type { StageDrawing } from '../../../page/picture/kit/kit';
import type { StageBox } from '../../../page/picture/kit/boxes';
import { Sludge, Specks } from '../../../page/picture/kit/solids';
import { ShapedWater } from '../../../page/picture/kit/water';
import { coneBed, coneFront, coneSupport, inside, middle, shoulder } from '../../../page/picture/kit/coneVessel';

const STANDPIPE = 11;

/** The mouth that blows along the wall, seen end on, and the turns the water makes. */
function swirl(pen: Pen, box: StageBox): void {
  const cx = middle(box);
  const depth = shoulder(box) - box.level;
  const y = box.level + Math.min(26, depth * 0.3);
  [0.82, 0.6, 0.36].forEach((share, i) => {
    const half = (box.w / 2 - 4) * share;
    const at = y + 8 + i * depth * 0.27;
    pen.path(`M${cx - half} ${at}A${half} ${half * 0.26} 0 0 0 ${cx + half} ${at}`, { ink: INK.white, width: 4.6, alpha: 0.8 });
    pen.path(`M${cx - half} ${at}A${half} ${half * 0.26} 0 0 0 ${cx + half} ${at}`, { ink: INK.ink, width: 1.7, dash: [7, 6] });
    arrowHead(pen, cx + half * 0.72, at + half * 0.19, -0.42, 0.5);
    pen.path(`M${cx + half} ${at}A${half} ${half * 0.26} 0 0 0 ${cx - half} ${at}`, {
      ink: INK.ink,
      width: 1.1,
      dash: [3, 6],
      alpha: 0.45,
    });
  });
  // the inlet lies along the back wall: its mouth is an oval, cut slanting
  const x = box.x + 15;
  pen.rect(box.x - 2, y - 8, 22, 16, { fill: INK.pipe, ink: INK.ink });
  pen.oval(x + 6, y, 6, 8.5, 0, { fill: INK.pump, ink: INK.ink });
  pen.path(`M${x + 9} ${y}h10`, { ink: '#fff', width: 3.4 });
}

/** Standpipe in the middle that clear water leaves by. */
function standpipe(pen: Pen, box: StageBox): void {
  const cx = middle(box);
  const foot = box.level + (shoulder(box) - box.level) * 0.46;
  const d = `M${cx - STANDPIPE} ${box.level - 1}V${foot}M${cx + STANDPIPE} ${box.level - 1}V${foot}`;
  pen.rect(cx - STANDPIPE, box.level - 1, 2 * STANDPIPE, foot - box.level, { fill: '#fff', alpha: 0.45 });
  pen.path(d, { ink: INK.ink, width: 2.2 });
  const out = `M${cx} ${box.level + 9}H${box.x + box.w}`;
  pen.path(out, { ink: INK.ink, width: 15, cap: 'butt' });
  pen.path(out, { ink: INK.pipe, width: 11, cap: 'butt' });
  pen.path(`M${cx - 16} ${box.level - 3}h32`, { ink: INK.ink, width: 2.4 });
}

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [96, 118],
  inHand: [104, 176, 20],
  on: 'legs',
  inlet: 'side',
  support: coneSupport,
  back(pen, box) {
    pen.path(inside(box, box.rim), { fill: INK.back });
  },
  live(kit, box) {
    const water = new ShapedWater(
      kit,
      { id: box.id, x: box.x, w: box.w, level: box.level, floor: box.floor, seed: 6, sign: box.w * 0.8 },
      inside(box, box.level),
    );
    const specks = new Specks(
      kit,
      { id: box.id, x: box.x + 4, w: box.w - 8, floor: shoulder(box) + 10, drift: 0, sink: 8, turns: true },
      water,
    );
    const sludge = new Sludge(kit, coneBed(box));
    return [water, specks, sludge, new SludgeGas(kit, box.id, middle(box), box.w * 0.26, sludge, water)];
  },
  front(pen, box) {
    swirl(pen, box);
    standpipe(pen, box);
    coneFront(pen, box);
  },
  waterPath: (box) => inside(box, box.level),
};
