// Sums written seven at a time, against the plain loops they stand for, at every length about a multiple of seven.
import { describe, expect, it } from 'vitest';
import { stream } from '../../src/numerics/streams';
import {
  addScaled,
  addStretch,
  addThreeStretch,
  addTwoScaled,
  emptyStretch,
  exchangeStretch,
  firstBelowZero,
  multiplyStretch,
} from '../../src/numerics/vectors';

const LENGTHS = [0, 1, 6, 7, 8, 13, 14, 15, 49, 50];
const draw = stream('vectors', 'test');
const random = (n: number): Float64Array => Float64Array.from({ length: n }, () => draw() - 0.5);

describe('sums over vectors', () => {
  it.each(LENGTHS)('of %i entries are those of a plain loop, bit for bit', (n) => {
    const [a, b, u, v] = [random(n), random(n), random(n), random(n)];
    const [out, small] = [random(n), random(n)];
    addScaled(out, a, b, 0.3);
    expect(out).toEqual(a.map((x, i) => x + 0.3 * b[i]));
    addTwoScaled(out, small, a, u, v, 0.3, -0.7);
    expect(out).toEqual(a.map((x, i) => x + 0.3 * u[i] + -0.7 * v[i]));
    expect(small).toEqual(u.map((x, i) => -0.7 * (x + v[i])));
  });

  it.each(LENGTHS)('over stretches of %i entries leave alone what lies beside them', (n) => {
    const [begin, from] = [random(n + 5), random(n + 9)];
    const inside = (i: number, first: number): boolean => i >= first && i < first + n;
    const sum = begin.slice();
    addStretch(sum, 2, from, 4, 0.3, n);
    expect(sum).toEqual(begin.map((x, i) => (inside(i, 2) ? x + 0.3 * from[i + 2] : x)));
    const moved = begin.slice();
    exchangeStretch(moved, from, 2, 4, 0.3, 0.7, n);
    expect(moved).toEqual(begin.map((x, i) => (inside(i, 2) ? 0.3 * from[i + 2] - 0.7 * from[i] : x)));
    const product = begin.slice();
    multiplyStretch(product, from, sum, 2, 2 + n);
    expect(product).toEqual(begin.map((x, i) => (inside(i, 2) ? from[i] * sum[i] : x)));
    const emptied = begin.slice();
    emptyStretch(emptied, 2, 2 + n);
    expect(emptied).toEqual(begin.map((x, i) => (inside(i, 2) ? 0 : x)));
    const three = begin.slice();
    addThreeStretch(three, from, sum, moved, 0.3, 2, 2 + n);
    expect(three).toEqual(begin.map((x, i) => (inside(i, 2) ? x + 0.3 * (from[i] + sum[i] + moved[i]) : x)));
  });

  it.each(LENGTHS)('find each entry below zero among %i', (n) => {
    const y = random(n).map(Math.abs);
    expect(firstBelowZero(y, 0)).toBe(n);
    for (let at = 0; at < n; at++) {
      const one = y.slice();
      one[at] = -1;
      for (let from = 0; from < n; from++) expect(firstBelowZero(one, from)).toBe(from <= at ? at : n);
    }
    expect(firstBelowZero(Float64Array.of(0, -0, Number.NaN), 0)).toBe(3);
  });
});
