// The elementary functions the engine uses: right to the last digits, and beside the built-in ones.
import { describe, expect, it } from 'vitest';
import { LN10, exp, exp10, ln, log10, pow, sin } from '../../src/numerics/elementary';

const bits = new DataView(new ArrayBuffer(16));
/** Distance of two doubles in units of the last place. */
function apart(a: number, b: number): number {
  bits.setFloat64(0, a);
  bits.setFloat64(8, b);
  const [x, y] = [bits.getBigInt64(0), bits.getBigInt64(8)];
  return Number(x > y ? x - y : y - x);
}
const grid = (from: number, to: number, n = 500): number[] => Array.from({ length: n }, (_, i) => from + ((to - from) * (i + 0.37)) / n);
const ULP = 2;

describe('elementary functions', () => {
  it('know the constants everybody knows', () => {
    expect(apart(exp(1), 2.718281828459045)).toBeLessThanOrEqual(1);
    expect(exp(0)).toBe(1);
    expect(ln(2)).toBe(0.6931471805599453);
    expect(LN10).toBe(2.302585092994046);
    expect(pow(2, 0.5)).toBe(1.4142135623730951);
    expect(sin(Math.PI / 2)).toBe(1);
    expect(exp10(3)).toBe(1000);
    expect(log10(1)).toBe(0);
    expect(log10(1000)).toBeCloseTo(3, 14);
  });

  it.each([
    ['exp', exp, Math.exp, grid(-700, 700)],
    ['ln', ln, Math.log, [...grid(1e-9, 1e-3), ...grid(1e-3, 1e6)]],
    ['sin', sin, Math.sin, grid(-30, 30)],
    ['log10', log10, Math.log10, grid(1.1, 1e6)],
  ] as const)('%s is within two units of the last place of the built-in one', (_name, ours, builtIn, points) => {
    expect(Math.max(...points.map((x) => apart(ours(x), builtIn(x))))).toBeLessThanOrEqual(ULP);
  });

  it('pow is within two units of the last place of the built-in one', () => {
    const worst = grid(0.01, 60, 80).flatMap((x) => grid(-6, 6, 40).map((y) => apart(pow(x, y), Math.pow(x, y))));
    expect(Math.max(...worst)).toBeLessThanOrEqual(ULP);
  });

  it('obey their identities', () => {
    for (const x of grid(-20, 20, 100)) {
      expect(exp(x) * exp(-x)).toBeCloseTo(1, 14);
      expect(ln(exp(x))).toBeCloseTo(x, 13);
      expect(sin(x) * sin(x) + sin(x + Math.PI / 2) * sin(x + Math.PI / 2)).toBeCloseTo(1, 13);
    }
  });

  it('answer the edges of their domain', () => {
    expect(ln(0)).toBe(-Infinity);
    expect(ln(-1)).toBeNaN();
    expect(log10(0)).toBe(-Infinity);
    expect(exp(-1000)).toBe(0);
    expect(exp(1000)).toBe(Infinity);
  });
});
