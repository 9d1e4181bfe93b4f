// Raft lettuce in four sizes, well or stressed. Its base is at (0, 0), in a net pot.
import type { CropDrawing } from '../../../page/picture/kit/crops';
import { INK, mix } from '../../../page/picture/kit/palette';
import type { Pen } from '../../../page/picture/kit/pen';
import { scatter } from '../../../page/picture/kit/curves';
import { leaf, type Leaf } from '../../../page/picture/kit/leaf';

/** Leaves, their length and their half width at each size. */
const SIZES: readonly (readonly [number, number, number])[] = [
  [3, 15, 5],
  [5, 27, 9],
  [8, 44, 14],
  [12, 62, 19],
];

/**
 * Draws one plant.
 * @param size 1 (seedling) … 4 (ripe)
 * @param stress 0 well, 1 stressed: leaves curl out, narrow, turn straw, their tips brown
 */
function lettuce(pen: Pen, size: 1 | 2 | 3 | 4, stress: boolean, seed: number): void {
  const random = scatter(seed * 77 + size);
  const [count, length, width] = SIZES[size - 1];
  const dark = stress ? INK.stressDark : INK.leafDark;
  const plain = stress ? INK.stress : INK.leaf;
  const light = stress ? INK.stressLight : INK.leafLight;
  const ink = stress ? INK.stressInk : INK.leafInk;
  pen.rect(-9, -3, 18, 12, { fill: '#8D8171', ink: INK.ink, width: 1.6 }, 3);
  const leaves: { depth: number; leaf: Leaf }[] = [];
  for (let i = 0; i < count; i += 1) {
    const spread = size === 1 ? 48 : size === 2 ? 66 : 80;
    const angle = ((i / (count - 1)) * 2 - 1) * spread + (random() - 0.5) * 9;
    const depth = Math.abs(angle) / 90;
    const fill = mix(depth > 0.55 ? mix(plain, dark, 0.42) : depth > 0.25 ? plain : light, plain, random() * 0.4);
    leaves.push({
      depth,
      leaf: {
        angle,
        length: length * (0.82 + 0.26 * random()) * (1 - 0.16 * depth),
        width: width * (0.85 + random() * 0.3) * (stress ? 0.82 : 1),
        fill,
        ink,
        seed: seed * 31 + i * 7 + size,
        frill: size > 1 ? 1 : 0.2,
        curl: (angle > 0 ? 1 : -1) * (stress ? 1 : 0.28) * (0.4 + depth),
      },
    });
  }
  leaves.sort((p, q) => q.depth - p.depth);
  for (const one of leaves) leaf(pen, one.leaf);
  if (size >= 3) {
    for (const angle of [-30, 26, -4]) {
      leaf(pen, {
        angle: angle + (random() - 0.5) * 8,
        length: length * 0.55 * (0.9 + random() * 0.2),
        width: width * 0.8,
        fill: mix(light, '#F3F6B8', 0.3),
        ink,
        seed: seed + angle + 90,
        frill: 1,
        curl: (angle > 0 ? 1 : -1) * (stress ? 0.8 : 0.15),
      });
    }
  }
  if (!stress) return;
  for (let i = 0; i < 5; i += 1) {
    const a = ((-70 + i * 35) * Math.PI) / 180;
    pen.oval(Math.sin(a * 1.25) * length * 0.8, -Math.cos(a * 1.15) * length * 0.72, 0.07 * length, 0.05 * length, a, {
      fill: '#6E4A1C',
      alpha: 0.75,
    });
  }
}

export const drawing: CropDrawing = { frame: { x: -84, y: -86, w: 168, h: 146 }, draw: lettuce, full_g_m2: 180, scale: 1, reach: 74 };
