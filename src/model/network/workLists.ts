// Sorts a cell's active processes by how the inner loop applies them. Families share all products and differ in one reactant.
import type { Alone, FlatSum, WorkLists } from '../cell';
import { CA, CF, CH4, FAST, FE, K, N2, OP, P, PO, PS, UI } from '../components';
import { ID, SLOTS } from '../processes/catalogue';
import type { Matrix } from './matrix';

/** Settling, catching and shear are written out in solidsMoves.ts. */
const isMove = (p: number): boolean => (p >= ID.settleCoarseFast && p <= ID.catchSuperfineInert) || (p >= ID.shearFast && p <= ID.shearInert);

/** What a process gives and takes but for a reactant used up one for one, as a text that equal families share. */
function signature(matrix: Matrix, p: number): { reactant: number; text: string } | null {
  if (matrix.slots[p] > 0 || matrix.alone[p] >= 0) return null;
  let reactant = -1;
  const rest: string[] = [];
  for (let e = matrix.start[p]; e < matrix.start[p + 1]; e++) {
    if (matrix.coefficients[e] === -1 && matrix.rows[e] >= CF && reactant < 0) reactant = matrix.rows[e];
    else rest.push(`${matrix.rows[e]}:${matrix.coefficients[e]}`);
  }
  return reactant >= 0 && rest.length > 2 ? { reactant, text: rest.join(' ') } : null;
}

type Entry = readonly [from: number, at: number, coefficient: number];

/** Entries in the order they are summed in. */
const flat = (entries: readonly Entry[]): FlatSum => ({
  from: Int32Array.from(entries, ([from]) => from), at: Int32Array.from(entries, ([, at]) => at), coefficients: Float64Array.from(entries, ([, , coefficient]) => coefficient),
});

/** @param active ids of the processes that can run in the cell */
export function workLists(matrix: Matrix, active: Int32Array): WorkLists {
  const generic: number[] = [], slotted: number[] = [];
  // Pore organics feed pore sulfide and methane, so they come first.
  const lone = (row: number): Alone => ({ row, processes: active.filter((p) => matrix.alone[p] === row) });
  const groups = new Map<string, { first: number; members: number[]; reactants: number[] }>();
  for (const p of active) {
    if (matrix.slots[p] > 0) slotted.push(p);
    if (matrix.alone[p] >= CF && matrix.alone[p] <= UI && !isMove(p)) throw new Error(`process ${p} is solved alone but has no code for it`);
    if (isMove(p)) continue;
    const sign = signature(matrix, p);
    if (!sign) {
      generic.push(p);
      continue;
    }
    const group = groups.get(sign.text) ?? { first: p, members: [], reactants: [] };
    group.members.push(p);
    group.reactants.push(sign.reactant);
    groups.set(sign.text, group);
  }
  const families = [...groups.values()].map(({ first, members, reactants }) => {
    const rows: number[] = [], coefficients: number[] = [];
    for (let e = matrix.start[first]; e < matrix.start[first + 1]; e++) {
      if (matrix.rows[e] === reactants[0]) continue;
      rows.push(matrix.rows[e]);
      coefficients.push(matrix.coefficients[e]);
    }
    return { products: Int32Array.from(rows), coefficients: Float64Array.from(coefficients), members: Int32Array.from(members), reactants: Int32Array.from(reactants) };
  });
  const apply: Entry[] = [], block: Entry[] = [], rest: Entry[] = [];
  for (const p of generic) for (let e = matrix.start[p]; e < matrix.start[p + 1]; e++) apply.push([p, matrix.rows[e], matrix.coefficients[e]]);
  for (const p of slotted) {
    for (let e = matrix.dense[p]; e < matrix.start[p + 1]; e++) rest.push([p, matrix.rows[e], matrix.coefficients[e]]);
    for (let k = 0; k < matrix.slots[p]; k++) {
      for (let e = matrix.start[p]; e < matrix.dense[p]; e++) block.push([p * SLOTS + k, matrix.rows[e] * FAST + matrix.slotRows[p * SLOTS + k], matrix.coefficients[e]]);
    }
  }
  const before = [lone(PO), lone(PS), lone(CH4), lone(P), lone(K), lone(CA), lone(FE)].filter((one) => one.processes.length > 0);
  const after = [lone(N2), lone(OP)].filter((one) => one.processes.length > 0);
  // What is solved before the dense block must not receive from it.
  for (const p of slotted) for (let e = matrix.start[p]; e < matrix.start[p + 1]; e++) {
    if (before.some((one) => one.row === matrix.rows[e])) throw new Error(`process ${p} of the dense block gives to a component solved before it`);
  }
  return { all: active, apply: flat(apply), slotted: Int32Array.from(slotted), block: flat(block), rest: flat(rest), before, after, families };
}
