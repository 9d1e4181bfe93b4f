// Sand filter: water is pressed down through sand on gravel in a closed hull and gathered by slotted arms; a valve head turns it round to
// wash.
import { INK } from '../../../page/picture/kit/palette';
import { arrowHead, pebbles } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { closedOver } from '../../../page/picture/kit/shapes';
import { scatter } from '../../../page/picture/kit/curves';
import type { StageDrawing } from '../../../page/picture/kit/kit';
import type { StageBox } from '../../../page/picture/kit/boxes';
import { MatDirt, Specks } from '../../../page/picture/kit/solids';
import { ShapedWater } from '../../../page/picture/kit/water';
import { Gauge, GAUGE, hullPath, hullShell, hullSupport } from '../../../page/picture/kit/hull';

const sandTop = (box: StageBox): number => box.rim + (box.floor - box.rim) * 0.4;
const gravelTop = (box: StageBox): number => box.floor - (box.floor - box.rim) * 0.24;

function bed(pen: Pen, box: StageBox): void {
  const random = scatter(27);
  const top = sandTop(box);
  const foot = gravelTop(box);
  pen.within(hullPath(box), () => {
    pen.rect(box.x, top, box.w, foot - top + 4, { fill: '#EBD9A4' });
    const grains = (box.w * (foot - top)) / 16;
    for (let i = 0; i < grains; i += 1)
      pen.circle(box.x + random() * box.w, top + random() * (foot - top), 0.7 + random() * 0.7, {
        fill: random() > 0.5 ? '#B99A4B' : '#FFF6D8',
      });
    pen.path(`M${box.x} ${top}q${box.w * 0.25} 5 ${box.w * 0.5} 1t${box.w * 0.5} -1`, { ink: INK.ink, width: 1.8 });
    pebbles(pen, box.x + 1, foot, box.w - 2, box.floor - foot + 6, 5, 8.4);
    pen.path(`M${box.x} ${foot}H${box.x + box.w}`, { ink: INK.ink, width: 1.4 });
    // slotted arms and the pipe that rises from them
    const y = box.floor - 13;
    pen.rect(box.x + 12, y - 5, box.w - 24, 10, { fill: INK.white, ink: INK.ink, width: 1.8 }, 4);
    for (let x = box.x + 18; x < box.x + box.w - 16; x += 7) pen.path(`M${x} ${y - 3}v6`, { ink: INK.ink, width: 1.4 });
    const cx = box.x + box.w / 2;
    pen.rect(cx - 5, box.rim + 6, 10, y - box.rim - 10, { fill: INK.white, ink: INK.ink, width: 1.8 });
    pen.path(`M${cx - 24} ${box.rim + 22}h48`, { ink: INK.ink, width: 5 });
    pen.path(`M${cx - 24} ${box.rim + 22}h48`, { ink: INK.steel, width: 2.2 });
  });
  arrowHead(pen, box.x + box.w * 0.24, top - 14, Math.PI / 2, 0.6);
  arrowHead(pen, box.x + box.w * 0.76, top - 14, Math.PI / 2, 0.6);
}

/** Valve head with its lever. */
function head(pen: Pen, box: StageBox): void {
  const cx = box.x + box.w / 2;
  pen.rect(cx - 17, box.rim - 17, 34, 21, { fill: INK.pump, ink: INK.ink, width: 2.2 }, 4);
  pen.rect(cx - 9, box.rim - 23, 18, 7, { fill: INK.steel, ink: INK.ink, width: 1.8 }, 2);
  pen.path(`M${cx} ${box.rim - 25}l26 -6`, { ink: INK.ink, width: 7 });
  pen.path(`M${cx} ${box.rim - 25}l26 -6`, { ink: INK.red, width: 3.6 });
}

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [86, 104],
  inHand: [94, 160, 30],
  on: 'block',
  inlet: 'fitting',
  raise: closedOver,
  support: hullSupport,
  back: (pen, box) => {
    pen.path(hullPath(box), { fill: INK.back });
  },
  media: bed,
  live(kit, box) {
    const water = new ShapedWater(
      kit,
      { id: box.id, x: box.x, w: box.w, level: box.rim + 6, floor: box.floor, seed: 43, full: true },
      hullPath(box),
    );
    kit.studio.show(kit.studio.bake({ x: box.x, y: box.rim, w: box.w, h: box.floor - box.rim }, (pen) => bed(pen, box)));
    const specks = new Specks(
      kit,
      { id: box.id, x: box.x + 6, w: box.w - 12, floor: sandTop(box), drift: 2, sink: 8 },
      { level: box.rim + 26 },
    );
    const dirt = new MatDirt(kit, box.id, box.x + 3, sandTop(box), box.w - 6, (gravelTop(box) - sandTop(box)) * 0.62);
    return [water, specks, dirt, new Gauge(kit, box.id, box.x + 12, box.rim - GAUGE - 4)];
  },
  front(pen, box) {
    hullShell(pen, box, '#C9BFA6');
    head(pen, box);
  },
  waterPath: (box) => hullPath(box),
};
