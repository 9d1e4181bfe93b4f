// Columns as text: comma-separated lines, or JSON arrays with the season's summary.
import type { FailedDraw } from '../season/ensemble';
import type { SeasonSummary } from '../season/trajectory';
import type { Column } from './seasonTable';

/** Single precision carries seven digits; more would be noise. */
const DIGITS = 7;

/** Time is exact; an hour is told from the next over any season. */
const TIME_DIGITS = 10;

function rounded(value: number, name: string): number | null {
  return Number.isFinite(value) ? Number(value.toPrecision(name === 'day' ? TIME_DIGITS : DIGITS)) : null;
}

/** One header line, then one line a row; what is not known (scores before the first day is over) is NaN. */
export function csvText(columns: readonly Column[]): string {
  const rows = columns[0]?.values.length ?? 0;
  const lines = [columns.map((column) => column.name).join(',')];
  for (let row = 0; row < rows; row += 1) lines.push(columns.map((column) => rounded(column.values[row], column.name) ?? 'NaN').join(','));
  return `${lines.join('\n')}\n`;
}

/** What an ensemble says beside its bands. */
export interface EnsembleSummary {
  draws: number;
  failed: readonly FailedDraw[];
}

/** The same columns as arrays under their names, and `summary`; what is not known is null. */
export function jsonText(columns: readonly Column[], summary: SeasonSummary | EnsembleSummary): string {
  const arrays = Object.fromEntries(columns.map((column) => [column.name, column.values.map((value) => rounded(value, column.name))]));
  return `${JSON.stringify({ ...arrays, summary })}\n`;
}
