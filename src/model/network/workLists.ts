// Sorts a cell's active processes by how the inner loop applies them.
import type { Alone, FlatSum, WorkLists } from '../cell';
import { CA, CF, CH4, FE, K, N2, OP, P, PO, PS, UI } from '../components';
import { ID, SLOTS } from '../processes/catalogue';
import { isWrittenOut } from './columns';
import { placeInBlock } from './fastBlock';
import type { Matrix } from './matrix';

/** Settling, catching and shear are written out in solidsMoves.ts. */
const isMove = (p: number): boolean => (p >= ID.settleCoarseFast && p <= ID.catchSuperfineInert) || (p >= ID.shearFast && p <= ID.shearInert);

type Entry = readonly [from: number, at: number, coefficient: number];

/** Entries in the order they are summed in. */
const flat = (entries: readonly Entry[]): FlatSum => ({
  from: Int32Array.from(entries, ([from]) => from), at: Int32Array.from(entries, ([, at]) => at), coefficients: Float64Array.from(entries, ([, , coefficient]) => coefficient),
});

/** The entries of a process's column from one of its places to another. */
const entries = (matrix: Matrix, p: number, first: number, last: number): Entry[] =>
  Array.from(matrix.rows.subarray(first, last), (row, i): Entry => [p, row, matrix.coefficients[first + i]]);
const column = (matrix: Matrix, p: number): Entry[] => entries(matrix, p, matrix.start[p], matrix.start[p + 1]);

const known = new WeakMap<Matrix, Map<Int32Array, WorkLists>>();

/**
 * The lists for a set of processes; cells with the same set share them, which keeps them in the processor's cache.
 * @param active ids of the processes that can run in the cell, the same array for the same set
 */
export function workLists(matrix: Matrix, active: Int32Array): WorkLists {
  const ofMatrix = known.get(matrix) ?? new Map<Int32Array, WorkLists>();
  known.set(matrix, ofMatrix);
  const found = ofMatrix.get(active);
  if (found) return found;
  const made = sort(matrix, active);
  ofMatrix.set(active, made);
  return made;
}

function sort(matrix: Matrix, active: Int32Array): WorkLists {
  for (const p of active) if (matrix.alone[p] >= CF && matrix.alone[p] <= UI && !isMove(p)) throw new Error(`process ${p} is solved alone but has no code for it`);
  const slotted = active.filter((p) => matrix.slots[p] > 0);
  const lone = (row: number): Alone => {
    const processes = active.filter((p) => matrix.alone[p] === row);
    return { row, processes, moves: flat(Array.from(processes).flatMap((p) => column(matrix, p)).filter(([, at]) => at !== row)) };
  };
  const apply = Array.from(active).filter((p) => !isMove(p) && !isWrittenOut(p)).flatMap((p) => column(matrix, p));
  const listed = slotted.filter((p) => !isWrittenOut(p));
  const rest = Array.from(listed).flatMap((p) => entries(matrix, p, matrix.dense[p], matrix.start[p + 1]));
  // Kept derivatives to places of the dense block: every dense row of the process by every component it answers to.
  const block = Array.from(listed).flatMap((p) => Array.from({ length: matrix.slots[p] }, (_, k) => p * SLOTS + k).flatMap((slot) =>
    entries(matrix, p, matrix.start[p], matrix.dense[p]).map(([, row, coefficient]): Entry => [slot, placeInBlock(row, matrix.slotRows[slot]), coefficient])));
  const before = [lone(CH4), lone(P), lone(K), lone(CA), lone(FE)].filter((one) => one.processes.length > 0);
  const after = [lone(N2), lone(OP)].filter((one) => one.processes.length > 0);
  // What is solved before the dense block must not receive from it.
  for (const p of slotted) for (const [, row] of column(matrix, p)) {
    if (row === PO || row === PS || before.some((one) => one.row === row)) throw new Error(`process ${p} of the dense block gives to a component solved before it`);
  }
  return { all: active, apply: flat(apply), slotted, listed, block: flat(block), rest: flat(rest), before, after, holds: active.includes(ID.hydrolysisCaughtFast) };
}
