// Cubic Hermite interpolation between two states and their slopes: dense output at no extra evaluation.

/** Slopes and rise of a smooth curve agree to this share of the slopes; a quick transient, over before the step is, does not. */
const AGREE = 0.25;

/**
 * State between two times. Where a component's slopes do not fit its rise (it relaxed within a fraction of the step, as a
 * stiff one does), the cubic would swing far past both states; there the slopes are held to three times the rise, which
 * keeps the curve between its ends (Fritsch & Carlson 1980).
 * @param at share of the step, 0–1
 * @param h step length
 * @param places that are asked for
 * @param out receives the interpolated state there, not below zero (a reading, never fed back)
 */
export function hermite(
  at: number,
  h: number,
  y0: Float64Array,
  f0: Float64Array,
  y1: Float64Array,
  f1: Float64Array,
  places: Int32Array,
  out: Float64Array,
): void {
  const s = at;
  const s2 = s * s;
  const s3 = s2 * s;
  const a1 = 3 * s2 - 2 * s3;
  const b0 = s3 - 2 * s2 + s;
  const b1 = s3 - s2;
  for (let k = 0; k < places.length; k++) {
    const i = places[k];
    const begin = y0[i];
    const end = y1[i];
    const rise = end - begin;
    let first = f0[i];
    let last = f1[i];
    if (rise === 0 && first === 0 && last === 0) {
      out[i] = end;
      continue;
    }
    first *= h;
    last *= h;
    if (Math.abs(rise - 0.5 * (first + last)) > AGREE * (Math.abs(first) + Math.abs(last))) {
      first = within(first, 3 * rise);
      last = within(last, 3 * rise);
    }
    const value = begin + a1 * rise + b0 * first + b1 * last;
    out[i] = value > 0 ? value : begin < 0 || end < 0 ? value : 0;
  }
}

/** The number held between zero and a limit of either sign. */
function within(value: number, limit: number): number {
  return limit > 0 ? Math.min(Math.max(value, 0), limit) : Math.max(Math.min(value, 0), limit);
}
