// One leaf, as all leafy crops are built from: a frilled or smooth blade with its veins.
import { INK } from './palette';
import type { Pen } from './pen';
import { scatter, smooth, type Point } from './curves';

/** A leaf: its direction from upright, degrees, its length and half width, and how it frills and curls. */
export interface Leaf {
  x?: number;
  y?: number;
  /** colour and width of its rib; cream and 2 if left out */
  rib?: string;
  ribWidth?: number;
  /** share of its length at which it is widest is moved towards the base for a pointed leaf */
  pointed?: boolean;
  angle: number;
  length: number;
  width: number;
  fill: string;
  ink: string;
  seed: number;
  frill: number;
  curl: number;
}

/** Draws a leaf from its stalk outward. */
export function leaf(
  pen: Pen,
  { angle, length, width, fill, ink, seed, frill, curl, x = 0, y = 0, rib = INK.root, ribWidth = 2, pointed = false }: Leaf,
): void {
  const random = scatter(seed);
  const steps = 13;
  const lean = (angle * Math.PI) / 180;
  const spine = (s: number): Point => {
    const b = lean + curl * s * s;
    return [x + Math.sin(b) * length * s, y - Math.cos(b) * length * s];
  };
  const across = (s: number): Point => {
    const b = lean + curl * s * s;
    return [Math.cos(b), Math.sin(b)];
  };
  const left: Point[] = [];
  const right: Point[] = [];
  for (let i = 0; i <= steps; i += 1) {
    const s = i / steps;
    const full = pointed ? Math.sin(Math.PI * Math.min(1, s ** 0.72)) : Math.sin(Math.PI * Math.min(1, s * 0.86 + 0.06));
    const half = width * ((pointed ? 0.06 : 0.16) + (pointed ? 0.94 : 0.84) * Math.max(0, full) ** 1.15) * (s > 0.97 ? 0.42 : 1);
    const wave = frill * (i > 2 ? 1 : 0) * width * 0.13 * (i % 2 ? 1 : -1) * (0.6 + random() * 0.7);
    const p = spine(s);
    const q = across(s);
    left.push([p[0] - q[0] * (half + wave), p[1] - q[1] * (half + wave)]);
    right.push([p[0] + q[0] * (half + wave * 0.9), p[1] + q[1] * (half + wave * 0.9)]);
  }
  pen.path(smooth([...left, spine(1.05), ...right.reverse()], true), { fill, ink, width: 1.7 });
  for (const s of [0.35, 0.55, 0.75]) {
    const p = spine(s);
    const q = across(s);
    const u = spine(Math.min(1, s + 0.16));
    for (const side of [-1, 1])
      pen.line(p[0], p[1], u[0] + side * q[0] * width * 0.55, u[1] + side * q[1] * width * 0.55, {
        ink: rib,
        width: Math.max(0.8, ribWidth * 0.5),
        alpha: 0.55,
      });
  }
  pen.path(smooth([0, 0.3, 0.6, 0.92].map(spine)), { ink: rib, width: ribWidth, alpha: 0.85 });
}
