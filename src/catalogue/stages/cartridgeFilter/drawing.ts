// Cartridge filter: water is pressed from outside through fine pleats into a slotted core, in a slim housing with a screw-on bowl.
import { INK } from '../../../page/picture/kit/palette';
import { arrowHead } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { closedOver } from '../../../page/picture/kit/shapes';
import type { StageDrawing } from '../../../page/picture/kit/kit';
import type { StageBox } from '../../../page/picture/kit/boxes';
import { MatDirt, Specks } from '../../../page/picture/kit/solids';
import { ShapedWater } from '../../../page/picture/kit/water';
import { Gauge, GAUGE, hullPath, hullShell, hullSupport } from '../../../page/picture/kit/hull';

const DOME = 14;
const HEAD = 30;

const core = (box: StageBox): { x: number; y: number; w: number; h: number } => {
  const y = box.rim + HEAD + 6;
  return { x: box.x + box.w * 0.2, y, w: box.w * 0.6, h: box.floor - y - 16 };
};

function pleats(pen: Pen, box: StageBox): void {
  const { x, y, w, h } = core(box);
  const cx = x + w / 2;
  pen.rect(x, y, w, h, { fill: '#F2F4EF' });
  let folds = '';
  let shade = '';
  for (let at = x + 4; at < x + w - 1; at += 5) {
    folds += `M${at} ${y + 5}V${y + h - 5}`;
    shade += `M${at + 1.8} ${y + 5}V${y + h - 5}`;
  }
  pen.path(shade, { ink: INK.matLight, width: 1.6, alpha: 0.7 });
  pen.path(folds, { ink: INK.ink2, width: 1 });
  // the slotted core shows where the pleats are cut
  pen.rect(cx - 6, y, 12, h, { fill: INK.white, ink: INK.ink, width: 1.6 });
  for (let at = y + 9; at < y + h - 6; at += 9) pen.path(`M${cx - 2.5} ${at}h5`, { ink: INK.ink, width: 2 });
  for (const cap of [y - 2, y + h - 5]) pen.rect(x - 3, cap, w + 6, 7, { fill: INK.mat, ink: INK.ink, width: 1.8 }, 2);
  pen.rect(x, y, w, h, { ink: INK.ink, width: 1.8 });
  arrowHead(pen, box.x + box.w * 0.11, y + h * 0.5, 0, 0.5);
  arrowHead(pen, box.x + box.w * 0.89, y + h * 0.5, Math.PI, 0.5);
}

/** Screwed head over the bowl, with its ring. */
function head(pen: Pen, box: StageBox): void {
  const cx = box.x + box.w / 2;
  pen.rect(box.x - 9, box.rim + 2, box.w + 18, 12, { fill: INK.pump, ink: INK.ink, width: 2.2 }, 4);
  let ribs = '';
  for (let x = box.x - 3; x < box.x + box.w + 6; x += 8) ribs += `M${x} ${box.rim + 5}v6`;
  pen.path(ribs, { ink: INK.steel, width: 1.6 });
  pen.rect(cx - 9, box.rim - 8, 18, 11, { fill: INK.pump, ink: INK.ink }, 3);
}

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [66, 82],
  inHand: [74, 130, 30],
  on: 'block',
  inlet: 'fitting',
  raise: closedOver,
  support: hullSupport,
  back: (pen, box) => {
    pen.path(hullPath(box, 0, DOME), { fill: INK.back });
  },
  media: pleats,
  live(kit, box) {
    const water = new ShapedWater(
      kit,
      { id: box.id, x: box.x, w: box.w, level: box.rim + 6, floor: box.floor, seed: 45, full: true },
      hullPath(box, 0, DOME),
    );
    const specks = new Specks(
      kit,
      { id: box.id, x: box.x + 2, w: box.w - 4, floor: box.floor - 12, drift: 0, sink: 5 },
      { level: box.rim + HEAD },
    );
    const { x, y, w, h } = core(box);
    kit.studio.show(kit.studio.bake({ x: box.x, y: box.rim, w: box.w, h: box.floor - box.rim }, (pen) => pleats(pen, box)));
    const sides = [x, x + w - w * 0.36].map((at) => new MatDirt(kit, box.id, at, y + 7, w * 0.36, h - 14, true));
    return [water, specks, ...sides, new Gauge(kit, box.id, box.x + 4, box.rim - GAUGE - 10)];
  },
  front(pen, box) {
    hullShell(pen, box, '#DCE7EA', DOME);
    head(pen, box);
  },
  waterPath: (box) => hullPath(box, 0, DOME),
};
