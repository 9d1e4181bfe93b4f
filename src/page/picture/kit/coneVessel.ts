// Vessels with a cone for sludge: their outline, the bed of sludge in the cone, cut shell, legs and valve.
import { INK } from './palette';
import { rimCaps } from './parts';
import type { Pen } from './pen';
import { type StageBox, WALL } from './boxes';
import type { Bed } from './solids';

const TIP = 11;
/** The cone takes this share of the depth. */
const CONE = 0.42;

/** y at which the wall bends into the cone. */
export const shoulder = (box: StageBox): number => box.floor - (box.floor - box.level) * CONE;
export const middle = (box: StageBox): number => box.x + box.w / 2;

/** Half the inner width of the vessel at a height. */
function halfWidth(box: StageBox, y: number): number {
  const bend = shoulder(box);
  return y <= bend ? box.w / 2 : TIP + ((box.floor - y) / (box.floor - bend)) * (box.w / 2 - TIP);
}

/** Inner outline below a height. */
export function inside(box: StageBox, top: number): string {
  const half = halfWidth(box, top);
  const cx = middle(box);
  const bend = Math.max(top, shoulder(box));
  return `M${cx - half} ${top}H${cx + half}L${cx + halfWidth(box, bend)} ${bend}L${cx + TIP} ${box.floor}H${cx - TIP}L${cx - halfWidth(box, bend)} ${bend}Z`;
}

/** Sludge lies in the cone; its depth for a share of the cone's volume goes with the cube root, as in any cone. */
export function coneBed(box: StageBox): Bed {
  const cx = middle(box);
  const height = box.floor - shoulder(box);
  return {
    id: box.id,
    x: box.x,
    w: box.w,
    floor: box.floor,
    height,
    variable: 'sludgeFill',
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

/** Cut walls and valve, laid over the water. */
export function coneFront(pen: Pen, box: StageBox): void {
  for (const side of [-1, 1] as const) {
    const d = shell(box, side);
    pen.path(d, { fill: INK.wall });
    pen.hatch(d, box.x - 12, box.rim, box.w + 24, box.floor + 12 - box.rim, 7, 0.42);
    pen.path(d, { ink: INK.ink, width: 2.6 });
  }
  rimCaps(pen, box.x, box.rim, box.w, WALL, INK.wall);
  valve(pen, box);
}

/** Legs, brace and the drain under the valve. */
export function coneSupport(pen: Pen, box: StageBox): void {
  const top = shoulder(box) - 26;
  for (const x of [box.x - 5, box.x + box.w - 3]) pen.rect(x, top, 8, -top, { fill: INK.steel, ink: INK.ink });
  const brace = (box.floor + 30) * 0.5;
  if (brace < -20) pen.path(`M${box.x} ${brace}H${box.x + box.w}`, { ink: INK.ink, width: 6 });
  if (brace < -20) pen.path(`M${box.x} ${brace}H${box.x + box.w}`, { ink: INK.steel, width: 2.4 });
  if (box.floor < -34) {
    pen.rect(middle(box) - 7, box.floor + 24, 14, Math.min(26, -box.floor - 24), { fill: INK.pipe, ink: INK.ink });
  }
}
