// Roots that hang under a plant from (0, 0): clean strands are cream with fine hairs, fouled ones dark, thick and clumped.
import { INK } from '../kit/palette';
import type { Pen } from '../kit/pen';
import { scatter, smooth, type Point } from '../kit/curves';

/** Space a root takes in its own units, at full length. */
export const ROOTS_FRAME = { x: -38, y: -6, w: 76, h: 98 } as const;
const LENGTH = 78;
const STRANDS = 8;
const SPREAD = 19;
const KNOTS = 5;

/**
 * Draws one root.
 * @param fouled share of its strands that are fouled, 0–1; which ones go first depends on the seed
 */
export function roots(pen: Pen, fouled: number, seed: number): void {
  const random = scatter(seed * 13 + 5);
  const order = Array.from({ length: STRANDS }, () => random());
  const ranked = [...order].sort((a, b) => a - b);
  const limit = fouled <= 0 ? -1 : ranked[Math.min(STRANDS - 1, Math.ceil(fouled * STRANDS) - 1)];
  for (const pass of ['outline', 'strand', 'clump'] as const) {
    const walk = scatter(seed * 101 + 9);
    for (let i = 0; i < STRANDS; i += 1) strand(pen, pass, (i / (STRANDS - 1)) * 2 - 1, order[i] <= limit, walk);
  }
}

function strand(pen: Pen, pass: 'outline' | 'strand' | 'clump', side: number, foul: boolean, random: () => number): void {
  const length = LENGTH * (0.62 + random() * 0.42) * (foul ? 0.82 : 1) * (1 - 0.22 * Math.abs(side));
  const points: Point[] = [[side * 6, 0]];
  for (let k = 1; k <= KNOTS; k += 1) points.push([side * 6 + side * SPREAD * (k / KNOTS) + (random() - 0.5) * 7, (length * k) / KNOTS]);
  const inkColour = foul ? INK.rootFouledInk : INK.rootCleanInk;
  const colour = foul ? INK.rootFouled : INK.rootClean;
  const d = smooth(points);
  if (pass === 'outline') pen.path(d, { ink: inkColour, width: foul ? 5.2 : 3.6 });
  if (pass === 'strand') pen.path(d, { ink: colour, width: foul ? 3 : 2 });
  for (let k = 1; k < KNOTS; k += 1) {
    const [x, y] = points[k];
    const dx = (random() > 0.5 ? 1 : -1) * (5 + random() * 6);
    const dy = 7 + random() * 5;
    const hairy = !foul || random() < 0.3;
    const clumped = foul && random() < 0.62;
    const s = 3 + random() * 4.5;
    if (hairy && pass === 'outline') pen.path(`M${x} ${y}q${dx * 0.6} 2 ${dx} ${dy}`, { ink: inkColour, width: 2.3 });
    if (hairy && pass === 'strand') pen.path(`M${x} ${y}q${dx * 0.6} 2 ${dx} ${dy}`, { ink: colour, width: 1.1 });
    if (clumped && pass === 'clump') {
      pen.path(
        smooth(
          [
            [x - s, y],
            [x - s * 0.4, y - s * 0.9],
            [x + s * 0.7, y - s * 0.6],
            [x + s, y + s * 0.3],
            [x + s * 0.2, y + s],
            [x - s * 0.7, y + s * 0.8],
          ],
          true,
        ),
        { fill: INK.sludge, ink: INK.rootFouledInk, width: 1.2 },
      );
    }
  }
}
