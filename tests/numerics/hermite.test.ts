// Reading between two steps: a cubic through both states and slopes.
import { describe, expect, it } from 'vitest';
import { hermite } from '../../src/numerics/hermite';

const between = (at: number, h: number, y0: number, f0: number, y1: number, f1: number): number => {
  const out = new Float64Array(1);
  hermite(at, h, Float64Array.of(y0), Float64Array.of(f0), Float64Array.of(y1), Float64Array.of(f1), Int32Array.of(0), out);
  return out[0];
};

describe('reading between two steps', () => {
  it('gives back every cubic exactly', () => {
    const cubic = (t: number): number => 7 - 2 * t + 0.5 * t * t + 0.25 * t * t * t;
    const slope = (t: number): number => -2 + t + 0.75 * t * t;
    const h = 1.7;
    for (const at of [0, 0.1, 0.37, 0.5, 0.82, 1])
      expect(between(at, h, cubic(0), slope(0), cubic(h), slope(h))).toBeCloseTo(cubic(at * h), 12);
  });

  it('halving the step cuts its error sixteenfold on a smooth curve (order four)', () => {
    const error = (h: number): number =>
      Math.abs(between(0.4, h, Math.exp(1), Math.exp(1), Math.exp(1 + h), Math.exp(1 + h)) - Math.exp(1 + 0.4 * h));
    expect(Math.log2(error(0.2) / error(0.1))).toBeCloseTo(4, 0);
  });

  it('never shows less than nothing between two amounts, though the cubic dips', () => {
    expect(between(0.5, 1, 0.01, -1, 0.01, 1)).toBe(0);
  });

  it('stays between its ends where a quick transient is over within the step', () => {
    const rate = 40; // relaxes from 8 to 7 in a fortieth of the step
    for (const at of [0.05, 0.2, 0.5, 0.8]) {
      const shown = between(at, 1, 8, -rate, 7 + Math.exp(-rate), -rate * Math.exp(-rate));
      expect(shown).toBeLessThanOrEqual(8);
      expect(shown).toBeGreaterThanOrEqual(7);
    }
  });

  it('leaves a smooth peak inside a step as high as it is', () => {
    // 1 − t² from −1 to 1 has its peak in the middle
    expect(between(0.5, 2, 0, 2, 0, -2)).toBeCloseTo(1, 12);
  });

  it('shows a quantity that is itself below zero as it is', () => {
    expect(between(0.5, 1, -2, 0, -1, 0)).toBeCloseTo(-1.5, 12);
  });
});
