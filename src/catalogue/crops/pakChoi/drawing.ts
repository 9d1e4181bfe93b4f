// Pak choi in four sizes: spoon-shaped dark leaves on broad white stalks that close to a bulb. Its base is at (0, 0), in a net pot.
import type { CropDrawing } from '../../../page/picture/kit/crops';
import { INK, mix } from '../../../page/picture/kit/palette';
import type { Pen } from '../../../page/picture/kit/pen';
import { scatter } from '../../../page/picture/kit/curves';
import { leaf } from '../../../page/picture/kit/leaf';

/** Leaves, their length and half width, length and width of the stalk at each size. */
const SIZES: readonly (readonly [number, number, number, number, number])[] = [
  [3, 11, 5, 6, 3],
  [5, 22, 10, 15, 6],
  [6, 34, 16, 25, 10],
  [8, 42, 20, 34, 14],
];

/** Draws one plant; sizes and stress as of every crop. */
function pakChoi(pen: Pen, size: 1 | 2 | 3 | 4, stress: boolean, seed: number): void {
  const random = scatter(seed * 59 + size);
  const [count, length, width, stalk, thick] = SIZES[size - 1];
  const white = stress ? '#D9C99A' : '#F1F4E6';
  const plain = stress ? INK.stress : '#3C7A44';
  const dark = stress ? INK.stressDark : '#25582F';
  const ink = stress ? INK.stressInk : '#17351F';
  pen.rect(-9, -3, 18, 12, { fill: '#8D8171', ink: INK.ink, width: 1.6 }, 3);
  const leaves = Array.from({ length: count }, (_, i) => {
    const off = (i / (count - 1)) * 2 - 1;
    return { off, angle: off * (stress ? 62 : 44) + (random() - 0.5) * 7, grow: (0.88 + random() * 0.2) * (1 - 0.12 * Math.abs(off)) };
  }).sort((a, b) => Math.abs(b.off) - Math.abs(a.off));
  for (const { off, angle, grow } of leaves) {
    const a = (angle * Math.PI) / 180;
    const x = off * 7 + Math.sin(a) * stalk * grow;
    const y = -Math.cos(a) * stalk * grow;
    // a stalk bellies out at its foot and narrows to the blade
    const d = `M${off * 6} 1Q${off * 13 + Math.sin(a) * stalk * 0.3} ${y * 0.45} ${x} ${y}`;
    leaf(pen, {
      x,
      y: y + 2,
      angle,
      length: length * grow,
      width: width * grow * (stress ? 0.78 : 1),
      fill: mix(plain, dark, 0.15 + 0.45 * Math.abs(off)),
      ink,
      seed: seed * 23 + Math.round(off * 30),
      frill: 0.25,
      curl: (angle > 0 ? 1 : -1) * (stress ? 0.9 : 0.18),
      rib: white,
      ribWidth: 1.2 + size * 0.5,
    });
    pen.path(d, { ink, width: thick + 2.6 });
    pen.path(d, { ink: white, width: thick });
  }
}

export const drawing: CropDrawing = { frame: { x: -66, y: -92, w: 132, h: 124 }, draw: pakChoi, full_g_m2: 160, scale: 1, reach: 82 };
