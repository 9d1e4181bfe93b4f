// Solves (d I − W) u = rhs cell by cell down the loop. W keeps whole process columns times chosen derivatives, so every
// conserved sum stays conserved. Order in a cell: pore water, a gut, methane, phosphorus and metals alone, the dense block of eight, solids alone by size, then the rest.
// The link that runs back (the return) is closed afterwards (closeLoop.ts).
import { FAST, FLOWING, O2, STATES } from '../components';
import { addStretch, multiplyStretch } from '../../numerics/vectors';
import { PROCESSES, SLOTS } from '../processes/catalogue';
import { ORDER, factorBlock, solveBlock } from './fastBlock';
import { closeLoop, findEchoes } from './closeLoop';
import { gutDiagonal, solveGut } from './fishColumns';
import { poreDiagonals, solvePore, spreadBlock, writeBlock } from './keptColumns';
import { sortLinks } from './loopData';
import { BLOCK, FACTORS, WIDTH } from './places';
import type { LoopData } from './loopData';
import { loneDiagonals, solveLoneAfter, solveLoneBefore } from './loneColumns';
import { breakCoarse } from './links';
import { moveDiagonal, solveMoves } from './solidsMoves';

/** Sorts the links, and sets what stays until the next cut: the links' rates, and the diagonals of what they carry off and what the moves of solids take. Called once forcing is set. */
export function fixDiagonals(data: LoopData): void {
  const { cells, ownFixed, outflow } = data;
  sortLinks(data);
  outflow.fill(0);
  for (const link of data.links) {
    link.rate = link.from < 0 ? 0 : link.flow / cells[link.from].volume;
    if (link.from >= 0) outflow[link.from] += link.rate;
  }
  for (const cell of cells) {
    const o = cell.index * STATES;
    ownFixed.fill(outflow[cell.index], o, o + FLOWING);
    ownFixed.fill(0, o + FLOWING, o + STATES);
    moveDiagonal(cell, 1 / cell.volume, ownFixed, o);
  }
}

/** Gathers W's dense blocks and lone diagonals from the derivatives of stage 0. */
export function gather(data: LoopData): void {
  const { cells, g, w, own } = data;
  own.set(data.ownFixed);
  for (let c = 0; c < cells.length; c++) {
    const cell = cells[c];
    const o = c * STATES;
    const go = c * PROCESSES * SLOTS;
    if (cell.bedThickness > 0) poreDiagonals(g, go, own, o);
    if (cell.fish) gutDiagonal(g, go, own, o);
    loneDiagonals(cell, data.matrix.table, g, go, own, o);
    writeBlock(cell, data.matrix.table, g, go, w, c * BLOCK);
  }
}

/** Factorises for one d. @returns false where a block is singular. */
export function factorBlocks(data: LoopData, d: number): boolean {
  const { cells, w, lu, own, inverse } = data;
  for (let c = 0; c < cells.length; c++) {
    const o = c * STATES;
    if (!factorBlock(w, c * BLOCK, lu, c * FACTORS, own, o, d, data.holdO2 >= 0)) return false;
    // Many rows share a diagonal with the row before them, and a division costs more than a look.
    let last = own[o + FAST];
    let inverted = 1 / (d + last);
    for (let i = FAST; i < STATES; i++) {
      if (own[o + i] !== last) {
        last = own[o + i];
        inverted = 1 / (d + last);
      }
      inverse[o + i] = inverted;
    }
  }
  findEchoes(data, d);
  return true;
}

/** What oxygen's right-hand side comes to with all that the processes of the dense block take, where a rig holds it at nothing. */
function drawnOnO2(w: Float64Array, wo: number, u: Float64Array, o: number): number {
  let sum = 0;
  for (let j = 1; j < WIDTH; j++) sum += w[wo + j] * u[o + ORDER[j]];
  return sum;
}

/**
 * Solves down the loop, and adds for the books: to data.delta each process's W·u part, to holdDelta what a held oxygen adds to
 * balance them, to outDelta W's part of what leaves through outlets and over rims.
 */
export function solveLoop(data: LoopData, d: number, rhs: Float64Array, u: Float64Array): void {
  const { cells, matrix, g, lu, inverse, delta, outDelta } = data;
  const { table } = matrix;
  const holds = data.holdO2 >= 0;
  for (let c = 0; c < cells.length; c++) {
    const cell = cells[c];
    const o = c * STATES;
    const ro = c * PROCESSES;
    const go = ro * SLOTS;
    const into = data.forward[c];
    for (let l = 0; l < into.length; l++) {
      const { from, rate, shear } = into[l];
      const a = from * STATES;
      addStretch(rhs, o, u, a, rate, FLOWING);
      if (shear > 0) breakCoarse(into[l], rate, u, a, rhs, o);
    }
    // Alone, since their sinks take oxygen, nitrate and the like from the dense block.
    if (cell.bedThickness > 0) solvePore(table, g, go, rhs, inverse, o, delta, ro);
    if (cell.fish) solveGut(table, g, go, rhs, inverse, o, delta, ro);
    solveLoneBefore(cell, table, g, go, rhs, inverse, o, delta, ro);
    // The dense block.
    const held = holds ? -rhs[o + O2] : 0;
    solveBlock(data.w, c * BLOCK, lu, c * FACTORS, rhs, u, o, holds);
    spreadBlock(cell, table, g, go, u, rhs, inverse, o, delta, ro);
    if (holds) data.holdDelta[c] += held - drawnOnO2(data.w, c * BLOCK, u, o);
    // Solids, coarse first, each alone: what fish and films gave them is in their right-hand sides by now.
    solveMoves(cell, data.moves, 1 / cell.volume, rhs, inverse, o, delta, ro);
    solveLoneAfter(cell, g, go, rhs, inverse, o, delta, ro);
    multiplyStretch(u, rhs, inverse, o + FAST, o + STATES);
  }
  for (let l = 0; l < data.outlets.length; l++) {
    const { from, rate } = data.outlets[l];
    for (let i = 0; i < FLOWING; i++) outDelta[i] += rate * u[from * STATES + i];
  }
  closeLoop(data, d, u);
}
