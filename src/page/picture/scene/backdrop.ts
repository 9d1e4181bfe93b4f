// Everything that stands still behind the loop: paper sky, greenhouse, ground. Drawn once for each layout and size.
import { INK } from '../kit/palette';
import type { Pen } from '../kit/pen';
import { scatter } from '../kit/curves';

export interface House {
  left: number;
  right: number;
  eave: number;
  ridge: number;
}

/** The greenhouse around the loop; spare height lifts its roof a little and leaves the rest to the sky. */
export function houseOf(width: number, loopTop: number, viewTop: number): House {
  const spare = Math.max(0, loopTop - viewTop);
  const ridge = loopTop + 24 - spare * 0.4;
  return { left: 10, right: width - 10, eave: ridge + Math.min(86, width * 0.058), ridge };
}

/** Sky as squared paper with a few thin clouds. */
export function sky(pen: Pen, width: number, top: number): void {
  pen.rect(0, top, width, -top, { fill: INK.paper });
  let grid = '';
  for (let x = 0; x <= width; x += 30) grid += `M${x} ${top}V0`;
  for (let y = 0; y >= top; y -= 30) grid += `M0 ${y}H${width}`;
  pen.path(grid, { ink: INK.rule, width: 0.8, alpha: 0.22, cap: 'butt' });
}

function roof({ left, right, eave, ridge }: House): string {
  return `M${left} 0V${eave}L${(left + right) / 2} ${ridge}L${right} ${eave}V0`;
}

/** Greenhouse: washed panes, thin bars, glints, an inked frame, a roof vent that stands open. */
export function house(pen: Pen, h: House): void {
  const middle = (h.left + h.right) / 2;
  const random = scatter(11);
  pen.within(roof(h) + 'Z', () => {
    pen.rect(h.left, h.ridge, h.right - h.left, -h.ridge, { fill: '#E6F1EC', alpha: 0.72 });
    for (let i = 0; i < 26; i += 1) {
      const fill = i % 3 === 0 ? '#FBF3D2' : i % 3 === 1 ? '#DCEDEA' : '#EEF3DF';
      pen.oval(
        h.left + random() * (h.right - h.left),
        h.ridge + random() * -h.ridge * 0.8,
        90 + random() * 130,
        26 + random() * 40,
        -0.3 + random() * 0.3,
        { fill, alpha: 0.3 },
      );
    }
    for (let i = 0; i * 330 < h.right; i += 1) {
      pen.path(`M${60 + i * 330} ${h.ridge}L${210 + i * 330} ${h.ridge}L${520 + i * 330} 0L${300 + i * 330} 0Z`, {
        fill: '#FFF3C4',
        alpha: 0.34,
      });
    }
  });
  const bays = Math.round((h.right - h.left) / 98);
  let bars = `M${h.left} ${h.eave}H${h.right}M${h.left} ${h.eave + 96}H${h.right}`;
  for (let i = 1; i < bays; i += 1) {
    const x = h.left + (i * (h.right - h.left)) / bays;
    bars += `M${x} ${h.ridge + ((h.eave - h.ridge) * Math.abs(x - middle)) / (middle - h.left)}V0`;
  }
  pen.path(bars, { ink: INK.pane, width: 1.4, alpha: 0.5 });
  for (let i = 0; i * 186 + 110 < h.right; i += 1) {
    const x = h.left + 60 + i * 186;
    pen.path(`M${x} ${h.eave + 60}l26 -40M${x + 16} ${h.eave + 62}l17 -26`, { ink: '#fff', width: 3, alpha: 0.75 });
  }
  pen.path(roof(h), { ink: INK.ink, width: 8 });
  pen.path(roof(h), { ink: INK.frame, width: 3.6 });
  const vent = `M${middle + 14} ${h.ridge + 3}l96 -15`;
  pen.path(vent, { ink: INK.ink, width: 6 });
  pen.path(vent, { ink: INK.frame, width: 2.4 });
  for (const [x, y] of [
    [h.left, h.eave],
    [h.right, h.eave],
    [middle, h.ridge],
  ])
    pen.circle(x, y, 6.5, { fill: INK.steel, ink: INK.ink });
}

/** Ground under y = 0: hatched soil with stones and crumbs. */
export function ground(pen: Pen, width: number, depth: number): void {
  const random = scatter(3);
  pen.rect(0, 0, width, depth, { fill: INK.soil });
  pen.hatch(`M0 0H${width}V${depth}H0Z`, 0, 0, width, depth, 9, 0.1, -1);
  const count = Math.round((width * depth) / 2900);
  for (let i = 0; i < count; i += 1) {
    const x = random() * width;
    const y = 16 + random() * (depth - 24);
    if (random() > 0.5) pen.circle(x, y, 1.2 + random() * 2, { fill: INK.soilDeep, alpha: 0.55 });
    else pen.path(`M${x} ${y}q5 -5 11 0q-3 5 -8 4Z`, { fill: INK.soil, ink: INK.soilDeep, width: 1.1, alpha: 0.8 });
  }
  let blades = '';
  for (let x = 6; x < width; x += 26) blades += `M${x} 10L${x - 10} 20`;
  pen.path(blades, { ink: INK.soilDeep, width: 1.6 });
  pen.line(-4, 0, width + 4, 0, { ink: INK.ink, width: 4 });
}

/** The sun with its glow, centred. */
export function sun(pen: Pen): void {
  const glow = pen.context.createRadialGradient(0, 0, 20, 0, 0, 130);
  glow.addColorStop(0, 'rgba(255,224,138,.62)');
  glow.addColorStop(1, 'rgba(255,224,138,0)');
  pen.context.fillStyle = glow;
  pen.context.fillRect(-130, -130, 260, 260);
  pen.circle(0, 0, 34, { fill: INK.sun, ink: INK.ink, width: 2.4 });
  for (let i = 0; i < 12; i += 1) {
    const a = (i * Math.PI) / 6;
    const r = i % 2 ? 52 : 56;
    pen.line(Math.cos(a) * 42, Math.sin(a) * 42, Math.cos(a) * r, Math.sin(a) * r, { ink: INK.ink, width: 2.4 });
  }
}

/** A cloud some 150 wide, centred. */
export function cloud(pen: Pen): void {
  const shape = 'M-70 22C-92 22 -92 -6 -66 -6C-66 -30 -34 -38 -22 -22C-10 -44 30 -42 34 -16C50 -26 70 -12 62 2C84 2 82 22 64 22Z';
  pen.path(shape, { fill: '#E9EDEC', ink: INK.ink, width: 2 });
  pen.within(shape, () => pen.path('M-80 24C-60 8 -30 18 -12 10C10 20 40 6 80 14V30H-80Z', { fill: '#C3CDD0', alpha: 0.85 }));
  pen.path('M-46 -8c4 -9 14 -12 21 -7M2 -14c5 -8 16 -9 22 -2', { ink: INK.ink, width: 1.4, alpha: 0.6 });
}

/** The moon, centred. */
export function moon(pen: Pen): void {
  pen.path('M10 -26A28 28 0 1 0 10 26A22 22 0 1 1 10 -26Z', { fill: INK.white, ink: INK.ink, width: 2.4 });
}
