// The small dense solver against systems whose solutions are known.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backSubstitute, factorise } from './dense';

const solve = (matrix: number[][], right: number[]): number[] => {
  const a = Float64Array.from(matrix.flat());
  const x = Float64Array.from(right);
  expect(factorise(a, 0, right.length)).toBe(true);
  backSubstitute(a, 0, right.length, x, 0);
  return [...x];
};

describe('the dense solver', () => {
  it('solves a system worked out by hand', () => {
    const x = solve(
      [
        [4, 1, 2],
        [1, 5, 1],
        [2, 1, 6],
      ],
      [4 + 2 + 6, 1 + 10 + 3, 2 + 2 + 18],
    );
    [1, 2, 3].forEach((value, i) => expect(x[i]).toBeCloseTo(value, 13));
  });

  it('finds the solution of any diagonally dominant system', () => {
    const entry = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.array(entry, { minLength: 8, maxLength: 8 }), { minLength: 8, maxLength: 8 }),
        fc.array(entry, { minLength: 8, maxLength: 8 }),
        (rows, wanted) => {
          const matrix = rows.map((row, i) => row.map((value, j) => (i === j ? 9 + value : value)));
          const right = matrix.map((row) => row.reduce((sum, value, j) => sum + value * wanted[j], 0));
          solve(matrix, right).forEach((value, i) => expect(Math.abs(value - wanted[i])).toBeLessThan(1e-13));
        },
      ),
      { numRuns: 50, seed: 3 },
    );
  });

  it('works in the midst of a longer array and leaves the rest alone', () => {
    const a = Float64Array.of(99, 2, 1, 1, 3, 99);
    const x = Float64Array.of(77, 3, 4, 77);
    factorise(a, 1, 2);
    backSubstitute(a, 1, 2, x, 1);
    expect(x[1]).toBeCloseTo(1, 14);
    expect(x[2]).toBeCloseTo(1, 14);
    expect([a[0], a[5], x[0], x[3]]).toEqual([99, 99, 77, 77]);
  });

  it('says so where a matrix has no inverse', () => {
    expect(factorise(Float64Array.of(1, 2, 2, 4), 0, 2)).toBe(false);
    expect(factorise(Float64Array.of(NaN, 0, 0, 1), 0, 2)).toBe(false);
  });
});
