// Many worlds, one plan: every parameter drawn from its range, the seasons lived, and what they show as bands of quantiles.
import { GROUPS } from '../catalogue/values';
import type { Parameter } from '../model/parameters/parameter';
import { exp, ln } from '../numerics/elementary';
import { stream } from '../numerics/streams';
import type { Plan } from './plan';
import { runSeason } from './season';
import { SeasonError } from './seasonError';
import type { SeasonFault } from './seasonError';
import type { SeasonOptions } from './season';
import { stageReading } from './stageReading';
import type { Trajectory, Variable } from './trajectory';

/** A range this many times as high as it is low is drawn by its logarithm: half and double are alike far. */
const WIDE = 3;

/**
 * One value from a parameter's range: a triangle from low to high with its peak at the recorded value, over the value itself,
 * or over its logarithm where the range is positive and at least threefold.
 * @param u even on 0–1
 */
export function drawnValue({ value, low, high }: Parameter, u: number): number {
  if (!(low < high)) return value;
  if (low > 0 && high >= WIDE * low) return Math.min(high, Math.max(low, exp(triangle(ln(low), ln(value), ln(high), u))));
  return triangle(low, value, high, u);
}

/** Inverse of the triangular distribution. */
function triangle(low: number, peak: number, high: number, u: number): number {
  const rising = (peak - low) / (high - low);
  return u < rising ? low + Math.sqrt(u * (high - low) * (peak - low)) : high - Math.sqrt((1 - u) * (high - low) * (high - peak));
}

/**
 * The parameters of one world, by `group.name`: each that has a range, and none that is fixed.
 * Every parameter has its own stream, so that one more parameter, or a pattern, never moves another's draw.
 * @param i number of the world, from 0
 * @param pattern only parameters whose `group.name` it matches; left out: all
 */
export function drawParameters(seed: string, i: number, pattern?: RegExp): Record<string, number> {
  const drawn: Record<string, number> = {};
  for (const [group, parameters] of Object.entries(GROUPS)) {
    for (const [name, parameter] of Object.entries(parameters)) {
      const path = `${group}.${name}`;
      if (parameter.fixed === undefined && parameter.low < parameter.high && (pattern?.test(path) ?? true))
        drawn[path] = drawnValue(parameter, stream(seed, `parameters/${i}/${path}`)());
    }
  }
  return drawn;
}

export interface EnsembleOptions extends Omit<SeasonOptions, 'parameters'> {
  /** quantities followed; default: what a person would measure first */
  variables?: readonly Variable[];
  /** quantiles given, 0–1, ascending; default 0.1, 0.5, 0.9 */
  quantiles?: readonly number[];
  /** seed of the draws; default: the plan's own */
  seed?: string;
  pattern?: RegExp;
}

/** Quantiles of one variable of one stage at the start (day 0) and at the end of each day after: levels[quantile][day]. */
export interface Band {
  stage: string;
  variable: Variable;
  levels: Float64Array[];
}
/** A world whose season could not be lived, and why. */
export interface FailedDraw {
  draw: number;
  reason: string;
  fault?: SeasonFault;
}
export interface Ensemble {
  draws: number;
  quantiles: readonly number[];
  bands: Band[];
  failed: FailedDraw[];
}

const USUAL: readonly Variable[] = [
  'TAN_mgN_L',
  'NO2_mgN_L',
  'NO3_mgN_L',
  'O2_mg_L',
  'pH',
  'H2S_ug_L',
  'solidsFine_mg_L',
  'welfare',
  'rootHealth',
  'leafDry_g_m2',
];
const QUANTILES: readonly number[] = [0.1, 0.5, 0.9];

/**
 * Lives a plan in n drawn worlds. Same plan, seed and n: same bands. Bands are over the worlds that lived to the end; the others are told.
 * @throws RangeError where n is not a whole number from 1, or a quantile lies outside 0–1
 */
export function ensemble(plan: Plan, n: number, options: EnsembleOptions = {}): Ensemble {
  const { variables = USUAL, quantiles = QUANTILES, seed = plan.seed, pattern, ...season } = options;
  if (!Number.isInteger(n) || n < 1) throw new RangeError(`draws: got ${n}, expected a whole number from 1`);
  for (const q of quantiles) if (!(q >= 0 && q <= 1)) throw new RangeError(`quantile: got ${q}, expected 0 to 1`);
  const lived: DailyReadings[] = [];
  const failed: FailedDraw[] = [];
  for (let i = 0; i < n; i++) {
    try {
      lived.push(dailyReadings(runSeason(plan, { ...season, parameters: drawParameters(seed, i, pattern) }), variables));
    } catch (error) {
      failed.push({
        draw: i,
        reason: error instanceof Error ? error.message : String(error),
        ...(error instanceof SeasonError ? { fault: error.fault } : {}),
      });
    }
  }
  const bands = (lived[0] ?? []).map(({ stage, variable, values }, b): Band => ({
    stage,
    variable,
    levels: levelsOf(
      lived.map((one) => one[b].values),
      quantiles,
      values.length,
    ),
  }));
  return { draws: n, quantiles, bands, failed };
}

type DailyReadings = { stage: string; variable: Variable; values: Float64Array }[];

/** What each stage shows at the start and at each day's end. @throws Error where one is no number */
function dailyReadings(t: Trajectory, variables: readonly Variable[]): DailyReadings {
  const size = t.cells * t.variables.length;
  return t.stages.flatMap((stage) =>
    variables.map((variable) => {
      const values = Float64Array.from([
        stageReading(t.initial, 0, t.variables, stage, variable),
        ...t.days.map(({ hourly }) => stageReading(hourly, 23 * size, t.variables, stage, variable)),
      ]);
      const bad = values.findIndex((value) => !Number.isFinite(value));
      if (bad >= 0) throw new Error(`day ${bad}: ${variable} of ${stage.id} is ${values[bad]}`);
      return { stage: stage.id, variable, values };
    }),
  );
}

function levelsOf(runs: readonly Float64Array[], quantiles: readonly number[], days: number): Float64Array[] {
  const levels = quantiles.map(() => new Float64Array(days));
  for (let day = 0; day < days; day++) {
    const sorted = Float64Array.from(runs, (run) => run[day]).sort();
    quantiles.forEach((q, k) => {
      levels[k][day] = quantileOf(sorted, q);
    });
  }
  return levels;
}

/** Between the two nearest of sorted values, by straight line. */
export function quantileOf(sorted: ArrayLike<number>, q: number): number {
  const at = q * (sorted.length - 1);
  const below = Math.floor(at);
  const above = Math.min(below + 1, sorted.length - 1);
  return sorted[below] + (sorted[above] - sorted[below]) * (at - below);
}
