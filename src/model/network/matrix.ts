// The stoichiometric matrix laid flat for the inner loop: state rows first, outside reservoirs apart, and which components are solved alone.
import { ALL, STATES } from '../components';
import type { Column } from '../continuity';
import { PROCESSES } from '../processes/catalogue';
import { DEFINITIONS } from '../processes/definitions';

export interface Matrix {
  /** entries of process p are start[p] … start[p+1]−1: state rows and coefficients */
  start: Int32Array; rows: Int32Array; coefficients: Float64Array;
  /** component solved alone by a process, or −1 */
  alone: Int32Array;
  /** the coefficients once more as [processes][states], for the columns written out in columns.ts */
  table: Float64Array;
  /** full columns, outside reservoirs included, for the ledger */
  columns: readonly Column[];
}

export function layMatrix(columns: readonly Column[]): Matrix {
  const start = new Int32Array(PROCESSES + 1);
  const rows: number[] = [];
  const coefficients: number[] = [];
  const alone = new Int32Array(PROCESSES).fill(-1);
  const table = new Float64Array(PROCESSES * STATES);
  columns.forEach((column, p) => {
    start[p] = rows.length;
    const entries = Array.from(column.rows, (row, i) => [row, column.coefficients[i]] as const).filter(([row]) => row < STATES);
    for (const [row, coefficient] of entries) { rows.push(row); coefficients.push(coefficient); table[p * STATES + row] = coefficient; }
    const definition = DEFINITIONS[p];
    if (definition.alone !== undefined) alone[p] = definition.alone;
  });
  start[PROCESSES] = rows.length;
  return { start, rows: Int32Array.from(rows), coefficients: Float64Array.from(coefficients), alone, table, columns };
}

/** Amounts of one extent vector as components, outside reservoirs included: Σ column × extent. */
export function yieldOf(matrix: Matrix, extents: Float64Array, from: number): Float64Array {
  const out = new Float64Array(ALL);
  matrix.columns.forEach((column, p) => {
    const extent = extents[from + p];
    if (extent !== 0) column.rows.forEach((row, i) => { out[row] += column.coefficients[i] * extent; });
  });
  return out;
}
