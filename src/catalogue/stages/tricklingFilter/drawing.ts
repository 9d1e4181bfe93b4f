// Trickling filter: a bar sprays water over tall open packing; films work on it, air draws through it, drops fall to a basin.
import { INK } from '../../../page/picture/kit/palette';
import { block, tankCut } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import type { StageDrawing } from '../../../page/picture/kit/kit';
import { BAR_UNDER_RIM, BASIN, sprayed } from '../../../page/picture/kit/shapes';
import { type StageBox, WALL } from '../../../page/picture/kit/boxes';
import { Draught } from '../../../page/picture/kit/gas';
import type { Load } from '../../../page/picture/kit/loads';
import type { StageSpec } from '../../../page/picture/kit/terms';
import { MatDirt } from '../../../page/picture/kit/solids';
import { Trickle } from '../../../page/picture/kit/trickle';
import { StraightWater } from '../../../page/picture/kit/water';

const barY = (box: StageBox): number => box.rim + BAR_UNDER_RIM;
const packTop = (box: StageBox): number => barY(box) + 26;
const packFoot = (box: StageBox): number => box.floor - BASIN - 20;

/** Open packing as it is stacked: blocks of folded sheets, crossed from block to block, with a film on their edges. */
function packing(pen: Pen, box: StageBox): void {
  const top = packTop(box);
  const foot = packFoot(box);
  const rows = Math.max(2, Math.round((foot - top) / 46));
  const h = (foot - top) / rows;
  for (let row = 0; row < rows; row += 1) {
    const y = top + row * h;
    const d = `M${box.x + 2} ${y}h${box.w - 4}v${h}h${-(box.w - 4)}Z`;
    pen.path(d, { fill: row % 2 ? '#EFE3BE' : '#F6EDD0', alpha: 0.9 });
    let folds = '';
    let film = '';
    for (let s = -h; s < box.w + h; s += 13) {
      const [a, b] = row % 2 ? [s, s + h] : [s + h, s];
      folds += `M${box.x + a} ${y}L${box.x + b} ${y + h}`;
      film += `M${box.x + a + 3} ${y}L${box.x + b + 3} ${y + h}`;
    }
    pen.within(d, () => {
      pen.path(film, { ink: INK.biofilm, width: 3, alpha: 0.5 });
      pen.path(folds, { ink: INK.mediaDark, width: 1.8 });
    });
    pen.path(d, { ink: INK.ink, width: 1.6 });
  }
  pen.path(`M${box.x} ${foot + 4}H${box.x + box.w}`, { ink: INK.ink, width: 5, dash: [7, 6], cap: 'butt' });
}

/** Spray bar with its nozzles; the pipe joins it from the left or from above. */
function sprayBar(pen: Pen, x: number, y: number, w: number, nozzles: number): void {
  pen.rect(x, y - 6, w, 12, { fill: INK.pipe, ink: INK.ink, width: 2.2 }, 5);
  for (let i = 0; i < nozzles; i += 1) {
    const at = x + ((i + 0.5) * w) / nozzles;
    pen.path(`M${at - 4} ${y + 6}h8l3 6h-14Z`, { fill: INK.steel, ink: INK.ink, width: 1.6 });
  }
}

/** Openings between basin and packing that air is drawn in by. */
function shell(pen: Pen, box: StageBox): void {
  const foot = packFoot(box) + 6;
  for (const [x, side] of [
    [box.x - WALL, 1],
    [box.x + box.w, -1],
  ] as const) {
    const d = `M${x} ${box.rim + 6}h${WALL}V${foot}h${-WALL}Z`;
    pen.path(d, { fill: INK.wall });
    pen.hatch(d, x, box.rim, WALL, foot - box.rim, 7, 0.42);
    pen.path(d, { ink: INK.ink, width: 2.6 });
    pen.rect(x - 3, box.rim + 1, WALL + 6, 7, { fill: INK.wall, ink: INK.ink }, 2);
    pen.path(`M${x + (side > 0 ? -12 : WALL + 12)} ${foot + 10}h${side * 22}m${side * -6} -4l${side * 6} 4l${side * -6} 4`, {
      ink: INK.ink,
      width: 1.6,
    });
  }
}

/**
 * Solids at which packing looks full, g/m³; only the drawing depends on it. Its volume where a plan leaves it out, as the catalogue takes
 * it.
 */
const FULL_g_m3 = 120;
const USUAL_m3 = 0.2;

/** It never blocks, so that only what it has caught tells how dirty it is. */
const dirt = (spec: StageSpec): Load => ({ variable: 'caught_g', full: FULL_g_m3 * (spec.media_m3 ?? USUAL_m3) * (spec.count ?? 1) });

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [104, 134],
  inHand: [116, 20, 250],
  on: 'block',
  inlet: 'bar',
  over: 62,
  raise: sprayed,
  dirt,
  support(pen, box) {
    block(pen, box.x - 14, box.floor + WALL, box.w + 28, -box.floor - WALL);
  },
  back(pen, box) {
    pen.rect(box.x, box.rim + 6, box.w, box.floor - box.rim - 6, { fill: INK.back });
  },
  media: packing,
  live(kit, box) {
    const { id, x, w, floor } = box;
    const water = new StraightWater(kit, { id, x, w, level: box.level, floor, seed: 23, still: true, sign: w * 0.84 });
    kit.studio.show(kit.studio.bake({ x, y: box.rim, w, h: floor - box.rim }, (pen) => packing(pen, box)));
    const caught = new MatDirt(kit, id, x + 4, packTop(box), w - 8, (packFoot(box) - packTop(box)) * 0.8, true, dirt(box.spec));
    const xs = Array.from({ length: 5 }, (_, i) => x + ((i + 0.5) * w) / 5);
    const spray = new Trickle(kit, { id, xs, spread: 9, top: barY(box) + 12, bottom: packTop(box) + 6, speed: 90, drops: 20 });
    const seep = new Trickle(kit, { id, xs, spread: 11, top: packTop(box), bottom: packFoot(box), speed: 46, drops: 34 });
    const rain = new Trickle(kit, { id, xs, spread: 9, top: packFoot(box) + 6, bottom: box.level - 2, speed: 110, drops: 12 });
    return [water, caught, seep, spray, rain, new Draught(kit, id, x + w / 2, box.rim)];
  },
  front(pen, box) {
    sprayBar(pen, box.x + 6, barY(box), box.w - 12, 5);
    shell(pen, box);
    tankCut(pen, box.x, box.floor - BASIN, box.w, BASIN);
  },
  waterPath: (box) => `M${box.x} ${box.level}h${box.w}V${box.floor}h${-box.w}Z`,
};
