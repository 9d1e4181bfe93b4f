// Solves (d I − W) u = rhs cell by cell down the loop. W keeps whole process columns times chosen derivatives, so every conserved sum
// stays conserved. What happens inside a cell is written from the table of processes (kernel/gatherCell.ts, factorCell.ts, solveCell.ts).
// The link that runs back (the return) is closed afterwards (closeLoop.ts).
import { FLOWING, STATES } from '../components';
import { factorCell } from '../kernel/factorCell';
import { gatherCell } from '../kernel/gatherCell';
import { BLOCK, DERIVATIVES, DIAGONALS, FACTORS, PROCESSES } from '../kernel/sizes';
import { solveCell } from '../kernel/solveCell';
import { addStretch } from '../../numerics/vectors';
import { closeLoop, findEchoes } from './closeLoop';
import { breakCoarse } from './links';
import { sortLinks } from './loopData';
import type { LoopData } from './loopData';

/** Sorts the links, and sets their rates and what they carry off, which stay until the next cut. Called once forcing is set. */
export function fixDiagonals(data: LoopData): void {
  const { cells, outflow } = data;
  sortLinks(data);
  outflow.fill(0);
  for (const link of data.links) {
    link.rate = link.from < 0 ? 0 : link.flow / cells[link.from].volume;
    if (link.from >= 0) outflow[link.from] += link.rate;
  }
}

/** Gathers W from the derivatives of stage 0. */
export function gather(data: LoopData): void {
  const { cells, g, w, own, outflow } = data;
  const { table } = data.matrix;
  for (let c = 0; c < cells.length; c++)
    gatherCell(cells[c], 1 / cells[c].volume, outflow[c], table, g, c * DERIVATIVES, own, c * DIAGONALS, w, c * BLOCK);
}

/** Factorises for one d. @returns false where a block is singular. */
export function factorBlocks(data: LoopData, d: number): boolean {
  const { cells, w, lu, own, outflow } = data;
  const held = data.holdO2 >= 0;
  for (let c = 0; c < cells.length; c++)
    if (!factorCell(cells[c], outflow[c], d, held, own, c * DIAGONALS, w, c * BLOCK, lu, c * FACTORS)) return false;
  findEchoes(data, d);
  return true;
}

/**
 * Solves down the loop, and adds for the books: to data.delta each process's W·u part, to holdDelta what a held oxygen adds to
 * balance them, to outDelta W's part of what leaves through outlets and over rims.
 */
export function solveLoop(data: LoopData, d: number, rhs: Float64Array, u: Float64Array): void {
  const { cells, matrix, g, w, lu, delta, holdDelta, outDelta } = data;
  const { table } = matrix;
  const held = data.holdO2 >= 0;
  for (let c = 0; c < cells.length; c++) {
    const cell = cells[c];
    const o = c * STATES;
    const into = data.forward[c];
    for (let l = 0; l < into.length; l++) {
      const { from, rate, shear } = into[l];
      const a = from * STATES;
      addStretch(rhs, o, u, a, rate, FLOWING);
      if (shear > 0) breakCoarse(into[l], rate, u, a, rhs, o);
    }
    const added = solveCell(
      cell,
      1 / cell.volume,
      held,
      table,
      g,
      c * DERIVATIVES,
      w,
      c * BLOCK,
      lu,
      c * FACTORS,
      rhs,
      u,
      o,
      delta,
      c * PROCESSES,
    );
    if (held) holdDelta[c] += added;
  }
  for (let l = 0; l < data.outlets.length; l++) {
    const { from, rate } = data.outlets[l];
    for (let i = 0; i < FLOWING; i++) outDelta[i] += rate * u[from * STATES + i];
  }
  closeLoop(data, d, u);
}
