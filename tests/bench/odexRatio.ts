// The season's integrator beside odex (npm, explicit extrapolation) on the same right-hand side: the day's segments of a living loop,
// each begun from the same state, forcing frozen as the season froze it. Each is given the loosest tolerance that meets the same error.
import { createRequire } from 'node:module';
import { NO2, NO3, O2, S2, STATES, TAN } from '../../src/model/components';
import { fixDiagonals } from '../../src/model/network/blockSolve';
import { LoopSystem } from '../../src/model/network/loopSystem';
import { Rosenbrock2 } from '../../src/numerics/rosenbrock';
import { Season } from '../../src/season/season';
import type { Plan } from '../../src/season/plan';

interface Odex {
  absoluteTolerance: number | number[];
  relativeTolerance: number | number[];
  initialStepSize: number;
  maxSteps: number;
  solve(
    f: (t: number, y: number[]) => number[],
    t0: number,
    y0: number[],
    t1: number,
    step?: (n: number, from: number, to: number) => void,
  ): { y: number[]; nEval: number; outcome: number };
}
const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (n: number) => Odex };

/** Largest error allowed in any key quantity of any cell. */
export const KEY_ERROR = 0.003;
/** Below this, g/m³, a quantity is not asked to be right in proportion. */
const KEYS: readonly (readonly [number, number])[] = [
  [TAN, 0.05],
  [NO2, 0.05],
  [NO3, 0.5],
  [O2, 0.5],
  [S2, 0.002],
];
const STEP = Math.SQRT2;

interface Segment {
  t0: number;
  t1: number;
  y: Float64Array;
}
interface Run {
  end: Float64Array;
  ms: number;
  evaluations: number;
}
export interface Ratio {
  day: number;
  ours_ms: number;
  odex_ms: number;
  ours_error: number;
  odex_error: number;
  ours_evaluations: number;
  odex_evaluations: number;
  ours_tolerance: number;
  odex_tolerance: number;
  apart: number;
}

/** Everything that a trial run must leave as it found it. */
function guarded<T>(season: Season, body: () => T): T {
  const { data } = season.runtime;
  const kept = [
    data.extents,
    data.clipped,
    data.held,
    data.h,
    data.h1,
    data.received,
    data.released,
    data.r0,
    data.r1,
    data.g,
    data.delta,
  ].map((array) => [array, array.slice()] as const);
  try {
    return body();
  } finally {
    for (const [array, before] of kept) array.set(before);
  }
}

function withTolerance<T>(season: Season, tolerance: number, body: () => T): T {
  const { data } = season.runtime;
  const before = data.tolerance.slice();
  data.tolerance.forEach((value, i) => {
    data.tolerance[i] = (value * tolerance) / 4e-3;
  });
  try {
    return body();
  } finally {
    data.tolerance.set(before);
  }
}

function ours(season: Season, { t0, t1, y }: Segment, tolerance: number, repeats: number): Run {
  return withTolerance(season, tolerance, () =>
    guarded(season, () => {
      const solver = new Rosenbrock2(new LoopSystem(season.runtime.data, tolerance));
      const run = (firstStep: number): { first: number; end: Float64Array; evaluations: number } => {
        const end = y.slice();
        const outcome = solver.integrate(t0, t1, end, { firstStep, minStep: 1e-12, maxStep: 0.25 }, [], () => undefined);
        return { first: outcome.firstAccepted, end, evaluations: outcome.evaluations };
      };
      // a season remembers each segment's first step from the day before
      const first = run(0).first;
      return timed(repeats, () => run(first));
    }),
  );
}

function odex(season: Season, { t0, t1, y }: Segment, tolerance: number, repeats: number): Run {
  return guarded(season, () => {
    const { data, system } = season.runtime;
    const state = new Float64Array(y.length);
    const out = new Float64Array(y.length);
    const f = (t: number, at: number[]): number[] => {
      state.set(at);
      system.slope(t, state, out, 1);
      return Array.from(out);
    };
    const run = (firstStep: number): { first: number; end: Float64Array; evaluations: number } => {
      const solver = new Solver(y.length);
      solver.absoluteTolerance = Array.from(data.tolerance, (value) => (value * tolerance) / 4e-3);
      solver.relativeTolerance = Array.from(data.tolerance, () => tolerance);
      solver.initialStepSize = firstStep;
      solver.maxSteps = 1_000_000;
      let first = firstStep;
      const answer = solver.solve(f, t0, Array.from(y), t1, (n, from, to) => {
        if (n === 2) first = to - from;
      });
      if (answer.outcome !== 0) throw new Error('odex did not reach the end');
      return { first, end: Float64Array.from(answer.y), evaluations: answer.nEval };
    };
    const first = run(1e-4).first;
    return timed(repeats, () => run(first));
  });
}

function timed(repeats: number, run: () => { end: Float64Array; evaluations: number }): Run {
  const times: number[] = [];
  let last = run();
  for (let i = 0; i < repeats; i++) {
    const begin = performance.now();
    last = run();
    times.push(performance.now() - begin);
  }
  times.sort((a, b) => a - b);
  return { end: last.end, evaluations: last.evaluations, ms: times[Math.floor(times.length / 2)] ?? 0 };
}

function errorOf(season: Season, end: Float64Array, exact: Float64Array): number {
  let worst = 0;
  for (const cell of season.runtime.assembly.cells)
    for (const [component, floor] of KEYS) {
      const i = cell.index * STATES + component;
      const size = Math.abs(exact[i]) + floor * cell.volume;
      const error = Math.abs(end[i] - exact[i]) / size;
      if (!(error <= worst)) worst = error;
    }
  return worst;
}

/** The loosest tolerance on a ladder whose worst segment meets the error; then its times over all segments. */
function loosest(
  season: Season,
  segments: readonly Captured[],
  from: number,
  solve: typeof ours,
): { ms: number; error: number; evaluations: number; tolerance: number } {
  for (let tolerance = from; tolerance > 1e-9; tolerance /= STEP) {
    const runs = segments.map((segment) =>
      segment.restore(() => {
        const run = solve(season, segment, tolerance, 0);
        return { error: errorOf(season, run.end, segment.exact) };
      }),
    );
    const error = runs.reduce((most, run) => (run.error <= most ? most : run.error), 0);
    if (!(error <= KEY_ERROR)) continue;
    const measured = segments.map((segment) => segment.restore(() => solve(season, segment, tolerance, 7)));
    return {
      error,
      tolerance,
      ms: measured.reduce((sum, run) => sum + run.ms, 0),
      evaluations: measured.reduce((sum, run) => sum + run.evaluations, 0),
    };
  }
  throw new Error('no tolerance meets the error');
}

type Captured = Segment & { exact: Float64Array; restore<T>(body: () => T): T };

/** Lives the plan to a day and compares on that day's segments. */
export function ratioOn(plan: Plan, day: number): Ratio {
  const season = new Season(plan);
  while (season.day < day) season.liveDay();
  const { solver, data, assembly } = season.runtime;
  const segments: Captured[] = [];
  const integrate = solver.integrate.bind(solver);
  let apart = 0;
  solver.integrate = (t0, t1, y, control, times, output) => {
    // What the season set for this segment, so that it can be set again.
    const cells = assembly.cells.map((cell) => ({ ...cell }));
    const links = data.links.map((link) => ({ ...link }));
    const arrays = [data.constants, data.h, data.h1].map((array) => [array, array.slice()] as const);
    const { light, kinetics, saturation } = data;
    const segment: Captured = {
      t0,
      t1,
      y: y.slice(),
      exact: y,
      restore: (body) => {
        assembly.cells.forEach((cell, i) => Object.assign(cell, cells[i]));
        data.links.forEach((link, i) => Object.assign(link, links[i]));
        for (const [array, before] of arrays) array.set(before);
        Object.assign(data, { light, kinetics, saturation });
        fixDiagonals(data);
        data.r0.fill(0);
        data.r1.fill(0);
        data.g.fill(0);
        data.delta.fill(0);
        return body();
      },
    };
    segment.exact = ours(season, segment, 2e-6, 0).end;
    apart = Math.max(apart, errorOf(season, odex(season, segment, 1e-6, 0).end, segment.exact));
    segments.push(segment);
    return integrate(t0, t1, y, control, times, output);
  };
  season.liveDay();
  const mine = loosest(season, segments, 3e-2, ours);
  const other = loosest(season, segments, 1, odex);
  return {
    day,
    ours_ms: mine.ms,
    odex_ms: other.ms,
    ours_error: mine.error,
    odex_error: other.error,
    ours_evaluations: mine.evaluations,
    odex_evaluations: other.evaluations,
    ours_tolerance: mine.tolerance,
    odex_tolerance: other.tolerance,
    apart,
  };
}
