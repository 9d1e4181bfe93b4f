// The course of a pipe as pieces: straight runs, bends, and points along it at even steps. Pure.

export interface Straight {
  x: number;
  y: number;
  length: number;
  /** direction of flow: 1, 0 or −1 along each axis */
  dx: number;
  dy: number;
}
/** A quarter bend around a corner; in and out are the directions of flow. */
export interface Bend {
  x: number;
  y: number;
  radius: number;
  inX: number;
  inY: number;
  outX: number;
  outY: number;
}
export interface Course {
  straights: Straight[];
  bends: Bend[];
  length: number;
  /** samples along the pipe, STEP units apart: x, y, direction in radians */
  xs: Float32Array;
  ys: Float32Array;
  turns: Float32Array;
}

/** Distance between samples, world units. */
export const STEP = 2;

/** Divides a polyline of level and upright runs (x, y, x, y …) into pieces with rounded corners. */
export function courseOf(points: readonly number[], radius: number): Course {
  const n = points.length / 2;
  const straights: Straight[] = [];
  const bends: Bend[] = [];
  const legs: { dx: number; dy: number; length: number }[] = [];
  for (let i = 0; i + 1 < n; i += 1) {
    const x = points[2 * i + 2] - points[2 * i];
    const y = points[2 * i + 3] - points[2 * i + 1];
    legs.push({ dx: Math.sign(x), dy: Math.sign(y), length: Math.abs(x) + Math.abs(y) });
  }
  const cut = legs.map((leg, i) => (i + 1 < legs.length ? Math.min(radius, leg.length / 2, legs[i + 1].length / 2) : 0));
  const samples: [number, number, number][] = [];
  legs.forEach((leg, i) => {
    const before = i > 0 ? cut[i - 1] : 0;
    const length = leg.length - before - cut[i];
    const x = points[2 * i] + leg.dx * before;
    const y = points[2 * i + 1] + leg.dy * before;
    straights.push({ x, y, length, dx: leg.dx, dy: leg.dy });
    const turn = Math.atan2(leg.dy, leg.dx);
    for (let s = 0; s < length; s += STEP) samples.push([x + leg.dx * s, y + leg.dy * s, turn]);
    const next = legs[i + 1];
    if (next === undefined || cut[i] === 0) return;
    const bend = { x: points[2 * i + 2], y: points[2 * i + 3], radius: cut[i], inX: leg.dx, inY: leg.dy, outX: next.dx, outY: next.dy };
    bends.push(bend);
    const arc = (cut[i] * Math.PI) / 2;
    const sweep = Math.atan2(bend.inX * bend.outY - bend.inY * bend.outX, bend.inX * bend.outX + bend.inY * bend.outY);
    for (let s = 0; s < arc; s += STEP) {
      const t = s / arc;
      const a = 1 - t;
      samples.push([
        bend.x - a * a * bend.inX * bend.radius + t * t * bend.outX * bend.radius,
        bend.y - a * a * bend.inY * bend.radius + t * t * bend.outY * bend.radius,
        turn + sweep * t,
      ]);
    }
  });
  const pick = (k: 0 | 1 | 2): Float32Array => Float32Array.from(samples, (sample) => sample[k]);
  return { straights, bends, length: samples.length * STEP, xs: pick(0), ys: pick(1), turns: pick(2) };
}
