// Bead filter: water rises through a layer of floating beads in a closed hull; a backwash drops what they hold to the drain.
import { INK } from '../../../page/picture/kit/palette';
import { arrowHead } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { closedOver } from '../../../page/picture/kit/shapes';
import { scatter } from '../../../page/picture/kit/curves';
import type { StageDrawing } from '../../../page/picture/kit/kit';
import type { StageBox } from '../../../page/picture/kit/boxes';
import { MatDirt, Specks } from '../../../page/picture/kit/solids';
import { ShapedWater } from '../../../page/picture/kit/water';
import { Gauge, GAUGE, handValve, hullPath, hullShell, hullSupport, SHELL } from '../../../page/picture/kit/hull';

const BEAD = 3.6;

const beadTop = (box: StageBox): number => box.rim + 18;
const beadFoot = (box: StageBox): number => box.rim + (box.floor - box.rim) * 0.55;

/** The floating bed, close packed, with a ragged lower edge. */
function beads(pen: Pen, box: StageBox): void {
  const random = scatter(33);
  pen.within(hullPath(box), () => {
    for (let row = 0; ; row += 1) {
      const y = beadTop(box) + row * BEAD * 1.72;
      if (y > beadFoot(box) + 10) break;
      const thin = Math.max(0, (y - beadFoot(box)) / 10);
      for (let x = box.x + 4 + (row % 2) * BEAD; x < box.x + box.w - 2; x += BEAD * 2) {
        if (random() < thin) continue;
        pen.circle(x + (random() - 0.5) * 0.8, y + (random() - 0.5) * 0.8, BEAD, {
          fill: random() > 0.4 ? '#FBF6E6' : '#EBDDBE',
          ink: INK.mediaDark,
          width: 1.1,
        });
      }
    }
    // the screen that keeps the beads in
    pen.path(`M${box.x} ${beadTop(box) - 5}H${box.x + box.w}`, { ink: INK.ink, width: 3.4, dash: [5, 4] });
  });
  pen.path(`M${box.x + 2} ${box.floor - 26}H${box.x + box.w * 0.36}M${box.x + 4} ${box.floor - 34}V${box.level + 22}`, {
    ink: INK.ink,
    width: 2.2,
    dash: [6, 5],
  });
  arrowHead(pen, box.x + box.w * 0.5, beadFoot(box) + 26, -Math.PI / 2, 0.62);
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
  media: beads,
  live(kit, box) {
    const water = new ShapedWater(
      kit,
      { id: box.id, x: box.x, w: box.w, level: box.rim + 6, floor: box.floor, seed: 41, full: true },
      hullPath(box),
    );
    kit.studio.show(kit.studio.bake({ x: box.x, y: box.rim, w: box.w, h: box.floor - box.rim }, (pen) => beads(pen, box)));
    const dirt = new MatDirt(kit, box.id, box.x + 6, beadTop(box) + 2, box.w - 12, beadFoot(box) - beadTop(box), true);
    const specks = new Specks(
      kit,
      { id: box.id, x: box.x + 6, w: box.w - 12, floor: box.floor - 14, drift: 0, sink: -9 },
      { level: beadFoot(box) + 4 },
    );
    return [water, dirt, specks, new Gauge(kit, box.id, box.x + box.w * 0.24, box.rim - GAUGE - 8)];
  },
  front(pen, box) {
    hullShell(pen, box);
    const cx = box.x + box.w / 2;
    pen.rect(cx - 9, box.rim - 10, 18, 12, { fill: INK.steel, ink: INK.ink }, 2);
    const seam = box.rim + (box.floor - box.rim) * 0.6;
    for (const x of [box.x - SHELL - 5, box.x + box.w - 1]) pen.rect(x, seam - 5, SHELL + 6, 10, { fill: INK.steel, ink: INK.ink }, 2);
    pen.rect(cx - 8, box.floor, 16, 14, { fill: INK.steel, ink: INK.ink });
    handValve(pen, cx, box.floor + 18);
  },
  waterPath: (box) => hullPath(box),
};
