// The pH inside a step against the careful solver of model/equilibrium, and the slopes that gas transfer takes from it.
import { describe, expect, it } from 'vitest';
import { ALK, ATOM, IC, P, S2, STATES, TAN } from '../../src/model/components';
import { conditionalConstants, CONDITIONAL_LENGTH } from '../../src/model/equilibrium/conditional';
import { carbonDioxideSlopes, solveH } from '../../src/model/equilibrium/solve';
import { acidBase } from '../../src/model/network/acidBase';
import { makeWorkspace } from '../../src/model/network/slope';
import { stream } from '../../src/numerics/streams';
import { livedLoop } from './tinyLoop';

const { data } = livedLoop({ days: 2 }).runtime;
const k = new Float64Array(CONDITIONAL_LENGTH);
const draw = stream('waters', 'acid');

interface Water {
  y: Float64Array;
  A: number;
  totals: { carbon: number; ammonia: number; sulfide: number; phosphate: number };
}
function water(): Water {
  conditionalConstants(5 + 30 * draw(), 0.03 * draw(), k, 0);
  const totals = { carbon: 0.05 + 5 * draw(), ammonia: 2 * draw(), sulfide: 0.05 * draw(), phosphate: 0.5 * draw() };
  const A = totals.carbon * (0.2 + 1.2 * draw());
  const y = new Float64Array(STATES);
  y[IC] = totals.carbon;
  y[ALK] = A;
  y[TAN] = totals.ammonia * ATOM.N;
  y[S2] = totals.sulfide * ATOM.S;
  y[P] = totals.phosphate * ATOM.P;
  return { y, A, totals };
}
function settled(y: Float64Array, guess: number, times: number): ReturnType<typeof makeWorkspace> {
  const w = makeWorkspace(data);
  w.y = y;
  w.o = 0;
  w.perVolume = 1;
  w.h = guess;
  for (let i = 0; i < times; i++) acidBase(w, k, 0);
  return w;
}

describe('the pH of a cell', () => {
  it('is that of the careful solver, within 0.001, from the last answer or from far away', () => {
    for (let i = 0; i < 300; i++) {
      const { y, A, totals } = water();
      const exact = solveH(A, totals, k, 0);
      for (const guess of [1e-4, 1e-7, 1, exact * 1.2])
        expect(Math.abs(Math.log10(settled(y, guess, 1).h / exact)), `guess ${guess}`).toBeLessThan(0.001);
    }
  });

  it('holds for waters without any alkalinity, and for acid ones', () => {
    for (const A of [0, -0.1, -2]) {
      const { y, totals } = water();
      y[ALK] = A;
      expect(Math.log10(settled(y, 1e-4, 1).h / solveH(A, totals, k, 0))).toBeCloseTo(0, 3);
    }
  });

  it('gives carbon dioxide slopes that agree with the careful ones and with differences', () => {
    const slopes = new Float64Array(2);
    for (let i = 0; i < 100; i++) {
      const { y, totals } = water();
      const w = settled(y, 1e-4, 4);
      carbonDioxideSlopes(w.h, totals, k, 0, slopes, 0);
      expect(Math.abs(w.co2IC - slopes[0])).toBeLessThan(1e-6 + 1e-4 * Math.abs(slopes[0]));
      expect(Math.abs(w.co2ALK - slopes[1])).toBeLessThan(1e-6 + 1e-4 * Math.abs(slopes[1]));
      for (const [row, slope] of [
        [IC, slopes[0]],
        [ALK, slopes[1]],
      ] as const) {
        const step = 1e-4 * Math.max(0.1, y[row]);
        const [more, less] = [y.slice(), y.slice()];
        more[row] += step;
        less[row] -= step;
        const difference = (settled(more, w.h, 4).co2 - settled(less, w.h, 4).co2) / (2 * step);
        expect(Math.abs(slope - difference)).toBeLessThan(1e-4 + 0.01 * Math.abs(difference));
      }
    }
  });

  it('stays where a rig pins it', () => {
    const w = makeWorkspace(data);
    w.y = water().y;
    w.o = 0;
    w.perVolume = 1;
    w.pinned = 3e-5;
    acidBase(w, k, 0);
    expect(w.h).toBe(3e-5);
    expect(w.co2ALK).toBe(0);
  });
});
