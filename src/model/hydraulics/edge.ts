// The edge of what holds: a falling margin's zero, held between two bounds all the time. The same bits on every engine, and never
// more work than stated. Halving, or where the last three margins lie smoothly the inverse parabola through them (Chandrupatla 1997).

/** 2⁻³⁶ of the interval is left: a thousandth of a millilitre a day where a pump gives forty cubic metres. */
const LEFT = 1.4551915228366852e-11;
const MOST_TRIES = 64;

/**
 * Largest x from 0 to `high` at which the margin is not yet below zero; 0 where it is below zero everywhere.
 * @param margin must not rise with x; a jump in it is found as well, in more tries
 */
export function largestWhere(high: number, margin: (x: number) => number): number {
  const atHigh = margin(high);
  if (atHigh >= 0) return high;
  const atNone = margin(0);
  if (!(atNone >= 0)) return 0;
  // a is the last try, b the bound on the other side of the edge, c the try before.
  let a = high,
    atA = atHigh,
    b = 0,
    atB = atNone;
  let share = 0.5;
  for (let i = 0; i < MOST_TRIES; i++) {
    const x = a + share * (b - a);
    const value = margin(x);
    let c = a,
      atC = atA;
    if (value >= 0 !== atA >= 0) {
      c = b;
      atC = atB;
      b = a;
      atB = atA;
    }
    a = x;
    atA = value;
    const width = Math.abs(b - a);
    const least = (LEFT * high) / width;
    if (least >= 1) break;
    const along = (a - b) / (c - b);
    const up = (atA - atB) / (atC - atB);
    share =
      up * up < along && (1 - up) * (1 - up) < 1 - along
        ? (atA / (atB - atA)) * (atC / (atB - atC)) + ((c - a) / (b - a)) * (atA / (atC - atA)) * (atB / (atC - atB))
        : 0.5;
    share = Math.min(1 - least / 2, Math.max(least / 2, share));
  }
  return atA >= 0 ? a : b;
}
