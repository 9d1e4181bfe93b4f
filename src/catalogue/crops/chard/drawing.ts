// Chard in four sizes: a rosette of tall crinkled leaves on thick stalks of red, yellow or white. Its base is at (0, 0), in a net pot.
import type { CropDrawing } from '../../../page/picture/kit/crops';
import { INK, mix } from '../../../page/picture/kit/palette';
import type { Pen } from '../../../page/picture/kit/pen';
import { scatter } from '../../../page/picture/kit/curves';
import { leaf } from '../../../page/picture/kit/leaf';

/** Leaves, their length and half width, length of the stalk at each size. */
const SIZES: readonly (readonly [number, number, number, number])[] = [
  [3, 12, 5, 6],
  [5, 28, 10, 14],
  [7, 46, 15, 24],
  [9, 58, 19, 34],
];
const STALKS = ['#C7344B', '#EDB636', '#F5EFDD'] as const;

/** Draws one plant; see lettuce for size and stress. The seed chooses the colour of its stalks. */
function chard(pen: Pen, size: 1 | 2 | 3 | 4, stress: boolean, seed: number): void {
  const random = scatter(seed * 83 + size);
  const [count, length, width, stalk] = SIZES[size - 1];
  const rib = stress ? mix(STALKS[seed % STALKS.length], '#A98A50', 0.45) : STALKS[seed % STALKS.length];
  const dark = stress ? INK.stressDark : '#2E5B2C';
  const plain = stress ? INK.stress : '#477F38';
  const ink = stress ? INK.stressInk : '#1C3518';
  pen.rect(-9, -3, 18, 12, { fill: '#8D8171', ink: INK.ink, width: 1.6 }, 3);
  const spread = [40, 48, 54, 58][size - 1];
  const leaves = Array.from({ length: count }, (_, i) => {
    const off = (i / (count - 1)) * 2 - 1;
    return {
      off,
      angle: off * spread * (stress ? 1.35 : 1) + (random() - 0.5) * 9,
      grow: (0.84 + random() * 0.26) * (1 - 0.1 * Math.abs(off)),
      shade: random(),
    };
  }).sort((a, b) => Math.abs(b.off) - Math.abs(a.off));
  for (const { off, angle, grow, shade } of leaves) {
    const a = (angle * Math.PI) / 180;
    const long = stalk * grow;
    const x = off * 5 + Math.sin(a * 0.8) * long;
    const y = -Math.cos(a * 0.8) * long;
    const d = `M${off * 5} 1Q${off * 5 + Math.sin(a * 0.5) * long * 0.6} ${y * 0.6} ${x} ${y}`;
    const thick = 3 + size;
    pen.path(d, { ink, width: thick + 2.4 });
    pen.path(d, { ink: rib, width: thick });
    const fill = mix(plain, Math.abs(off) > 0.5 ? dark : '#7DAE54', 0.15 + 0.4 * shade);
    leaf(pen, {
      x,
      y: y + 2,
      angle,
      length: length * grow,
      width: width * grow * (stress ? 0.8 : 1),
      fill,
      ink,
      seed: seed * 29 + Math.round(off * 40),
      frill: size > 1 ? 0.8 : 0.2,
      curl: (angle > 0 ? 1 : -1) * (stress ? 1 : 0.22) * (0.4 + Math.abs(off)),
      rib,
      ribWidth: 1.4 + size * 0.6,
    });
    if (stress)
      pen.oval(x + Math.sin(a * 1.7) * length * 0.86, y - Math.cos(a * 1.7) * length * 0.8, 4.5, 3, a, { fill: '#6E4A1C', alpha: 0.75 });
  }
}

export const drawing: CropDrawing = { frame: { x: -74, y: -112, w: 148, h: 140 }, draw: chard, full_g_m2: 130, scale: 1, reach: 100 };
