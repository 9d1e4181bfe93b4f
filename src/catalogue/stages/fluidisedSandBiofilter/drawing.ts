// Fluidised-sand biofilter: a tall housing, arms at its foot that press water in, a cloud of sand above them with a sharp upper edge.
import { INK } from '../../../page/picture/kit/palette';
import { arrowHead } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { closedOver } from '../../../page/picture/kit/shapes';
import { scatter } from '../../../page/picture/kit/curves';
import type { StageDrawing } from '../../../page/picture/kit/kit';
import type { StageBox } from '../../../page/picture/kit/boxes';
import { Specks } from '../../../page/picture/kit/solids';
import { ShapedWater } from '../../../page/picture/kit/water';
import { hullPath, hullShell, hullSupport } from '../../../page/picture/kit/hull';

/** The expanded bed fills most of the housing; clear water stands over it. */
const bedTop = (box: StageBox): number => box.rim + (box.floor - box.rim) * 0.3;
const armsY = (box: StageBox): number => box.floor - 14;

function bed(pen: Pen, box: StageBox): void {
  const random = scatter(61);
  const top = bedTop(box);
  const foot = box.floor;
  pen.within(hullPath(box), () => {
    pen.rect(box.x, top, box.w, foot - top, { fill: '#E6D3A0', alpha: 0.55 });
    const count = (box.w * (foot - top)) / 34;
    for (let i = 0; i < count; i += 1) {
      // denser towards the foot, as it is in a lifted bed
      const down = Math.sqrt(random());
      pen.circle(box.x + random() * box.w, top + 3 + down * (foot - top - 4), 1 + random() * 0.7, { fill: random() > 0.4 ? '#A98845' : '#F7E9BF' });
    }
    pen.path(`M${box.x} ${top}q${box.w * 0.25} 4 ${box.w * 0.5} 0t${box.w * 0.5} 0`, { ink: '#8A6A3A', width: 1.6 });
    // the pipe that comes down through the water, and the arms it feeds
    const y = armsY(box);
    const cx = box.x + box.w / 2;
    pen.rect(cx - 5, box.rim + 4, 10, y - box.rim - 2, { fill: INK.pipe, ink: INK.ink, width: 1.8 });
    pen.rect(box.x + 10, y - 4, box.w - 20, 8, { fill: INK.pipe, ink: INK.ink, width: 1.8 }, 4);
    for (let x = box.x + 18; x < box.x + box.w - 14; x += 12) pen.circle(x, y + 1, 1.5, { fill: INK.ink });
  });
  for (const share of [0.22, 0.78]) arrowHead(pen, box.x + box.w * share, top + (foot - top) * 0.45, -Math.PI / 2, 0.6);
}

/** Collar through which water leaves at the top. */
function collar(pen: Pen, box: StageBox): void {
  const cx = box.x + box.w / 2;
  pen.rect(cx - 15, box.rim - 14, 30, 16, { fill: INK.steel, ink: INK.ink, width: 2.2 }, 3);
  pen.path(`M${cx - 11} ${box.rim - 6}h22`, { ink: INK.ink, width: 1.4 });
}

export const drawing: StageDrawing = {
  place: 'loop', widths: [78, 96], inHand: [86, 200, 30], on: 'block', inlet: 'fitting', raise: closedOver,
  support: hullSupport,
  back: (pen, box) => { pen.path(hullPath(box), { fill: INK.back }); },
  media: bed,
  live(kit, box) {
    const water = new ShapedWater(kit, { id: box.id, x: box.x, w: box.w, level: box.rim + 6, floor: box.floor, seed: 67, full: true }, hullPath(box));
    kit.studio.show(kit.studio.bake({ x: box.x, y: box.rim, w: box.w, h: box.floor - box.rim }, (pen) => bed(pen, box)));
    return [water, new Specks(kit, { id: box.id, x: box.x + 6, w: box.w - 12, floor: bedTop(box), drift: 2, sink: -6 }, { level: box.rim + 14 })];
  },
  front(pen, box) {
    hullShell(pen, box, '#CFE0E2');
    collar(pen, box);
  },
  waterPath: (box) => hullPath(box),
};
