// Small dense linear systems of any size, what the tests solve by: no pivoting, for matrices with a dominant diagonal.

/**
 * Factorises an n×n matrix in place (row-major from `o`) into L and U, the diagonal of U stored inverted.
 * @returns false where a pivot vanishes; the caller then shortens its step.
 */
export function factorise(a: Float64Array, o: number, n: number): boolean {
  for (let k = 0; k < n; k++) {
    const rowK = o + k * n;
    const pivot = a[rowK + k];
    if (!(pivot > 1e-300 || pivot < -1e-300)) return false;
    const inverse = 1 / pivot;
    a[rowK + k] = inverse;
    for (let i = k + 1; i < n; i++) {
      const rowI = o + i * n;
      const below = a[rowI + k];
      if (below === 0) continue;
      const factor = below * inverse;
      a[rowI + k] = factor;
      for (let j = k + 1; j < n; j++) a[rowI + j] -= factor * a[rowK + j];
    }
  }
  return true;
}

/** Solves with the factors of `factorise`; the right-hand side x (from `xo`) becomes the solution. */
export function backSubstitute(a: Float64Array, o: number, n: number, x: Float64Array, xo: number): void {
  for (let i = 1; i < n; i++) {
    const row = o + i * n;
    let sum = x[xo + i];
    for (let j = 0; j < i; j++) sum -= a[row + j] * x[xo + j];
    x[xo + i] = sum;
  }
  for (let i = n - 1; i >= 0; i--) {
    const row = o + i * n;
    let sum = x[xo + i];
    for (let j = i + 1; j < n; j++) sum -= a[row + j] * x[xo + j];
    x[xo + i] = sum * a[row + i];
  }
}
