// Abdalla A.A.F., McNabb C.D. 1998, Acute and sublethal growth effects of un-ionized ammonia to Nile tilapia (abstract seen): over 35 days
// weight gain falls evenly with ammonia (r² 0.90): no loss at 0.06, half at 0.73 and all of it at 1.46 mg/L NH3-N. Published, 28 °C.
import { describe, expect, it } from 'vitest';
import { gainInAmmonia } from './fishCases';

const DOSES = [0, 0.06, 0.4, 0.73, 1.1, 1.46];

/** Square of the correlation of two rows of numbers. */
function r2(x: readonly number[], y: readonly number[]): number {
  const mean = (row: readonly number[]): number => row.reduce((a, b) => a + b, 0) / row.length;
  const [mx, my] = [mean(x), mean(y)];
  const sum = (f: (i: number) => number): number => x.reduce((total, _, i) => total + f(i), 0);
  const both = sum((i) => (x[i] - mx) * (y[i] - my));
  return (both * both) / (sum((i) => (x[i] - mx) * (x[i] - mx)) * sum((i) => (y[i] - my) * (y[i] - my)));
}

describe('un-ionised ammonia and the growth of Nile tilapia', () => {
  const found = DOSES.map(gainInAmmonia);
  const [none, little, , half, , all] = found.map(({ gain }) => gain);

  it('is held at its dose', () => {
    found.forEach(({ found: NH3 }, i) => {
      expect(Math.abs(NH3 - DOSES[i])).toBeLessThan(0.02 + 0.02 * DOSES[i]);
    });
  });

  it('costs nothing at 0.06 mg/L, within 2 %', () => {
    expect(little / none).toBeGreaterThan(0.98);
  });

  it('costs half of it at 0.73 mg/L, within 15 points', () => {
    // The model: 62 %. Half of the appetite is gone; basal life takes its share of what is left.
    expect(Math.abs(half / none - 0.5)).toBeLessThan(0.15);
  });

  it('costs all of it at 1.46 mg/L, within 5 points', () => {
    expect(Math.abs(all / none)).toBeLessThan(0.05);
  });

  it('costs the more the more there is, as evenly as measured: r² 0.90 or better', () => {
    expect(
      r2(
        DOSES,
        found.map(({ gain }) => gain),
      ),
    ).toBeGreaterThan(0.9);
  });
});
