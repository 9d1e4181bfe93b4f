// The integrator against answers known in closed form. The method: Verwer, Spee, Blom & Hundsdorfer 1999, SIAM J. Sci. Comput. 20:1456.
import { describe, expect, it } from 'vitest';
import { Rosenbrock2 } from '../../src/numerics/rosenbrock';
import type { Control } from '../../src/numerics/rosenbrock';
import { DenseSystem } from './denseSystem';
import type { Problem } from './denseSystem';

const nothing = (): void => undefined;
const adaptive: Control = { firstStep: 0, minStep: 1e-12, maxStep: Infinity };

/** Error at the end after n equal steps. */
function errorOf(problem: Problem, start: number[], end: number[], t1: number, n: number): number {
  const y = Float64Array.from(start);
  new Rosenbrock2(new DenseSystem(problem, Infinity)).integrate(
    0,
    t1,
    y,
    { firstStep: t1 / n, minStep: 1e-12, maxStep: t1 / n },
    [],
    nothing,
  );
  return Math.max(...end.map((value, i) => Math.abs(y[i] - value)));
}

/** Order seen when the steps are halved. */
const orderOf = (problem: Problem, start: number[], end: number[], t1: number, n: number): number =>
  Math.log2(errorOf(problem, start, end, t1, n) / errorOf(problem, start, end, t1, 2 * n));

const decay = (rate: number, share: number): Problem => ({
  size: 1,
  slope: (_t, y, out) => {
    out[0] = -rate * y[0];
  },
  jacobian: (_t, _y, w) => {
    w[0] = -rate * share;
  },
});
/** y' = −λ (y − cos t): y → (λ² cos t + λ sin t)/(λ² + 1) + c e^(−λt) */
const follows = (rate: number, share: number): Problem => ({
  size: 1,
  slope: (t, y, out) => {
    out[0] = -rate * (y[0] - Math.cos(t));
  },
  jacobian: (_t, _y, w) => {
    w[0] = -rate * share;
  },
});
const followed = (rate: number, t: number): number =>
  (rate * rate * Math.cos(t) + rate * Math.sin(t)) / (rate * rate + 1) + Math.exp(-rate * t) * (0 - (rate * rate) / (rate * rate + 1));
/** Two modes, of rates 1 and 40: y = (a e^−t + b e^−40t, a e^−t − b e^−40t) */
const twoModes = (share: number): Problem => ({
  size: 2,
  slope: (_t, y, out) => {
    out[0] = -20.5 * y[0] + 19.5 * y[1];
    out[1] = 19.5 * y[0] - 20.5 * y[1];
  },
  jacobian: (_t, _y, w) => {
    w.set([-20.5 * share, 19.5 * share, 19.5 * share, -20.5 * share]);
  },
});
const logistic = (share: number): Problem => ({
  size: 1,
  slope: (_t, y, out) => {
    out[0] = 3 * y[0] * (1 - y[0]);
  },
  jacobian: (_t, y, w) => {
    w[0] = share * 3 * (1 - 2 * y[0]);
  },
});

describe('halving the step quarters the error (order two), whatever is left out of W', () => {
  it.each([
    ['the whole Jacobian', 1],
    ['half of it', 0.5],
    ['nothing of it', 0],
  ])('with W = %s', (_name, share) => {
    expect(orderOf(decay(2, share), [1], [Math.exp(-2)], 1, 64)).toBeCloseTo(2, 1);
    expect(orderOf(follows(5, share), [0], [followed(5, 2)], 2, 256)).toBeCloseTo(2, 1);
    expect(
      orderOf(twoModes(share), [1.5, 0.5], [Math.exp(-1) + 0.5 * Math.exp(-40), Math.exp(-1) - 0.5 * Math.exp(-40)], 1, 1024),
    ).toBeCloseTo(2, 1);
    const end = 1 / (1 + 9 * Math.exp(-3));
    expect(orderOf(logistic(share), [0.1], [end], 1, 128)).toBeCloseTo(2, 1);
  });

  it('and with a W that is simply wrong', () => {
    expect(orderOf(decay(2, -0.7), [1], [Math.exp(-2)], 1, 256)).toBeCloseTo(2, 1);
  });
});

describe('very stiff systems', () => {
  it('a step a million times too long for the mode ends at its rest (L-stable)', () => {
    const y = Float64Array.from([1]);
    new Rosenbrock2(new DenseSystem(decay(1e6, 1), Infinity)).integrate(0, 1, y, { firstStep: 1, minStep: 1e-12, maxStep: 1 }, [], nothing);
    expect(Math.abs(y[0])).toBeLessThan(1e-5);
  });

  it('a longer step damps more, not less', () => {
    const left = [1e2, 1e4, 1e6, 1e8].map((rate) => {
      const y = Float64Array.from([1]);
      new Rosenbrock2(new DenseSystem(decay(rate, 1), Infinity)).integrate(
        0,
        1,
        y,
        { firstStep: 1, minStep: 1e-12, maxStep: 1 },
        [],
        nothing,
      );
      return Math.abs(y[0]);
    });
    for (let i = 1; i < left.length; i++) expect(left[i]).toBeLessThan(left[i - 1]);
  });

  it('a mode of 10⁶ a day tied to a slow swing is followed at the pace of the swing', () => {
    // (y, c, s): y → c at 10⁶, while (c, s) turns once in 2π: y ends at cos t
    const swing: Problem = {
      size: 3,
      slope: (_t, y, out) => {
        out[0] = -1e6 * (y[0] - y[1]);
        out[1] = -y[2];
        out[2] = y[1];
      },
      jacobian: (_t, _y, w) => {
        w.set([-1e6, 1e6, 0, 0, 0, -1, 0, 1, 0]);
      },
    };
    const y = Float64Array.from([1, 1, 0]);
    const outcome = new Rosenbrock2(new DenseSystem(swing, 1e-4)).integrate(0, 3, y, adaptive, [], nothing);
    expect(Math.abs(y[0] - Math.cos(3))).toBeLessThan(1e-3);
    expect(outcome.steps).toBeLessThan(500);
  });

  it('one driven by the clock itself stays right, at the price of short steps: W knows no derivative to time', () => {
    const y = Float64Array.from([1]);
    new Rosenbrock2(new DenseSystem(follows(1e6, 1), 1e-3)).integrate(0, 3, y, adaptive, [], nothing);
    expect(Math.abs(y[0] - Math.cos(3))).toBeLessThan(1e-2);
  });
});

describe('control of the error', () => {
  it.each([1e-3, 1e-5, 1e-7])('a tolerance of %f is met, within a factor of ten, in every problem', (tolerance) => {
    const run = (problem: Problem, start: number, t1: number): number => {
      const y = Float64Array.from([start]);
      new Rosenbrock2(new DenseSystem(problem, tolerance)).integrate(0, t1, y, adaptive, [], nothing);
      return y[0];
    };
    expect(Math.abs(run(follows(50, 1), 0, 3) - followed(50, 3))).toBeLessThan(10 * tolerance);
    expect(Math.abs(run(follows(50, 0.5), 0, 3) - followed(50, 3))).toBeLessThan(10 * tolerance);
    expect(Math.abs(run(logistic(1), 0.1, 2) - 1 / (1 + 9 * Math.exp(-6)))).toBeLessThan(10 * tolerance);
  });

  it('a tighter tolerance costs more steps and gives less error', () => {
    const runs = [1e-2, 1e-4, 1e-6].map((tolerance) => {
      const y = Float64Array.from([0]);
      const { steps } = new Rosenbrock2(new DenseSystem(follows(50, 1), tolerance)).integrate(0, 3, y, adaptive, [], nothing);
      return { steps, error: Math.abs(y[0] - followed(50, 3)) };
    });
    expect(runs[1].steps).toBeGreaterThan(runs[0].steps);
    expect(runs[2].steps).toBeGreaterThan(runs[1].steps);
    expect(runs[2].error).toBeLessThan(runs[0].error);
  });

  it('a first step far too long is rejected, and the answer is as good as ever', () => {
    const y = Float64Array.from([0]);
    const outcome = new Rosenbrock2(new DenseSystem(follows(50, 0), 1e-5)).integrate(
      0,
      3,
      y,
      { firstStep: 3, minStep: 1e-12, maxStep: 3 },
      [],
      nothing,
    );
    expect(outcome.rejections).toBeGreaterThan(0);
    expect(Math.abs(y[0] - followed(50, 3))).toBeLessThan(1e-4);
  });

  it('the accepted steps add up to the whole span: the last one lands on its end', () => {
    const system = new DenseSystem(follows(50, 1), 1e-4);
    const outcome = new Rosenbrock2(system).integrate(0.1, 2.7, Float64Array.from([0]), adaptive, [], nothing);
    expect(system.taken).toHaveLength(outcome.steps);
    expect(system.taken.reduce((sum, h) => sum + h, 0)).toBeCloseTo(2.6, 12);
    expect(system.taken.at(-1)).toBe(outcome.lastStep);
  });
});

describe('a system that cannot be solved is given up, never looped over', () => {
  const never = (slope: Problem['slope']): DenseSystem => new DenseSystem({ size: 1, slope, jacobian: (_t, _y, w) => w.fill(0) }, 1e-6);

  it('slopes that are not numbers', () => {
    expect(() =>
      new Rosenbrock2(
        never((_t, _y, out) => {
          out[0] = NaN;
        }),
      ).integrate(0, 1, Float64Array.from([1]), { ...adaptive, minStep: 1e-9 }, [], nothing),
    ).toThrow(/step fell below/);
  });

  it('a solution that runs to infinity before the end', () => {
    // y' = y², y(0) = 1 has no value beyond t = 1
    expect(() =>
      new Rosenbrock2(
        never((_t, y, out) => {
          out[0] = y[0] * y[0];
        }),
      ).integrate(0, 2, Float64Array.from([1]), { ...adaptive, minStep: 1e-9 }, [], nothing),
    ).toThrow();
  });

  it('a matrix that can never be factorised', () => {
    const singular = never((_t, y, out) => {
      out[0] = -y[0];
    });
    singular.factor = () => false;
    expect(() => new Rosenbrock2(singular).integrate(0, 1, Float64Array.from([1]), { ...adaptive, minStep: 1e-9 }, [], nothing)).toThrow(
      /step fell below/,
    );
  });
});

describe('output between steps', () => {
  it('is of third order or better in the step, and comes once for every time, in order', () => {
    const times = Array.from({ length: 37 }, (_, i) => (i + 1) / 38);
    const worst = (n: number): number => {
      const seen: number[] = [];
      let most = 0;
      const y = Float64Array.from([1]);
      // the slope hangs on time alone, so what is wrong between the nodes is the interpolation
      const problem: Problem = {
        size: 1,
        slope: (t, _y, out) => {
          out[0] = Math.cos(3 * t) * 3;
        },
        jacobian: (_t, _y, w) => w.fill(0),
      };
      new Rosenbrock2(new DenseSystem(problem, Infinity)).integrate(
        0,
        1,
        y,
        { firstStep: 1 / n, minStep: 1e-12, maxStep: 1 / n },
        times,
        (i, at) => {
          seen.push(i);
          most = Math.max(most, Math.abs(at[0] - interpolant(times[i], n)));
        },
      );
      expect(seen).toEqual(times.map((_, i) => i));
      return most;
    };
    /** The exact solution through the step's own start: sin 3t shifted by the trapezoidal rule's error at that node. */
    function interpolant(t: number, n: number): number {
      const k = Math.min(n - 1, Math.floor(t * n));
      let node = 1;
      for (let i = 0; i < k; i++) node += (3 / (2 * n)) * (Math.cos((3 * i) / n) + Math.cos((3 * (i + 1)) / n));
      return node + Math.sin(3 * t) - Math.sin((3 * k) / n);
    }
    expect(Math.log2(worst(16) / worst(32))).toBeGreaterThan(2.7);
  });
});
