// Halving an interval a fixed number of times: the same bits on every engine, and never more work than stated.

/** 2⁻⁵⁰ of the interval is left: finer than any flow can be told. */
const HALVINGS = 50;

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
