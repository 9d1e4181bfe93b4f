// The stoichiometric matrix of a run: what of it the kernels read, and all of it laid flat.
import { ALL, STATES } from '../components';
import type { Column } from '../continuity';
import { PROCESSES, TABLE_OF } from '../kernel/sizes';

export interface Matrix {
  /** entries of process p are start[p] … start[p+1]−1: state rows and coefficients */
  start: Int32Array;
  rows: Int32Array;
  coefficients: Float64Array;
  /** the coefficients that depend on parameters, where the kernels look for them (kernel/table.ts) */
  table: Float64Array;
  /** full columns, outside reservoirs included, for the ledger */
  columns: readonly Column[];
}

export function layMatrix(columns: readonly Column[]): Matrix {
  const start = new Int32Array(PROCESSES + 1);
  const rows: number[] = [];
  const coefficients: number[] = [];
  columns.forEach((column, p) => {
    start[p] = rows.length;
    const entries = Array.from(column.rows, (row, i) => [row, column.coefficients[i]] as const).filter(([row]) => row < STATES);
    for (const [row, coefficient] of entries) {
      rows.push(row);
      coefficients.push(coefficient);
    }
  });
  start[PROCESSES] = rows.length;
  const table = Float64Array.from(TABLE_OF, ([p, component]) => {
    const at = columns[p].rows.indexOf(component);
    return at < 0 ? 0 : columns[p].coefficients[at];
  });
  return { start, rows: Int32Array.from(rows), coefficients: Float64Array.from(coefficients), table, columns };
}

/** Amounts of one extent vector as components, outside reservoirs included: Σ column × extent. */
export function yieldOf(matrix: Matrix, extents: Float64Array, from: number): Float64Array {
  const out = new Float64Array(ALL);
  matrix.columns.forEach((column, p) => {
    const extent = extents[from + p];
    if (extent !== 0)
      column.rows.forEach((row, i) => {
        out[row] += column.coefficients[i] * extent;
      });
  });
  return out;
}
