// Sums over state vectors and stretches of them, seven or eight entries at a time: so short a loop's own upkeep costs as much as what it
// sums.

/** out = a + c b. All of one length. */
export function addScaled(out: Float64Array, a: Float64Array, b: Float64Array, c: number): void {
  const n = out.length;
  let i = 0;
  for (; i < n - 6; i += 7) {
    out[i] = a[i] + c * b[i];
    out[i + 1] = a[i + 1] + c * b[i + 1];
    out[i + 2] = a[i + 2] + c * b[i + 2];
    out[i + 3] = a[i + 3] + c * b[i + 3];
    out[i + 4] = a[i + 4] + c * b[i + 4];
    out[i + 5] = a[i + 5] + c * b[i + 5];
    out[i + 6] = a[i + 6] + c * b[i + 6];
  }
  for (; i < n; i++) out[i] = a[i] + c * b[i];
}

/** out = a + b u + c v, and small = c (u + v). All of one length. */
export function addTwoScaled(
  out: Float64Array,
  small: Float64Array,
  a: Float64Array,
  u: Float64Array,
  v: Float64Array,
  b: number,
  c: number,
): void {
  const n = out.length;
  let i = 0;
  for (; i < n - 6; i += 7) {
    const u0 = u[i],
      u1 = u[i + 1],
      u2 = u[i + 2],
      u3 = u[i + 3],
      u4 = u[i + 4],
      u5 = u[i + 5],
      u6 = u[i + 6];
    const v0 = v[i],
      v1 = v[i + 1],
      v2 = v[i + 2],
      v3 = v[i + 3],
      v4 = v[i + 4],
      v5 = v[i + 5],
      v6 = v[i + 6];
    out[i] = a[i] + b * u0 + c * v0;
    out[i + 1] = a[i + 1] + b * u1 + c * v1;
    out[i + 2] = a[i + 2] + b * u2 + c * v2;
    out[i + 3] = a[i + 3] + b * u3 + c * v3;
    out[i + 4] = a[i + 4] + b * u4 + c * v4;
    out[i + 5] = a[i + 5] + b * u5 + c * v5;
    out[i + 6] = a[i + 6] + b * u6 + c * v6;
    small[i] = c * (u0 + v0);
    small[i + 1] = c * (u1 + v1);
    small[i + 2] = c * (u2 + v2);
    small[i + 3] = c * (u3 + v3);
    small[i + 4] = c * (u4 + v4);
    small[i + 5] = c * (u5 + v5);
    small[i + 6] = c * (u6 + v6);
  }
  for (; i < n; i++) {
    out[i] = a[i] + b * u[i] + c * v[i];
    small[i] = c * (u[i] + v[i]);
  }
}

/** to[o…] += c from[a…], n entries. */
export function addStretch(to: Float64Array, o: number, from: Float64Array, a: number, c: number, n: number): void {
  let i = 0;
  for (; i < n - 6; i += 7) {
    const p = o + i,
      q = a + i;
    to[p] += c * from[q];
    to[p + 1] += c * from[q + 1];
    to[p + 2] += c * from[q + 2];
    to[p + 3] += c * from[q + 3];
    to[p + 4] += c * from[q + 4];
    to[p + 5] += c * from[q + 5];
    to[p + 6] += c * from[q + 6];
  }
  for (; i < n; i++) to[o + i] += c * from[a + i];
}

/** to[o…] = come y[a…] − go y[o…], n entries. */
export function exchangeStretch(to: Float64Array, y: Float64Array, o: number, a: number, come: number, go: number, n: number): void {
  let i = 0;
  for (; i < n - 6; i += 7) {
    const p = o + i,
      q = a + i;
    to[p] = come * y[q] - go * y[p];
    to[p + 1] = come * y[q + 1] - go * y[p + 1];
    to[p + 2] = come * y[q + 2] - go * y[p + 2];
    to[p + 3] = come * y[q + 3] - go * y[p + 3];
    to[p + 4] = come * y[q + 4] - go * y[p + 4];
    to[p + 5] = come * y[q + 5] - go * y[p + 5];
    to[p + 6] = come * y[q + 6] - go * y[p + 6];
  }
  for (; i < n; i++) to[o + i] = come * y[a + i] - go * y[o + i];
}

/** out = a × b entry by entry, from one place up to another. */
export function multiplyStretch(out: Float64Array, a: Float64Array, b: Float64Array, from: number, to: number): void {
  let i = from;
  for (; i < to - 7; i += 8) {
    out[i] = a[i] * b[i];
    out[i + 1] = a[i + 1] * b[i + 1];
    out[i + 2] = a[i + 2] * b[i + 2];
    out[i + 3] = a[i + 3] * b[i + 3];
    out[i + 4] = a[i + 4] * b[i + 4];
    out[i + 5] = a[i + 5] * b[i + 5];
    out[i + 6] = a[i + 6] * b[i + 6];
    out[i + 7] = a[i + 7] * b[i + 7];
  }
  for (; i < to; i++) out[i] = a[i] * b[i];
}

/** out += c (r + s + t), from one place up to another. */
export function addThreeStretch(
  out: Float64Array,
  r: Float64Array,
  s: Float64Array,
  t: Float64Array,
  c: number,
  from: number,
  to: number,
): void {
  let i = from;
  for (; i < to - 6; i += 7) {
    out[i] += c * (r[i] + s[i] + t[i]);
    out[i + 1] += c * (r[i + 1] + s[i + 1] + t[i + 1]);
    out[i + 2] += c * (r[i + 2] + s[i + 2] + t[i + 2]);
    out[i + 3] += c * (r[i + 3] + s[i + 3] + t[i + 3]);
    out[i + 4] += c * (r[i + 4] + s[i + 4] + t[i + 4]);
    out[i + 5] += c * (r[i + 5] + s[i + 5] + t[i + 5]);
    out[i + 6] += c * (r[i + 6] + s[i + 6] + t[i + 6]);
  }
  for (; i < to; i++) out[i] += c * (r[i] + s[i] + t[i]);
}

/** Empties a stretch, from one place up to another: short ones cost a call of the engine's own more than it saves. */
export function emptyStretch(out: Float64Array, from: number, to: number): void {
  let i = from;
  for (; i < to - 6; i += 7) {
    out[i] = 0;
    out[i + 1] = 0;
    out[i + 2] = 0;
    out[i + 3] = 0;
    out[i + 4] = 0;
    out[i + 5] = 0;
    out[i + 6] = 0;
  }
  for (; i < to; i++) out[i] = 0;
}

/** Place of the first entry below zero at or after `from`; the length where there is none. */
export function firstBelowZero(y: Float64Array, from: number): number {
  const n = y.length;
  let i = from;
  for (; i < n - 6; i += 7)
    if (y[i] < 0 || y[i + 1] < 0 || y[i + 2] < 0 || y[i + 3] < 0 || y[i + 4] < 0 || y[i + 5] < 0 || y[i + 6] < 0) break;
  while (i < n && !(y[i] < 0)) i++;
  return i;
}
