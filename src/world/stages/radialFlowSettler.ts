// Radial-flow settler: water enters a centre well, turns and rises slowly; solids sink into the cone and leave by the valve.
import { INK } from '../draw/palette';
import { rimCaps } from '../draw/parts';
import type { Pen } from '../draw/pen';
import { SludgeGas } from '../gas';
import type { StageDrawing } from '../kit';
import { type StageBox, WALL } from '../layout';
import { Sludge, Specks, type Bed } from '../solids';
import { ShapedWater } from '../water';

const TIP = 11;
/** The cone takes this share of the depth. */
const CONE = 0.42;

const shoulder = (box: StageBox): number => box.floor - (box.floor - box.level) * CONE;
const middle = (box: StageBox): number => box.x + box.w / 2;

/** Half the inner width of the vessel at a height. */
function halfWidth(box: StageBox, y: number): number {
  const bend = shoulder(box);
  return y <= bend ? box.w / 2 : TIP + ((box.floor - y) / (box.floor - bend)) * (box.w / 2 - TIP);
}

function inside(box: StageBox, top: number): string {
  const half = halfWidth(box, top);
  const cx = middle(box);
  const bend = Math.max(top, shoulder(box));
  return `M${cx - half} ${top}H${cx + half}L${cx + halfWidth(box, bend)} ${bend}L${cx + TIP} ${box.floor}H${cx - TIP}L${cx - halfWidth(box, bend)} ${bend}Z`;
}

/** Sludge lies in the cone; its depth for a share of the cone's volume goes with the cube root, as in any cone. */
function coneBed(box: StageBox): Bed {
  const cx = middle(box);
  const height = box.floor - shoulder(box);
  return {
    id: box.id, x: box.x, w: box.w, floor: box.floor, height, variable: 'sludgeFill',
    topOf: (fill) => box.floor - height * Math.cbrt(fill),
    outline: (top) => {
      const half = halfWidth(box, top);
      return `M${cx - half} ${top}Q${cx - half * 0.4} ${top - 5} ${cx} ${top + 1}T${cx + half} ${top - 1}L${cx + TIP} ${box.floor}H${cx - TIP}Z`;
    },
  };
}

function shell(box: StageBox, side: 1 | -1): string {
  const cx = middle(box);
  const inner = cx + side * (box.w / 2);
  const bend = shoulder(box);
  const tip = cx + side * TIP;
  const out = side * WALL;
  return `M${inner + out} ${box.rim}H${inner}V${bend}L${tip} ${box.floor}V${box.floor + 10}H${tip + out}V${box.floor + 4}L${inner + out} ${bend + 4}Z`;
}

function valve(pen: Pen, box: StageBox): void {
  const y = box.floor + 20;
  pen.at(middle(box), y, () => {
    pen.rect(-14, -7, 28, 14, { fill: INK.steel, ink: INK.ink }, 3);
    pen.path('M0 -7V-12', { ink: INK.ink, width: 2.4 });
    pen.path('M-11 -13H11', { ink: INK.red, width: 5 });
  });
}

export const radialFlowSettler: StageDrawing = {
  support(pen, box) {
    const top = shoulder(box) - 26;
    for (const x of [box.x - 5, box.x + box.w - 3]) pen.rect(x, top, 8, -top, { fill: INK.steel, ink: INK.ink });
    const brace = (box.floor + 30) * 0.5;
    if (brace < -20) pen.path(`M${box.x} ${brace}H${box.x + box.w}`, { ink: INK.ink, width: 6 });
    if (brace < -20) pen.path(`M${box.x} ${brace}H${box.x + box.w}`, { ink: INK.steel, width: 2.4 });
    if (box.floor < -34) {
      pen.rect(middle(box) - 7, box.floor + 24, 14, Math.min(26, -box.floor - 24), { fill: INK.pipe, ink: INK.ink });
    }
  },
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
    for (const side of [-1, 1] as const) {
      const d = shell(box, side);
      pen.path(d, { fill: INK.wall });
      pen.hatch(d, box.x - 12, box.rim, box.w + 24, box.floor + 12 - box.rim, 7, 0.42);
      pen.path(d, { ink: INK.ink, width: 2.6 });
    }
    rimCaps(pen, box.x, box.rim, box.w, WALL, INK.wall);
    valve(pen, box);
  },
  waterPath: (box) => inside(box, box.level),
};
