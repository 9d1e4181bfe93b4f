// Tower: plants lean out of slots in upright columns; water drips down the matting inside them into a gutter.
import type { Place } from '../../../page/picture/kit/crops';
import { INK } from '../../../page/picture/kit/palette';
import { block, tankCut } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import type { StageDrawing } from '../../../page/picture/kit/kit';
import { BAR_UNDER_RIM, BASIN, sprayed } from '../../../page/picture/kit/shapes';
import { type StageBox, WALL } from '../../../page/picture/kit/boxes';
import type { Load } from '../../../page/picture/kit/loads';
import type { StageSpec } from '../../../page/picture/kit/terms';
import { MatDirt } from '../../../page/picture/kit/solids';
import { Trickle } from '../../../page/picture/kit/trickle';
import { StraightWater } from '../../../page/picture/kit/water';

const COLUMN = 30;
const SPACING = 92;
const SLOT = 50;
/** Leaning of the plants out of their slots, radians. */
const LEAN = 0.72;

const barY = (box: StageBox): number => box.rim + BAR_UNDER_RIM;
const columnTop = (box: StageBox): number => barY(box) + 26;
const columnFoot = (box: StageBox): number => box.floor - BASIN + 4;

function columns(box: StageBox): number[] {
  const count = Math.max(2, Math.round(box.w / SPACING));
  return Array.from({ length: count }, (_, i) => box.x + ((i + 0.5) * box.w) / count);
}

/** Slots on both sides of each column, each a little lower than the one across. */
function places(box: StageBox): Place[] {
  const rows = Math.max(2, Math.floor((columnFoot(box) - columnTop(box) - 20) / SLOT));
  const step = (columnFoot(box) - columnTop(box) - 20) / rows;
  const all: Place[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (const x of columns(box)) {
      for (const side of [-1, 1] as const) {
        const y = columnTop(box) + step * (row + 0.42) + (side > 0 ? step * 0.45 : 0);
        all.push({ x: x + side * (COLUMN / 2 - 1), y, rootX: x, rootY: y - 4, lean: side * LEAN });
      }
    }
  }
  return all;
}

/** Columns cut open: plastic walls, matting down the middle. */
function open(pen: Pen, box: StageBox): void {
  const top = columnTop(box);
  const h = columnFoot(box) - top;
  for (const x of columns(box)) {
    pen.rect(x - COLUMN / 2, top, COLUMN, h, { fill: INK.white });
    pen.rect(x - 9, top + 2, 18, h - 4, { fill: INK.mat });
    let weave = '';
    for (let y = top + 5; y < top + h - 3; y += 5) weave += `M${x - 9} ${y}q4.5 -3 9 0t9 0`;
    pen.path(weave, { ink: INK.matLight, width: 1.3 });
  }
}

/** Walls of the columns, with a lip under each slot. */
function walls(pen: Pen, box: StageBox): void {
  const top = columnTop(box);
  const foot = columnFoot(box);
  for (const x of columns(box)) {
    pen.path(`M${x - COLUMN / 2} ${top}V${foot}M${x + COLUMN / 2} ${top}V${foot}`, { ink: INK.ink, width: 4.6 });
    pen.path(`M${x - COLUMN / 2} ${top}V${foot}M${x + COLUMN / 2} ${top}V${foot}`, { ink: INK.white, width: 1.8 });
    pen.path(`M${x - COLUMN / 2 - 3} ${top}h${COLUMN + 6}`, { ink: INK.ink, width: 3 });
  }
  for (const { x, y, lean } of places(box)) {
    const out = lean < 0 ? -1 : 1;
    pen.path(`M${x} ${y + 7}l${out * 11} -9l${out * 3} 7l${-out * 10} 12Z`, { fill: INK.wall, ink: INK.ink, width: 1.7 });
  }
}

/** Bar with a dripper over each column. */
function bar(pen: Pen, box: StageBox): void {
  const y = barY(box);
  pen.rect(box.x + 2, y - 6, box.w - 4, 12, { fill: INK.pipe, ink: INK.ink, width: 2.2 }, 5);
  for (const x of columns(box)) pen.path(`M${x - 4} ${y + 6}h8v6l-4 5l-4 -5Z`, { fill: INK.steel, ink: INK.ink, width: 1.6 });
}

/**
 * Solids at which the matting looks full, g/m² of face; only the drawing depends on it. Its face where a plan leaves it out, as the
 * catalogue takes it.
 */
const FULL_g_m2 = 60;
const USUAL_m2 = 2;

/** It never blocks, so that only what it has caught tells how dirty it is. */
const dirt = (spec: StageSpec): Load => ({ variable: 'caught_g', full: FULL_g_m2 * (spec.area_m2 ?? USUAL_m2) * (spec.count ?? 1) });

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [190, 290],
  inHand: [210, 20, 290],
  on: 'block',
  inlet: 'bar',
  lives: 'leaningPlants',
  over: 22,
  raise: sprayed,
  dirt,
  support(pen, box) {
    block(pen, box.x - 10, box.floor + WALL, box.w + 20, -box.floor - WALL);
  },
  back(pen, box) {
    for (const x of [box.x - 3, box.x + box.w - 3])
      pen.rect(x, box.rim + 4, 6, box.floor - box.rim - 12, { fill: INK.steel, ink: INK.ink, width: 1.8 });
    pen.rect(box.x, box.floor - BASIN, box.w, BASIN, { fill: INK.back });
  },
  media: open,
  live(kit, box) {
    const { id, x, w, floor } = box;
    const water = new StraightWater(kit, { id, x, w, level: box.level, floor, seed: 29, still: true });
    kit.studio.show(kit.studio.bake({ x, y: box.rim, w, h: floor - box.rim }, (pen) => open(pen, box)));
    const xs = columns(box);
    const caught = xs.map(
      (at) => new MatDirt(kit, id, at - 11, columnTop(box) + 2, 22, (columnFoot(box) - columnTop(box)) * 0.9, true, dirt(box.spec)),
    );
    const drips = new Trickle(kit, {
      id,
      xs,
      spread: 1.5,
      top: barY(box) + 16,
      bottom: columnTop(box) + 4,
      speed: 70,
      drops: 2 * xs.length,
    });
    const film = new Trickle(kit, { id, xs, spread: 7, top: columnTop(box), bottom: columnFoot(box), speed: 40, drops: 12 * xs.length });
    const rain = new Trickle(kit, { id, xs, spread: 8, top: columnFoot(box), bottom: box.level, speed: 80, drops: 2 * xs.length });
    const crop = kit.crop(id, places(box), { scale: 0.42, depth: 40, wide: 0.5 }, () => {
      kit.studio.show(kit.studio.bake({ x: x - 16, y: box.rim, w: w + 32, h: floor - box.rim }, (pen) => walls(pen, box)));
    });
    return [water, ...caught, film, drips, rain, crop];
  },
  front(pen, box) {
    bar(pen, box);
    tankCut(pen, box.x, box.floor - BASIN, box.w, BASIN);
  },
  waterPath: (box) => `M${box.x} ${box.level}h${box.w}V${box.floor}h${-box.w}Z`,
};
