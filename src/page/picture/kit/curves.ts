// Curves and repeatable scatter for drawings: smooth closed outlines through points, and a small seeded stream.

export type Point = readonly [number, number];

/** A repeatable stream of numbers in [0, 1) for the scatter of a drawing; the same seed gives the same picture. */
export function scatter(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const tenth = (x: number): number => Math.round(x * 10) / 10;

/** Path data of a smooth curve through points (Catmull–Rom as Bézier pieces). */
export function smooth(points: readonly Point[], closed = false): string {
  const last = points[points.length - 1];
  const q = closed ? [last, ...points, points[0], points[1]] : [points[0], ...points, last];
  let d = `M${tenth(q[1][0])} ${tenth(q[1][1])}`;
  for (let i = 1; i < q.length - 2; i += 1) {
    const [p0, p1, p2, p3] = [q[i - 1], q[i], q[i + 1], q[i + 2]];
    d += `C${tenth(p1[0] + (p2[0] - p0[0]) / 6)} ${tenth(p1[1] + (p2[1] - p0[1]) / 6)} ${tenth(p2[0] - (p3[0] - p1[0]) / 6)} ${tenth(p2[1] - (p3[1] - p1[1]) / 6)} ${tenth(p2[0])} ${tenth(p2[1])}`;
  }
  return closed ? d + 'Z' : d;
}

/** Path data of a polyline (x, y, x, y …) with rounded corners. */
export function rounded(points: readonly number[], radius: number): string {
  const n = points.length / 2;
  let d = `M${points[0]} ${points[1]}`;
  for (let i = 1; i < n; i += 1) {
    const bx = points[2 * i];
    const by = points[2 * i + 1];
    if (i === n - 1) return d + `L${bx} ${by}`;
    const ax = points[2 * i - 2] - bx;
    const ay = points[2 * i - 1] - by;
    const cx = points[2 * i + 2] - bx;
    const cy = points[2 * i + 3] - by;
    const la = Math.hypot(ax, ay) || 1;
    const lc = Math.hypot(cx, cy) || 1;
    const k = Math.min(radius, la / 2, lc / 2);
    d += `L${tenth(bx + (ax / la) * k)} ${tenth(by + (ay / la) * k)}Q${bx} ${by} ${tenth(bx + (cx / lc) * k)} ${tenth(by + (cy / lc) * k)}`;
  }
  return d;
}
