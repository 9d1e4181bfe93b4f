// A fish along a straight spine: nose at x = 52, root of the tail at −36. The tail beat bends it; illness pales it.
import { INK, mix } from './palette';
import type { Pen } from './pen';
import { smooth, type Point } from './curves';

/** Space a fish takes in its own units. */
export const FISH_FRAME = { x: -70, y: -46, w: 130, h: 88 } as const;

const BODY: Point[] = [[52, 2], [46, -7], [34, -16], [16, -22], [-4, -20], [-22, -12], [-36, -6], [-40, 0], [-36, 6], [-22, 13], [-2, 20], [18, 19], [36, 13], [47, 8]];
const BELLY: Point[] = [[50, 6], [36, 13], [18, 19], [-2, 20], [-22, 13], [-36, 5], [-18, 6], [6, 8], [30, 7]];
const TAIL: Point[] = [[-36, -5], [-48, -15], [-60, -20], [-57, -8], [-55, 0], [-57, 9], [-60, 19], [-48, 14], [-36, 6]];
const BACK_FIN: Point[] = [[26, -19], [20, -31], [8, -34], [-6, -32], [-20, -27], [-29, -21], [-24, -12], [-4, -19], [14, -21]];
const BELLY_FIN: Point[] = [[-4, 19], [-12, 28], [-24, 24], [-27, 13], [-16, 15]];
const SIDE_FIN: Point[] = [[18, 5], [8, 3], [0, 9], [4, 14], [13, 11]];

/**
 * Draws a fish with its nose to the right.
 * @param bend −1 (tail left) … 1 (tail right): one moment of the beat
 */
export function fish(pen: Pen, bend: number, unwell: boolean): void {
  const narrow = 1 - 0.28 * Math.abs(bend);
  const move = ([x, y]: Point): Point => {
    const u = Math.max(0, (12 - x) / 66);
    return [x < -36 ? -36 + (x + 36) * narrow : x, y + bend * 7 * u * u + bend * 1.5 * Math.sin(u * 3)];
  };
  const outline = (points: Point[], closed = true): string => smooth(points.map(move), closed);
  const flesh = unwell ? mix(INK.fish, '#C9BBA6', 0.62) : INK.fish;
  const belly = unwell ? mix(INK.fishBelly, '#E4DCCB', 0.5) : INK.fishBelly;
  const ink = INK.fishInk;
  const body = outline(BODY);
  const tail = outline(TAIL, false);
  const fin = mix(flesh, INK.fishDark, unwell ? 0.12 : 0.25);
  pen.path(body + tail, { ink: '#FFF8E8', width: 7, alpha: 0.75 });
  pen.path(tail, { fill: mix(flesh, INK.fishDark, unwell ? 0.15 : 0.35), ink, width: 2.2 });
  for (let i = -2; i <= 2; i += 1) {
    const a = move([-40, i * 2]);
    const b = move([-56, i * 7]);
    pen.line(a[0], a[1], b[0], b[1], { ink, width: 0.9, alpha: 0.55 });
  }
  pen.path(outline(BACK_FIN), { fill: fin, ink, width: 2 });
  for (let i = 0; i < 7; i += 1) {
    const a = move([20 - i * 6.4, -21 + i * 0.9]);
    const b = move([18 - i * 6.6, -32 + i * 1.1]);
    pen.line(a[0], a[1], b[0], b[1], { ink, width: 0.9, alpha: 0.6 });
  }
  pen.path(outline(BELLY_FIN), { fill: fin, ink, width: 2 });
  pen.path(body, { fill: flesh });
  pen.path(outline(BELLY), { fill: belly });
  for (const x of [14, 2, -10, -22]) {
    const a = move([x, -19 + Math.abs(x - 6) * 0.28]);
    const b = move([x - 3, 3]);
    pen.path(`M${a[0]} ${a[1] + 2}Q${a[0] - 4} ${(a[1] + b[1]) / 2} ${b[0]} ${b[1]}`, { ink: INK.fishDark, width: 4, alpha: unwell ? 0.28 : 0.5 });
  }
  pen.path(body, { ink, width: 2.4 });
  pen.path('M29 -14Q21 -2 29 11', { ink, width: 1.7 });
  pen.path(outline(SIDE_FIN), { fill: mix(belly, flesh, 0.4), ink, width: 1.7 });
  pen.circle(39, -4, 4.6, { fill: '#FFFDF2', ink, width: 1.5 });
  pen.circle(40, -4, 2.3, { fill: ink });
  pen.circle(40.8, -4.8, 0.8, { fill: '#fff' });
  pen.path(unwell ? 'M51 3Q46 3 43 6' : 'M51 4Q46 6.5 43 5.4', { ink, width: 1.5 });
}
