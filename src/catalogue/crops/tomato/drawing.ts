// Tomato in four sizes: a tied stem with cut leaves, then yellow flowers, then trusses of green and red fruit. Its base is at (0, 0), in a
// net pot.
import type { CropDrawing } from '../../../page/picture/kit/crops';
import { INK, mix } from '../../../page/picture/kit/palette';
import type { Pen } from '../../../page/picture/kit/pen';
import { scatter } from '../../../page/picture/kit/curves';
import { leaf } from '../../../page/picture/kit/leaf';

/** Height of the plant, leaves on it, length of a leaf at each size. */
const SIZES: readonly (readonly [number, number, number])[] = [
  [28, 4, 20],
  [66, 7, 30],
  [112, 9, 36],
  [148, 11, 38],
];
const SWAY = 5;

interface Look {
  plain: string;
  dark: string;
  light: string;
  ink: string;
  stress: boolean;
}

/** A cut leaf: a stalk with small leaves in pairs and one at its end. */
function cutLeaf(pen: Pen, x: number, y: number, side: number, length: number, look: Look, seed: number): void {
  const random = scatter(seed);
  const droop = look.stress ? 0.75 : 0.28;
  const at = (s: number): [number, number] => [
    x + side * length * s * (1 - 0.16 * droop * s),
    y - length * (0.34 * s - (0.34 + droop * 0.6) * s * s),
  ];
  const [ex, ey] = at(1);
  const [mx, my] = at(0.55);
  pen.path(`M${x} ${y}Q${mx} ${my - 2} ${ex} ${ey}`, { ink: look.ink, width: 2.6 });
  for (const s of [0.42, 0.7]) {
    const [px, py] = at(s);
    for (const up of [-1, 1]) {
      const long = length * 0.36 * (0.85 + random() * 0.3);
      leaf(pen, {
        x: px,
        y: py,
        angle: side * (up < 0 ? 18 : 150) + (random() - 0.5) * 18,
        length: long,
        width: long * (look.stress ? 0.26 : 0.36),
        fill: mix(look.plain, up < 0 ? look.light : look.dark, 0.3 + random() * 0.25),
        ink: look.ink,
        seed: seed + up + 3,
        frill: 0.9,
        curl: side * (look.stress ? 0.9 : 0.2),
        ribWidth: 1,
        pointed: true,
      });
    }
  }
  leaf(pen, {
    x: ex,
    y: ey,
    angle: side * (look.stress ? 128 : 98),
    length: length * 0.46,
    width: length * (look.stress ? 0.13 : 0.18),
    fill: look.plain,
    ink: look.ink,
    seed: seed + 9,
    frill: 0.9,
    curl: side * (look.stress ? 0.8 : 0.3),
    ribWidth: 1,
    pointed: true,
  });
}

function flower(pen: Pen, x: number, y: number): void {
  for (let i = 0; i < 5; i += 1) {
    const a = (i * 6.283) / 5;
    pen.oval(x + Math.cos(a) * 3.6, y + Math.sin(a) * 3.6, 3.4, 1.7, a, { fill: '#F4CF3A', ink: '#7A5A10', width: 0.9 });
  }
  pen.circle(x, y, 1.8, { fill: '#D79A1E' });
}

/** A truss that hangs from the stem: ripe near it, green at its end. */
function truss(pen: Pen, x: number, y: number, side: number, fruit: number): void {
  pen.path(`M${x} ${y}q${side * 13} 0 ${side * 16} ${8 + fruit * 7}`, { ink: INK.leafInk, width: 2.4 });
  for (let i = 0; i < fruit; i += 1) {
    const fx = x + side * (11 + (i % 2) * 9);
    const fy = y + 9 + i * 8;
    const ripe = 1 - i / fruit;
    const fill = ripe > 0.6 ? '#D6402B' : ripe > 0.3 ? '#E58A3A' : '#A9C25A';
    pen.circle(fx, fy, 7.6, { fill, ink: ripe > 0.3 ? '#5E160C' : INK.leafInk, width: 1.7 });
    pen.path(`M${fx - 3.4} ${fy - 2.6}a4 4 0 0 1 2.8 -2.4`, { ink: '#fff', width: 1.6, alpha: 0.85 });
    pen.path(`M${fx - 4} ${fy - 7}l4 2l4 -2M${fx} ${fy - 5}v-4`, { ink: INK.leafInk, width: 1.5 });
  }
}

/** Draws one plant; see lettuce for size and stress. */
function tomato(pen: Pen, size: 1 | 2 | 3 | 4, stress: boolean, seed: number): void {
  const random = scatter(seed * 47 + size);
  const [height, count, length] = SIZES[size - 1];
  const look: Look = {
    stress,
    plain: stress ? INK.stress : '#5E9440',
    dark: stress ? INK.stressDark : '#376328',
    light: stress ? INK.stressLight : '#8DBB5C',
    ink: stress ? INK.stressInk : INK.leafInk,
  };
  const bend = (y: number): number => Math.sin(y / 21 + seed) * SWAY * Math.min(1, y / 30);
  if (size > 1) {
    pen.path(`M2 -4V${-height - 12}`, { ink: INK.woodDark, width: 1.4, dash: [5, 2] });
  }
  pen.rect(-9, -3, 18, 12, { fill: '#8D8171', ink: INK.ink, width: 1.6 }, 3);
  let stem = 'M0 0';
  for (let y = 8; y <= height; y += 8) stem += `L${bend(y)} ${-y}`;
  pen.path(stem, { ink: look.ink, width: 3 + size * 0.7 });
  pen.path(stem, { ink: look.light, width: 1.2 + size * 0.5 });
  for (let i = 0; i < count; i += 1) {
    const s = 0.16 + (0.84 * i) / count;
    const y = height * s;
    cutLeaf(pen, bend(y), -y, i % 2 ? 1 : -1, length * (1.08 - 0.5 * s) * (0.9 + random() * 0.2), look, seed * 13 + i);
  }
  for (const side of [-1, 1])
    leaf(pen, {
      x: bend(height),
      y: -height,
      angle: side * 22,
      length: length * 0.5,
      width: length * 0.14,
      fill: look.light,
      ink: look.ink,
      seed: seed + side,
      frill: 0.8,
      curl: side * 0.3,
      ribWidth: 1,
      pointed: true,
    });
  if (size >= 3)
    for (const [at, side] of [
      [0.9, 1],
      [0.74, -1],
    ] as const)
      for (let i = 0; i < 2; i += 1) flower(pen, bend(height * at) + side * (10 + i * 8), -height * at + 3 + i * 6);
  if (size === 4) {
    truss(pen, bend(height * 0.34), -height * 0.36, 1, 4);
    truss(pen, bend(height * 0.52), -height * 0.55, -1, 3);
  } else if (size === 3) truss(pen, bend(height * 0.4), -height * 0.4, -1, 2);
}

export const drawing: CropDrawing = { frame: { x: -64, y: -176, w: 128, h: 192 }, draw: tomato, full_g_m2: 340, scale: 0.98, reach: 168 };
