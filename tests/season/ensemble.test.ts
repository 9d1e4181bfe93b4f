// An ensemble says how far the numbers behind the model leave its answer open: bands, the same for the same seed.
import { describe, expect, it } from 'vitest';
import { GROUPS } from '../../src/catalogue/values';
import { drawParameters, drawnValue, ensemble, quantileOf } from '../../src/season/ensemble';
import type { Band, Ensemble } from '../../src/season/ensemble';
import { referencePlan } from './plans';

const plan = referencePlan({ days: 8 });
const KINETICS = /^(kinetics|matter)\./;
const bandOf = ({ bands }: Ensemble, stage: string, variable: string): Band => {
  const found = bands.find((band) => band.stage === stage && band.variable === variable);
  if (!found) throw new Error(`no band of ${variable} at ${stage}`);
  return found;
};

describe('a drawn world', () => {
  const worlds = Array.from({ length: 300 }, (_, i) => drawParameters('meadow', i));

  it('keeps every parameter within its range and leaves definitions alone', () => {
    const all = Object.entries(GROUPS).flatMap(([group, parameters]) =>
      Object.entries(parameters).map(([name, parameter]) => ({ path: `${group}.${name}`, ...parameter })),
    );
    const free = all.filter(({ low, high, fixed }) => low < high && fixed === undefined);
    expect(Object.keys(worlds[0])).toEqual(free.map(({ path }) => path));
    for (const { path, low, high } of free) {
      const drawn = worlds.map((world) => world[path]);
      expect(Math.min(...drawn), path).toBeGreaterThanOrEqual(low);
      expect(Math.max(...drawn), path).toBeLessThanOrEqual(high);
    }
  });

  it('lies on both sides of the recorded value, as a triangle over a narrow range and over the logarithm of a wide one', () => {
    const narrow = { value: 2, unit: 'd', low: 1, high: 2.5, source: '', flag: 'assumption' } as const;
    const wide = { value: 10, unit: 'd', low: 1, high: 100, source: '', flag: 'assumption' } as const;
    const even = Array.from({ length: 1000 }, (_, i) => (i + 0.5) / 1000);
    // mean of a triangle is that of its corners
    expect(even.reduce((sum, u) => sum + drawnValue(narrow, u), 0) / 1000).toBeCloseTo((1 + 2 + 2.5) / 3, 3);
    expect(drawnValue(wide, 0.5)).toBeCloseTo(10, 9);
    expect(even.filter((u) => drawnValue(wide, u) < Math.sqrt(10)).length / 1000).toBeCloseTo(0.125, 2);
  });

  it('is no echo of its neighbour: draws of one parameter are spread, and two parameters do not move together', () => {
    const a = worlds.map((world) => world['kinetics.rootCoat']);
    const b = worlds.map((world) => world['kinetics.aobCapacity']);
    const mean = (values: number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
    const deviation = (values: number[]): number => Math.sqrt(mean(values.map((value) => (value - mean(values)) ** 2)));
    const together = (x: number[], y: number[]): number =>
      (mean(x.map((value, i) => value * y[i])) - mean(x) * mean(y)) / (deviation(x) * deviation(y));
    expect(Math.abs(together(a, b))).toBeLessThan(0.15);
    expect(Math.abs(together(a.slice(1), a.slice(0, -1)))).toBeLessThan(0.15);
  });

  it('is the same whether all or only some parameters are drawn', () => {
    const some = drawParameters('meadow', 7, /^kinetics\.root/);
    expect(Object.keys(some).length).toBeGreaterThan(3);
    for (const [path, value] of Object.entries(some)) expect(value).toBe(worlds[7][path]);
  });
});

describe('an ensemble', () => {
  const first = ensemble(plan, 6, { variables: ['TAN_mgN_L', 'O2_mg_L'], seed: 'meadow' });

  it('has the same bands for the same seed, others for another', () => {
    expect(ensemble(plan, 6, { variables: ['TAN_mgN_L', 'O2_mg_L'], seed: 'meadow' })).toEqual(first);
    expect(ensemble(plan, 6, { variables: ['TAN_mgN_L', 'O2_mg_L'], seed: 'fen' })).not.toEqual(first);
  });

  it('follows the wished quantities at each stage, day by day, low below middle below high', () => {
    expect(first.failed).toEqual([]);
    expect(new Set(first.bands.map(({ variable }) => variable))).toEqual(new Set(['TAN_mgN_L', 'O2_mg_L']));
    expect(first.bands).toHaveLength(2 * plan.loop.filter(({ kind }) => kind !== 'returnPump').length);
    for (const { levels } of first.bands) {
      expect(levels.map(({ length }) => length)).toEqual([9, 9, 9]);
      for (let day = 0; day <= 8; day++) {
        expect(levels[0][day]).toBeLessThanOrEqual(levels[1][day]);
        expect(levels[1][day]).toBeLessThanOrEqual(levels[2][day]);
      }
    }
    const [low, , high] = bandOf(first, 'fish', 'TAN_mgN_L').levels;
    expect(low[8]).toBeGreaterThan(0);
    expect(high[8]).toBeGreaterThan(1.05 * low[8]);
  });

  it('begins in one water and spreads with the days', () => {
    const {
      levels: [low, , high],
    } = bandOf(ensemble(plan, 5, { variables: ['NO3_mgN_L'], pattern: KINETICS }), 'fish', 'NO3_mgN_L');
    expect(high[0]).toBe(low[0]);
    expect(high[8] - low[8]).toBeGreaterThan(high[1] - low[1]);
  });

  it('tells of worlds that could not be lived, and makes its bands of the others', () => {
    // A tolerance of nothing lets no step pass.
    const none = ensemble(plan, 2, { tolerance: Number.NaN });
    expect(none.failed.map(({ draw }) => draw)).toEqual([0, 1]);
    expect(none.failed[0].reason).toMatch(/step/);
    expect(none.bands).toEqual([]);
  });

  it('refuses a number of draws or a quantile that means nothing', () => {
    expect(() => ensemble(plan, 0)).toThrow('draws: got 0');
    expect(() => ensemble(plan, 2, { quantiles: [0.1, 1.2] })).toThrow('quantile: got 1.2');
  });
});

describe('a quantile', () => {
  it('is read between the two nearest values', () => {
    expect(quantileOf([1, 2, 4], 0.5)).toBe(2);
    expect(quantileOf([1, 2, 4], 0.75)).toBe(3);
    expect(quantileOf([5], 0.9)).toBe(5);
  });
});
