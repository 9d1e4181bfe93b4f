// What the kernels do, put together plainly from definitions and whole columns: one process, one component at a time.
import type { Cell } from '../../src/model/cell';
import { FAST, NAMES, P, STATES } from '../../src/model/components';
import type { Matrix } from '../../src/model/network/matrix';
import { RUNS } from '../../src/model/kernel/where';
import { KEPT } from '../../src/model/processes/catalogue';
import type { ProcessName } from '../../src/model/processes/catalogue';
import type { Definition } from '../../src/model/processes/definition';
import { DEFINITIONS, whereOf } from '../../src/model/processes/definitions';

const places: Readonly<Record<string, number>> = KEPT;

/** Place of a kept derivative among a cell's. @throws Error where none is kept */
export function keptPlace(id: ProcessName, to: number | 'share'): number {
  const name = `${id}_${to === 'share' ? to : NAMES[to]}`;
  if (!Object.hasOwn(places, name)) throw new Error(`no derivative is kept of ${name}`);
  return places[name];
}

/** Components that a process keeps a derivative to, in its own rate. */
export const keptRows = ({ alone, fast }: Definition): number[] => [...(alone === undefined ? [] : [alone]), ...(fast ?? [])];

/** Processes that run in a cell as it is forced. */
export const runningIn = (cell: Cell): number[] => DEFINITIONS.flatMap((definition, p) => (RUNS[whereOf(definition)](cell) ? [p] : []));

/** A cell in which everything runs. */
export const everythingIn = (cell: Cell): Cell => ({
  ...cell,
  bedThickness: 0.01,
  holds: true,
  filter: true,
  fish: true,
  bed: true,
  kill: 2,
  doseRate: 3,
  sludgeRoom: 1,
  settle0: 3,
  settle1: 1.5,
  settle2: 0.4,
  catch0: 2,
  catch1: 0.7,
  catch2: 0.3,
  shear: 0.6,
  stir: 0.2,
  release: 0.1,
});

/** Constant of a move, 1/d. */
export function moveRate(cell: Cell, { moves }: Definition): number {
  return moves ? cell[moves.at] / (moves.clears ? cell.volume : 1) : 0;
}

/** Derivative of every process to every component that W keeps; what does not run has none. */
export function derivativesIn(cell: Cell, g: Float64Array, go: number): Float64Array[] {
  const running = new Set(runningIn(cell));
  const own = DEFINITIONS.map((definition, p) => {
    const to = new Float64Array(STATES);
    if (!running.has(p)) return to;
    for (const row of keptRows(definition)) to[row] = g[go + keptPlace(definition.id, row)];
    if (definition.moves?.kept) to[definition.moves.of] = moveRate(cell, definition);
    return to;
  });
  const at = (id: ProcessName): number => DEFINITIONS.findIndex((definition) => definition.id === id);
  return DEFINITIONS.map(({ id, follows, opposes }, p) => {
    const all = own[p].slice();
    if (!running.has(p)) return all;
    if (opposes)
      own[at(opposes)].forEach((value, row) => {
        all[row] -= value;
      });
    for (const other of follows ?? [])
      own[at(other)].forEach((value, row) => {
        all[row] += g[go + keptPlace(id, 'share')] * value;
      });
    return all;
  });
}

/** What processes at these rates add to the rows of a state: Σ column × rate. */
export function slopeOf(matrix: Matrix, rates: Float64Array): Float64Array {
  const out = new Float64Array(STATES);
  matrix.columns.forEach(({ rows, coefficients }, p) =>
    rows.forEach((row, i) => {
      if (row < STATES) out[row] += coefficients[i] * rates[p];
    }),
  );
  return out;
}

/**
 * Adds Σ process column × derivative of one cell to a dense W of n columns, its rows from `o`. Phosphorus is solved before the dense
 * block, so what that gives to it goes to the row `late`: it moves on with the water alone, and meets no sink of the step.
 */
export function addCell(W: Float64Array, n: number, matrix: Matrix, derivatives: readonly Float64Array[], o: number, late: number): void {
  matrix.columns.forEach(({ rows, coefficients }, p) =>
    rows.forEach((row, i) => {
      if (row < STATES)
        derivatives[p].forEach((derivative, column) => {
          W[(row === P && column < FAST ? late : o + row) * n + o + column] += coefficients[i] * derivative;
        });
    }),
  );
}
