// Cubic Hermite interpolation between two states and their slopes: dense output at no extra evaluation.

/**
 * State between two times.
 * @param at share of the step, 0–1
 * @param h step length
 * @param out receives the interpolated state, not below zero (a reading, never fed back)
 */
export function hermite(at: number, h: number, y0: Float64Array, f0: Float64Array, y1: Float64Array, f1: Float64Array, out: Float64Array): void {
  const s = at;
  const s2 = s * s;
  const s3 = s2 * s;
  const a0 = 2 * s3 - 3 * s2 + 1;
  const b0 = (s3 - 2 * s2 + s) * h;
  const a1 = 3 * s2 - 2 * s3;
  const b1 = (s3 - s2) * h;
  for (let i = 0; i < out.length; i++) {
    const value = a0 * y0[i] + b0 * f0[i] + a1 * y1[i] + b1 * f1[i];
    out[i] = value > 0 ? value : y0[i] < 0 || y1[i] < 0 ? value : 0;
  }
}
