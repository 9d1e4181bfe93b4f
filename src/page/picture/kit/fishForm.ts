// A fish along a straight spine: nose at x = 52, root of the tail at −36. The tail beat bends it; illness pales it. Each species gives its
// form.
import { INK, mix } from './palette';
import type { Pen } from './pen';
import { smooth, type Point } from './curves';

/** Space a fish takes in its own units. */
export const FISH_FRAME = { x: -72, y: -46, w: 140, h: 88 } as const;

/** A cream edge all round, and a light flank: they keep a fish apart from water of any tone, in grey print and from far away too. */
const HALO = '#FFF8E8';
const HALO_WIDTH = 8;
const FLANK: readonly Point[] = [
  [26, 0],
  [0, -5],
  [-34, 0],
];
const FLANK_WIDTH = 9;

/** How a species is built: outlines of its parts at rest, its colours, and the marks on its side. */
export interface FishForm {
  body: Point[];
  belly: Point[];
  tail: Point[];
  sideFin: Point[];
  /** fins behind the body */
  fins: Point[][];
  colours: { flesh: string; belly: string; dark: string; ink: string };
  eye: { x: number; y: number; r: number };
  mouth: string;
  gill: string;
  /** drawn over flesh and belly, under the outline; `move` bends points with the beat */
  marks(pen: Pen, move: (point: Point) => Point, fade: number): void;
  /** drawn over all, such as barbels; `move` bends points with the beat */
  over?(pen: Pen, ink: string, move: (point: Point) => Point, fade: number): void;
}

/**
 * Draws a fish with its nose to the right.
 * @param bend −1 (tail left) … 1 (tail right): one moment of the beat
 */
export function fishOf(form: FishForm, pen: Pen, bend: number, unwell: boolean): void {
  const narrow = 1 - 0.28 * Math.abs(bend);
  const move = ([x, y]: Point): Point => {
    const u = Math.max(0, (12 - x) / 66);
    return [x < -36 ? -36 + (x + 36) * narrow : x, y + bend * 7 * u * u + bend * 1.5 * Math.sin(u * 3)];
  };
  const outline = (points: Point[], closed = true): string => smooth(points.map(move), closed);
  const { colours, eye } = form;
  const flesh = unwell ? mix(colours.flesh, '#C9BBA6', 0.62) : colours.flesh;
  const belly = unwell ? mix(colours.belly, '#E4DCCB', 0.5) : colours.belly;
  const { ink } = colours;
  const body = outline(form.body);
  const tail = outline(form.tail, false);
  const fin = mix(flesh, colours.dark, unwell ? 0.08 : 0.18);
  pen.path(body + tail + form.fins.map((points) => outline(points)).join(''), { ink: HALO, width: HALO_WIDTH, alpha: 0.95 });
  pen.path(tail, { fill: mix(flesh, colours.dark, unwell ? 0.08 : 0.18), ink, width: 2.2 });
  for (let i = -2; i <= 2; i += 1) {
    const a = move([-40, i * 2]);
    const b = move([-54, i * 6.4]);
    pen.line(a[0], a[1], b[0], b[1], { ink, width: 0.9, alpha: 0.55 });
  }
  for (const points of form.fins) pen.path(outline(points), { fill: fin, ink, width: 2 });
  pen.path(body, { fill: flesh });
  pen.path(outline(form.belly), { fill: belly });
  pen.within(body, () => {
    const [[fromX, fromY], [overX, overY], [toX, toY]] = FLANK.map(move);
    pen.path(`M${fromX} ${fromY}Q${overX} ${overY} ${toX} ${toY}`, { ink: mix(belly, '#FFFFFF', 0.4), width: FLANK_WIDTH, alpha: 0.62 });
    form.marks(pen, move, unwell ? 0.55 : 1);
  });
  pen.path(body, { ink, width: 2.4 });
  pen.path(form.gill, { ink, width: 1.7 });
  pen.path(outline(form.sideFin), { fill: mix(belly, flesh, 0.4), ink, width: 1.7 });
  pen.circle(eye.x, eye.y, eye.r, { fill: '#FFFDF2', ink, width: 1.5 });
  pen.circle(eye.x + 1, eye.y, eye.r * 0.5, { fill: ink });
  pen.circle(eye.x + 1.8, eye.y - 0.8, 0.8, { fill: '#fff' });
  pen.path(form.mouth, { ink, width: 1.5 });
  form.over?.(pen, ink, move, unwell ? 0.55 : 1);
}

/** Rays of a fin along the back, from front to rear. */
export function rays(pen: Pen, move: (point: Point) => Point, from: Point, step: Point, tip: Point, count: number, fade: number): void {
  for (let i = 0; i < count; i += 1) {
    const a = move([from[0] + step[0] * i, from[1] + step[1] * i]);
    const b = move([from[0] + step[0] * i + tip[0], from[1] + step[1] * i + tip[1]]);
    pen.line(a[0], a[1], b[0], b[1], { ink: INK.fishInk, width: 0.9, alpha: 0.6 * fade });
  }
}
