// Media bed: plants in gravel that floods up to a bell siphon's standpipe and drains again; the water drawn is the mean over a cycle.
import type { Place } from '../../../page/picture/kit/crops';
import { INK } from '../../../page/picture/kit/palette';
import { arrowHead, pebbles, table, tankCut } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { hollowOf, type StageDrawing } from '../../../page/picture/kit/kit';
import { type StageBox, WALL } from '../../../page/picture/kit/boxes';
import { MatDirt, Specks } from '../../../page/picture/kit/solids';
import { StraightWater } from '../../../page/picture/kit/water';

const PLACE = 66;
/** Room of the siphon at the right end, kept free of gravel by a slotted guard. */
const SIPHON = 48;
/** The gravel stands this much over the highest water and stays dry there. */
const DRY = 7;

const gravelTop = (box: StageBox): number => box.level - DRY;
const gravelWidth = (box: StageBox): number => box.w - SIPHON;

function plantsAlong(box: StageBox): Place[] {
  const w = gravelWidth(box);
  const count = Math.max(3, Math.min(6, Math.round(w / PLACE)));
  return Array.from({ length: count }, (_, i) => {
    const x = box.x + ((i + 0.5) * w) / count;
    return { x, y: gravelTop(box) + 3, rootX: x, rootY: gravelTop(box) + 2, lean: 0 };
  });
}

function gravel(pen: Pen, box: StageBox): void {
  const w = gravelWidth(box);
  pebbles(pen, box.x + 1, gravelTop(box), w - 3, box.floor - gravelTop(box), 14, 10.5);
  pen.path(`M${box.x} ${box.floor - 14}H${box.x + box.w}`, { ink: INK.blue, width: 1.6, dash: [3, 6], alpha: 0.9 });
}

/** Bell over a standpipe, in its guard; the drain goes through the floor. */
function siphon(pen: Pen, box: StageBox): void {
  const x = box.x + box.w - SIPHON;
  const cx = x + SIPHON / 2 + 2;
  pen.path(`M${x} ${box.rim + 4}V${box.floor - 2}`, { ink: INK.ink, width: 4.4, dash: [7, 5], cap: 'butt' });
  pen.rect(cx - 5, box.level - 1, 10, box.floor - box.level + WALL + 14, { fill: INK.pipe, ink: INK.ink, width: 1.8 });
  pen.path(`M${cx - 9} ${box.level - 2}h18`, { ink: INK.ink, width: 2.4 });
  const bell = `M${cx - 15} ${box.floor - 3}V${box.level}a15 13 0 0 1 30 0V${box.floor - 3}`;
  pen.path(bell, { fill: '#fff', alpha: 0.3 });
  pen.path(bell, { ink: INK.ink, width: 2.2 });
  pen.path(`M${cx - 15} ${box.floor - 12}v7M${cx + 15} ${box.floor - 12}v7`, { ink: INK.white, width: 3.4, dash: [2.5, 3.5], cap: 'butt' });
  arrowHead(pen, cx - 10, (box.level + box.floor) / 2, -Math.PI / 2, 0.42);
  arrowHead(pen, cx, box.floor - 8, Math.PI / 2, 0.42);
}

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [230, 380],
  inHand: [280, 62, 18],
  on: 'table',
  inlet: 'side',
  lives: 'plants',
  fitting: SIPHON,
  over: 10,
  support(pen, box) {
    const y = box.floor + WALL;
    if (-y > 24) table(pen, box.x - 10, y, box.w + 20, box.w > 320 ? 4 : 3);
  },
  media: gravel,
  live(kit, box) {
    const { id, x, w, rim, level, floor } = box;
    const water = new StraightWater(kit, { id, x, w, rim, level, floor, seed: 22 });
    kit.studio.show(kit.studio.bake({ x, y: gravelTop(box) - 8, w, h: floor - gravelTop(box) + 8 }, (pen) => gravel(pen, box)));
    const dirt = new MatDirt(kit, id, x + 2, gravelTop(box) + 4, gravelWidth(box) - 6, floor - gravelTop(box) - 8, true);
    const specks = new Specks(kit, { id, x: x + gravelWidth(box), w: SIPHON, floor, drift: 0, sink: 3 }, water);
    const places = plantsAlong(box);
    const crop = kit.crop(
      id,
      places,
      { scale: Math.min(0.92, gravelWidth(box) / places.length / 68), depth: floor - gravelTop(box), wide: 1 },
      () => undefined,
    );
    return [water, dirt, specks, crop];
  },
  front(pen, box) {
    siphon(pen, box);
    tankCut(pen, box.x, box.rim, box.w, box.floor - box.rim);
  },
  hollow: (box) => hollowOf(box, SIPHON + 4),
  waterPath: (box) => `M${box.x} ${box.level}h${box.w}V${box.floor}h${-box.w}Z`,
};
