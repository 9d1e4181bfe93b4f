// What the picture reads out of a season beyond single stages: one cell of a bed, what a lens shows, and the band that colours it.
import type { SeasonView } from '../store/state';
import type { Lens } from '../store/lenses';
import { cellSample, readingAt } from '../store/readings';
import type { StageCells } from './terms';

/** Value of a variable in one cell of a stage, linear between hourly samples; cells are counted from the inlet. */
export function cellValue(view: SeasonView, stage: StageCells, cell: number, variable: string, now_h: number): number {
  const column = view.column[variable];
  if (column === undefined || stage.cells <= 0) return NaN;
  const at = stage.first + Math.max(0, Math.min(stage.cells - 1, cell));
  const t = Math.max(0, Math.min(view.days.length * 24, now_h));
  const k = Math.floor(t);
  const before = cellSample(view, at, column, k);
  return t === k ? before : before + (t - k) * (cellSample(view, at, column, k + 1) - before);
}

/** What a lens shows at a stage: the sum of its variables, mean over the cells. */
export function lensValue(view: SeasonView, lens: Lens, stageId: string, now_h: number): number {
  let sum = 0;
  for (let i = 0; i < lens.variables.length; i += 1) sum += readingAt(view, stageId, lens.variables[i], now_h, 'inside');
  return sum;
}

/** What a lens shows in one cell of a stage. */
export function lensCell(view: SeasonView, lens: Lens, stage: StageCells, cell: number, now_h: number): number {
  let sum = 0;
  for (let i = 0; i < lens.variables.length; i += 1) sum += cellValue(view, stage, cell, lens.variables[i], now_h);
  return sum;
}

/** Band 0–8 of the water scale for a value; past the ends it stays in the last band. */
export function bandOf(lens: Lens, shown: number): number {
  const t = (shown - lens.low) / (lens.high - lens.low);
  return Math.round(Math.max(0, Math.min(1, t)) * 8);
}
