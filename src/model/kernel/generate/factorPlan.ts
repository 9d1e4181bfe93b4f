// The order in which the dense block is eliminated, found from where it is empty, and where the numbers of its factors stand.
// No pivoting: the matrix has a dominant diagonal. The row that a rig can hold comes last, so that nothing hangs on it.
import { FAST, O2 } from '../../components';
import type { KernelPlan } from './kernelPlan';

/** One entry of the matrix at elimination: row and column. */
export type Entry = readonly [row: number, column: number];

export interface FactorPlan {
  /** components in the order they are eliminated */
  order: readonly number[];
  /** for each eliminated component, the rows below that it is taken off, and the columns that they change in */
  steps: readonly { pivot: number; below: readonly number[]; right: readonly number[] }[];
  /** entries that elimination changes, and so are kept; the others are those of W turned round */
  changed: ReadonlySet<string>;
  /** places among the kept numbers: factors `L row column`, changed entries `U row column`, inverted diagonals `D row` */
  places: ReadonlyMap<string, number>;
  /** inverted diagonals of what is solved alone, of what only water carries off, of what rests; then the block's */
  numbers: number;
}

export const key = (row: number, column: number): string => `${row} ${column}`;

/** @param held the row that comes last */
export function factorPlan(plan: KernelPlan, held = O2): FactorPlan {
  const filled = new Set(plan.block.map((entry) => key(Math.floor(entry / FAST), entry % FAST)));
  const left = new Set(Array.from({ length: FAST }, (_, i) => i));
  const below = (pivot: number): number[] => [...left].filter((row) => row !== pivot && filled.has(key(row, pivot)));
  const right = (pivot: number): number[] => [...left].filter((column) => column !== pivot && filled.has(key(pivot, column)));
  const steps: { pivot: number; below: number[]; right: number[] }[] = [];
  const changed = new Set<string>();
  while (left.size > 0) {
    // The cheapest next, so that little fills up (Markowitz).
    const choice = [...left].filter((i) => i !== held || left.size === 1).map((i) => ({ i, cost: below(i).length * right(i).length }));
    const pivot = choice.reduce((least, one) => (one.cost < least.cost ? one : least)).i;
    const step = { pivot, below: below(pivot), right: right(pivot) };
    for (const row of step.below)
      for (const column of step.right) {
        filled.add(key(row, column));
        changed.add(key(row, column));
      }
    left.delete(pivot);
    steps.push(step);
  }
  const places = new Map<string, number>();
  let next = plan.diagonals.length + 2;
  for (const { pivot, below: rows, right: columns } of steps) {
    places.set(`D ${pivot}`, next++);
    for (const row of rows) places.set(`L ${key(row, pivot)}`, next++);
    for (const column of columns) if (changed.has(key(pivot, column))) places.set(`U ${key(pivot, column)}`, next++);
  }
  return { order: steps.map(({ pivot }) => pivot), steps, changed, places, numbers: next };
}

/** Places of the inverted diagonals of what only water carries off, and of what rests. */
export const carriedPlace = (plan: KernelPlan): number => plan.diagonals.length;
export const restingPlace = (plan: KernelPlan): number => plan.diagonals.length + 1;
