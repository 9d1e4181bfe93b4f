// Reads one number out of a season at a moment: stage, variable, hour. Pure look-ups, nothing is kept or allocated.
import type { Plan } from '../../../season/plan';
import type { SeasonView } from '../common/state';
import { can } from '../common/kinds';

/** Amounts that add up over a long bed's cells; all else is per volume or per area and is averaged. */
const SUMMED: ReadonlySet<string> = new Set([
  'sludge_g',
  'number',
  'eaten_g_d',
  'cut_kg',
  'caught_g',
  'gas_L_d',
  'air_L_min',
  'dose_g_d',
  'spill_m3_d',
]);

/** Whether a variable adds up over the cells of a stage; the others are averaged. */
export const addsUp = (variable: string): boolean => SUMMED.has(variable);

/** Where in a stage to read: "inside" is the mean over its cells (the sum, for amounts), "out" is its last cell. */
export type Where = 'inside' | 'out';

/** Hours for which the season has samples: sample 0 is the start, sample k the end of hour k. */
export function sampleCount(view: SeasonView): number {
  return view.days.length * 24 + 1;
}

/**
 * Value of one variable in one cell at whole sample k.
 * @param column index of the variable (SeasonView.column)
 * @returns the value in the variable's own unit; 0 where the season has no such sample
 */
export function cellSample(view: SeasonView, cell: number, column: number, k: number): number {
  const width = view.variables.length;
  if (k <= 0) return view.initial[cell * width + column] ?? 0;
  const day = view.days[Math.floor((k - 1) / 24)];
  if (day === undefined) return 0;
  return day.hourly[(((k - 1) % 24) * view.cells + cell) * width + column] ?? 0;
}

function stageSample(view: SeasonView, first: number, cells: number, column: number, k: number, where: Where, summed: boolean): number {
  if (where === 'out') return cellSample(view, first + cells - 1, column, k);
  let sum = 0;
  for (let i = 0; i < cells; i += 1) sum += cellSample(view, first + i, column, k);
  return summed ? sum : sum / cells;
}

/**
 * Value of a variable at a stage and a moment, linear between the hourly samples. Beside the variables of the season,
 * "solids" is the sum of coarse and fine, mg/L, which is what comfort bands speak about.
 * @param now_h hours since the start, clamped to what the season holds
 * @returns the value in the variable's own unit (it stands in the name); NaN for an unknown stage, a stage without water of its own (a
 *   pump) or an unknown variable
 */
export function readingAt(view: SeasonView, stageId: string, variable: string, now_h: number, where: Where): number {
  if (variable === 'solids')
    return readingAt(view, stageId, 'solidsCoarse_mg_L', now_h, where) + readingAt(view, stageId, 'solidsFine_mg_L', now_h, where);
  const column = view.column[variable];
  if (column === undefined) return NaN;
  for (let s = 0; s < view.stages.length; s += 1) {
    const stage = view.stages[s];
    if (stage.id !== stageId) continue;
    if (stage.cells <= 0) return NaN;
    const last = view.days.length * 24;
    const t = now_h < 0 ? 0 : now_h > last ? last : now_h;
    const k = Math.floor(t);
    const part = t - k;
    const summed = addsUp(variable);
    const before = stageSample(view, stage.first, stage.cells, column, k, where, summed);
    if (part === 0) return before;
    return before + part * (stageSample(view, stage.first, stage.cells, column, k + 1, where, summed) - before);
  }
  return NaN;
}

/**
 * The stage whose outflow enters this one: the nearest stage upstream that holds water (a pump only passes it on).
 * @returns its id, or null when the stage is not in the loop or nothing else holds water
 */
export function inletOf(plan: Plan, stageId: string): string | null {
  const n = plan.loop.length;
  const at = plan.loop.findIndex((stage) => stage.id === stageId);
  if (at < 0) return null;
  for (let back = 1; back < n; back += 1) {
    const stage = plan.loop[(at - back + n) % n];
    if (!can(stage.kind, 'pumps')) return stage.id;
  }
  return null;
}
