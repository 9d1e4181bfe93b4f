// Sorts a cell's active processes by how the inner loop applies them.
import type { FlatSum, WorkLists } from '../cell';
import { keptBy } from '../keptBy';
import { CF, GUT, PO, PS, UI } from '../components';
import { ID } from '../processes/catalogue';
import { DEFINITIONS } from '../processes/definitions';
import { isWrittenOut } from './columns';
import type { Matrix } from './matrix';

/** Settling, catching and shear are written out in solidsMoves.ts. */
const isMove = (p: number): boolean => (p >= ID.settleCoarseFast && p <= ID.catchSuperfineInert) || (p >= ID.shearFast && p <= ID.shearInert);

type Entry = readonly [from: number, at: number, coefficient: number];

/** Entries in the order they are summed in. */
const flat = (entries: readonly Entry[]): FlatSum => ({
  from: Int32Array.from(entries, ([from]) => from), at: Int32Array.from(entries, ([, at]) => at), coefficients: Float64Array.from(entries, ([, , coefficient]) => coefficient),
});

/** The entries of a process's column. */
const column = (matrix: Matrix, p: number): Entry[] =>
  Array.from(matrix.rows.subarray(matrix.start[p], matrix.start[p + 1]), (row, i): Entry => [p, row, matrix.coefficients[matrix.start[p] + i]]);

/**
 * The lists for a set of processes; cells with the same set share them, which keeps them in the processor's cache.
 * Asked with the matrix and the ids of the processes that can run in the cell, the same array for the same set.
 */
export const workLists = keptBy(sort);

function sort(matrix: Matrix, active: Int32Array): WorkLists {
  for (const p of active) if (matrix.alone[p] >= CF && matrix.alone[p] <= UI && !isMove(p)) throw new Error(`process ${p} is solved alone but has no code for it`);
  const slotted = active.filter((p) => DEFINITIONS[p].fast !== undefined);
  const unwritten = Array.from(active).filter((p) => !isMove(p) && !isWrittenOut(p));
  for (const p of slotted) if (!isWrittenOut(p)) throw new Error(`process ${p} keeps derivatives but has no code for them`);
  // What is solved before the dense block must not receive from it.
  for (const p of slotted) for (const [, row] of column(matrix, p)) if (row === PO || row === PS || row === GUT) throw new Error(`process ${p} of the dense block gives to a component solved before it`);
  return { all: active, apply: flat(unwritten.flatMap((p) => column(matrix, p))), holds: active.includes(ID.hydrolysisCaughtFast) };
}
