// Basil in four sizes: upright branching stems with pairs of glossy, pointed, cupped leaves. Its base is at (0, 0), in a net pot.
import type { CropDrawing } from '../../../page/picture/kit/crops';
import { INK, mix } from '../../../page/picture/kit/palette';
import type { Pen } from '../../../page/picture/kit/pen';
import { scatter } from '../../../page/picture/kit/curves';
import { leaf } from '../../../page/picture/kit/leaf';

/** Height, pairs of leaves on a stem, stems, length of a leaf at each size. */
const SIZES: readonly (readonly [number, number, number, number])[] = [
  [14, 1, 1, 14],
  [34, 2, 1, 25],
  [60, 3, 3, 29],
  [80, 3, 4, 35],
];

/** Draws one plant; see lettuce for size and stress. */
function basil(pen: Pen, size: 1 | 2 | 3 | 4, stress: boolean, seed: number): void {
  const random = scatter(seed * 61 + size);
  const [height, pairs, stems, length] = SIZES[size - 1];
  const dark = stress ? INK.stressDark : '#3B7D38';
  const plain = stress ? INK.stress : '#5FA544';
  const light = stress ? INK.stressLight : '#A4D474';
  const ink = stress ? INK.stressInk : '#173A1C';
  pen.rect(-9, -3, 18, 12, { fill: '#8D8171', ink: INK.ink, width: 1.6 }, 3);
  const order = Array.from({ length: stems }, (_, i) => i).sort((a, b) => Math.abs(b - (stems - 1) / 2) - Math.abs(a - (stems - 1) / 2));
  for (const i of order) {
    const off = stems === 1 ? 0 : (i / (stems - 1)) * 2 - 1;
    const tall = height * (1 - 0.26 * Math.abs(off)) * (0.94 + random() * 0.1);
    const lean = off * 34 + (random() - 0.5) * 5;
    const at = (s: number): [number, number] => [lean * s * (1.15 - 0.15 * s), -2 - tall * s * (stress ? 0.9 : 1)];
    const [tx, ty] = at(1);
    const [mx, my] = at(0.5);
    pen.path(`M${off * 3} 0Q${mx} ${my} ${tx} ${ty}`, { ink, width: 4.2 });
    pen.path(`M${off * 3} 0Q${mx} ${my} ${tx} ${ty}`, { ink: light, width: 2 });
    for (let p = 0; p < pairs; p += 1) {
      const s = pairs === 1 ? 0.8 : 0.34 + (0.62 * p) / (pairs - 1);
      const [x, y] = at(s);
      const long = length * (1.06 - 0.38 * s) * (0.9 + random() * 0.2);
      for (const side of [-1, 1] as const) {
        const open = (stress ? 116 : 84) - 30 * s + random() * 8;
        const fill = mix(p === pairs - 1 ? light : plain, dark, p === pairs - 1 ? 0.05 : 0.32 * random() + 0.14 * Math.abs(off));
        leaf(pen, {
          x,
          y,
          angle: side * open,
          length: long,
          width: long * (stress ? 0.28 : 0.36),
          fill,
          ink,
          seed: seed * 17 + p * 5 + i,
          frill: 0,
          curl: side * (stress ? 0.9 : 0.3),
          rib: '#D9EDB8',
          ribWidth: 1.5,
          pointed: true,
        });
      }
    }
    for (const turn of [-16, 18])
      leaf(pen, {
        x: tx,
        y: ty + 2,
        angle: turn + lean * 0.3,
        length: length * 0.62,
        width: length * 0.24,
        fill: light,
        ink,
        seed: seed + i,
        frill: 0,
        curl: turn * (stress ? 0.05 : 0.012),
        rib: '#D9EDB8',
        ribWidth: 1.2,
        pointed: true,
      });
    if (stress) pen.oval(tx + 4, ty - 3, 4, 2.6, 0.5, { fill: '#6E4A1C', alpha: 0.75 });
  }
}

export const drawing: CropDrawing = { frame: { x: -72, y: -104, w: 144, h: 120 }, draw: basil, full_g_m2: 150, scale: 1, reach: 94 };
