// A six-by-six system factorised, written out: no pivoting, for matrices with a dominant diagonal.

/** No pivot may be smaller. */
const LEAST = 1e-300;
const vanishes = (pivot: number): boolean => !(pivot > LEAST || pivot < -LEAST);

/**
 * Factorises in place (row-major from `o`) into L and U, the diagonal of U stored inverted.
 * @returns false where a pivot vanishes; the caller then shortens its step
 */
export function factoriseSix(a: Float64Array, o: number): boolean {
  // Row by row: what stands above each pivot is taken off it.
  const u01 = a[o + 1],
    u02 = a[o + 2],
    u03 = a[o + 3],
    u04 = a[o + 4],
    u05 = a[o + 5];
  if (vanishes(a[o])) return false;
  const d0 = 1 / a[o];
  a[o] = d0;
  const l10 = a[o + 6] * d0;
  const p1 = a[o + 7] - l10 * u01;
  if (vanishes(p1)) return false;
  const d1 = 1 / p1;
  const u12 = a[o + 8] - l10 * u02;
  const u13 = a[o + 9] - l10 * u03;
  const u14 = a[o + 10] - l10 * u04;
  const u15 = a[o + 11] - l10 * u05;
  a[o + 6] = l10;
  a[o + 7] = d1;
  a[o + 8] = u12;
  a[o + 9] = u13;
  a[o + 10] = u14;
  a[o + 11] = u15;
  const l20 = a[o + 12] * d0;
  const l21 = (a[o + 13] - l20 * u01) * d1;
  const p2 = a[o + 14] - l20 * u02 - l21 * u12;
  if (vanishes(p2)) return false;
  const d2 = 1 / p2;
  const u23 = a[o + 15] - l20 * u03 - l21 * u13;
  const u24 = a[o + 16] - l20 * u04 - l21 * u14;
  const u25 = a[o + 17] - l20 * u05 - l21 * u15;
  a[o + 12] = l20;
  a[o + 13] = l21;
  a[o + 14] = d2;
  a[o + 15] = u23;
  a[o + 16] = u24;
  a[o + 17] = u25;
  const l30 = a[o + 18] * d0;
  const l31 = (a[o + 19] - l30 * u01) * d1;
  const l32 = (a[o + 20] - l30 * u02 - l31 * u12) * d2;
  const p3 = a[o + 21] - l30 * u03 - l31 * u13 - l32 * u23;
  if (vanishes(p3)) return false;
  const d3 = 1 / p3;
  const u34 = a[o + 22] - l30 * u04 - l31 * u14 - l32 * u24;
  const u35 = a[o + 23] - l30 * u05 - l31 * u15 - l32 * u25;
  a[o + 18] = l30;
  a[o + 19] = l31;
  a[o + 20] = l32;
  a[o + 21] = d3;
  a[o + 22] = u34;
  a[o + 23] = u35;
  const l40 = a[o + 24] * d0;
  const l41 = (a[o + 25] - l40 * u01) * d1;
  const l42 = (a[o + 26] - l40 * u02 - l41 * u12) * d2;
  const l43 = (a[o + 27] - l40 * u03 - l41 * u13 - l42 * u23) * d3;
  const p4 = a[o + 28] - l40 * u04 - l41 * u14 - l42 * u24 - l43 * u34;
  if (vanishes(p4)) return false;
  const d4 = 1 / p4;
  const u45 = a[o + 29] - l40 * u05 - l41 * u15 - l42 * u25 - l43 * u35;
  a[o + 24] = l40;
  a[o + 25] = l41;
  a[o + 26] = l42;
  a[o + 27] = l43;
  a[o + 28] = d4;
  a[o + 29] = u45;
  const l50 = a[o + 30] * d0;
  const l51 = (a[o + 31] - l50 * u01) * d1;
  const l52 = (a[o + 32] - l50 * u02 - l51 * u12) * d2;
  const l53 = (a[o + 33] - l50 * u03 - l51 * u13 - l52 * u23) * d3;
  const l54 = (a[o + 34] - l50 * u04 - l51 * u14 - l52 * u24 - l53 * u34) * d4;
  const p5 = a[o + 35] - l50 * u05 - l51 * u15 - l52 * u25 - l53 * u35 - l54 * u45;
  if (vanishes(p5)) return false;
  const d5 = 1 / p5;
  a[o + 30] = l50;
  a[o + 31] = l51;
  a[o + 32] = l52;
  a[o + 33] = l53;
  a[o + 34] = l54;
  a[o + 35] = d5;
  return true;
}
