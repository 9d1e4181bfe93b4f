// Closes a process's stoichiometry: given its fixed coefficients and its own unknowns, continuity of COD, elements and charge gives the
// rest.
import { ELEMENTS, NAMES } from './components';

export interface Stoichiometry {
  /** component → coefficient, units of the component per unit of the process */
  fixed: ReadonlyMap<number, number>;
  /** components whose coefficients follow from continuity */
  unknowns: readonly number[];
}

/** Entries of one closed process column. */
export interface Column {
  rows: Int32Array;
  coefficients: Float64Array;
}

/**
 * Solves the unknown coefficients so that every element sums to zero.
 * @throws Error where the unknowns cannot close the process; the message names it and the element left open.
 */
export function closeColumn(name: string, stoichiometry: Stoichiometry, content: readonly Float64Array[]): Column {
  const { fixed, unknowns } = stoichiometry;
  const n = unknowns.length;
  const rows: Float64Array[] = ELEMENTS.map((_, e) => {
    const row = new Float64Array(n + 1);
    unknowns.forEach((u, k) => {
      row[k] = content[u][e];
    });
    for (const [component, coefficient] of fixed) row[n] -= coefficient * content[component][e];
    return row;
  });
  // Gaussian elimination over the elements, largest pivot first.
  const used: number[] = [];
  const pivotRow = new Int32Array(n).fill(-1);
  for (let k = 0; k < n; k++) {
    let best = -1;
    for (let e = 0; e < rows.length; e++) if (!used.includes(e) && (best < 0 || Math.abs(rows[e][k]) > Math.abs(rows[best][k]))) best = e;
    if (best < 0 || Math.abs(rows[best][k]) < 1e-9)
      throw new Error(`process ${name}: ${NAMES[unknowns[k]]} is not determined by continuity`);
    used.push(best);
    pivotRow[k] = best;
    const pivot = rows[best];
    for (let e = 0; e < rows.length; e++) {
      if (e === best || rows[e][k] === 0) continue;
      const factor = rows[e][k] / pivot[k];
      for (let j = k; j <= n; j++) rows[e][j] -= factor * pivot[j];
    }
  }
  const entries = new Map(fixed);
  for (let k = 0; k < n; k++) entries.set(unknowns[k], (entries.get(unknowns[k]) ?? 0) + rows[pivotRow[k]][n] / rows[pivotRow[k]][k]);
  const residual = residuals(entries, content);
  const open = ELEMENTS.findIndex((_, e) => Math.abs(residual[e]) > 1e-9);
  if (open >= 0) throw new Error(`process ${name}: ${ELEMENTS[open]} does not close (${residual[open]})`);
  const kept = [...entries].filter(([, coefficient]) => coefficient !== 0).sort((a, b) => a[0] - b[0]);
  return { rows: Int32Array.from(kept, ([row]) => row), coefficients: Float64Array.from(kept, ([, coefficient]) => coefficient) };
}

/** Sum of each element over a column, relative to the largest term of that element; zero when closed. */
export function residuals(entries: Iterable<readonly [number, number]>, content: readonly Float64Array[]): Float64Array {
  const sum = new Float64Array(ELEMENTS.length);
  const largest = new Float64Array(ELEMENTS.length);
  for (const [component, coefficient] of entries) {
    for (let e = 0; e < sum.length; e++) {
      const term = coefficient * content[component][e];
      sum[e] += term;
      largest[e] = Math.max(largest[e], Math.abs(term));
    }
  }
  return sum.map((value, e) => (largest[e] > 0 ? value / largest[e] : 0));
}
