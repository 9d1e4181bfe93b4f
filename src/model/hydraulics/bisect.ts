// Halving an interval a fixed number of times: the same bits on every engine, and never more work than stated.

/** 2⁻³² of the interval is left: a hundredth of a millilitre a day where a pump gives forty cubic metres. */
const HALVINGS = 32;

/**
 * Largest x from 0 to `high` at which `holds` is still true; 0 if it never is.
 * @param holds true below some x and false above it
 */
export function largestWhere(high: number, holds: (x: number) => boolean): number {
  if (holds(high)) return high;
  let low = 0;
  let top = high;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + top) / 2;
    if (holds(middle)) low = middle;
    else top = middle;
  }
  return low;
}
