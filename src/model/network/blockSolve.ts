// Solves (d I − W) u = rhs cell by cell down the loop. W keeps whole process columns times chosen derivatives, so every
// conserved sum stays conserved. Order in a cell: pore water and methane alone, the dense block of eight, solids alone by size, then the rest.
// Links that run back (the return) are closed by a conservative correction of the cell they enter.
import type { Alone } from '../cell';
import { FAST, FLOWING, O2, STATES } from '../components';
import { PROCESSES, SLOTS } from '../processes/catalogue';
import { BLOCK, FACTORS, factorBlock, solveBlock } from './fastBlock';
import { poreDiagonals, solvePore, spreadBlock, writeBlock } from './keptColumns';
import { sortLinks } from './loopData';
import type { LoopData } from './loopData';
import { breakCoarse } from './slope';
import { moveDiagonal, solveMoves } from './solidsMoves';

/** Sorts the links, and sets the diagonals that stay until the next cut: what links carry off and what the moves of solids take. Called once forcing is set. */
export function fixDiagonals(data: LoopData): void {
  const { cells, ownFixed } = data;
  sortLinks(data);
  ownFixed.fill(0);
  for (const { from, flow } of data.links) {
    if (from < 0) continue;
    const rate = flow / cells[from].volume;
    for (let i = 0; i < FLOWING; i++) ownFixed[from * STATES + i] += rate;
  }
  for (const cell of cells) moveDiagonal(cell, 1 / cell.volume, ownFixed, cell.index * STATES);
}

/** Gathers W's dense blocks and lone diagonals from the derivatives of stage 0. */
export function gather(data: LoopData): void {
  const { cells, g, w, own } = data;
  own.set(data.ownFixed);
  for (let c = 0; c < cells.length; c++) {
    const { block, before, after } = cells[c].work;
    const o = c * STATES;
    const go = c * PROCESSES * SLOTS;
    const wo = c * BLOCK;
    if (cells[c].bedThickness > 0) poreDiagonals(g, go, own, o);
    for (let a = 0; a < before.length; a++) sumAlone(before[a], g, go, own, o);
    for (let a = 0; a < after.length; a++) sumAlone(after[a], g, go, own, o);
    writeBlock(cells[c], data.matrix.table, g, go, w, wo);
    const { from, at, coefficients } = block;
    for (let i = 0; i < from.length; i++) w[wo + at[i]] += coefficients[i] * g[go + from[i]];
  }
}

function sumAlone(alone: Alone, g: Float64Array, go: number, own: Float64Array, o: number): void {
  const { processes } = alone;
  for (let a = 0; a < processes.length; a++) own[o + alone.row] += g[go + processes[a] * SLOTS];
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
  return true;
}

/** Processes of one component solved alone: what their sink moves goes to the rows after it. */
function solveAlone(data: LoopData, c: number, alone: Alone, rhs: Float64Array, delta: Float64Array): void {
  const { row, processes, moves } = alone;
  const { g } = data;
  const o = c * STATES;
  const ro = c * PROCESSES;
  const u = rhs[o + row] * data.inverse[o + row];
  for (let a = 0; a < processes.length; a++) delta[ro + processes[a]] = g[(ro + processes[a]) * SLOTS] * u;
  const { from, at, coefficients } = moves;
  for (let i = 0; i < from.length; i++) rhs[o + at[i]] += coefficients[i] * delta[ro + from[i]];
}

/** What the W·u parts of a cell's processes take of oxygen, where a rig holds it. */
function drawnOnO2(data: LoopData, slotted: Int32Array, delta: Float64Array, ro: number): number {
  const { start, dense, rows, coefficients } = data.matrix;
  let sum = 0;
  for (const p of slotted) for (let e = start[p]; e < dense[p]; e++) if (rows[e] === O2) sum += coefficients[e] * delta[ro + p];
  return sum;
}

/**
 * Solves down the loop; `delta` receives each process's W·u part, for the extents; `hold` what a held oxygen adds to balance them;
 * `out` W's part of what leaves through outlets and over rims, for the books.
 */
export function solveLoop(data: LoopData, d: number, rhs: Float64Array, u: Float64Array, delta: Float64Array, hold: Float64Array, out: Float64Array): void {
  const { cells, matrix, g, lu, inverse } = data;
  const { slotRows } = matrix;
  for (let c = 0; c < cells.length; c++) {
    const { listed, slotted, rest, before, after } = cells[c].work;
    const o = c * STATES;
    const ro = c * PROCESSES;
    const go = c * PROCESSES * SLOTS;
    const into = data.forward[c];
    for (let l = 0; l < into.length; l++) {
      const link = into[l];
      const from = link.from * STATES;
      const rate = link.flow / cells[link.from].volume;
      for (let i = 0; i < FLOWING; i++) rhs[o + i] += rate * u[from + i];
      if (link.shear > 0) breakCoarse(link, rate, u, from, rhs, o);
    }
    // Alone, since their sinks take oxygen, nitrate and the like from the dense block.
    if (cells[c].bedThickness > 0) solvePore(matrix.table, g, go, rhs, inverse, o, delta, ro);
    for (let a = 0; a < before.length; a++) solveAlone(data, c, before[a], rhs, delta);
    // The dense block.
    let held = data.holdO2 >= 0 ? -rhs[o + O2] : 0;
    solveBlock(data.w, c * BLOCK, lu, c * FACTORS, rhs, u, o, data.holdO2 >= 0);
    spreadBlock(cells[c], matrix.table, g, go, u, rhs, o, delta, ro);
    for (let b = 0; b < listed.length; b++) {
      const p = listed[b];
      const k = p * SLOTS;
      // Unused slots hold zero derivatives.
      delta[ro + p] = g[go + k] * u[o + slotRows[k]] + g[go + k + 1] * u[o + slotRows[k + 1]] + g[go + k + 2] * u[o + slotRows[k + 2]];
    }
    const { from, at, coefficients } = rest;
    for (let i = 0; i < from.length; i++) rhs[o + at[i]] += coefficients[i] * delta[ro + from[i]];
    if (data.holdO2 >= 0) held -= drawnOnO2(data, slotted, delta, ro);
    if (data.holdO2 >= 0) hold[c] = held;
    // Solids, coarse first, each alone: what fish and films gave them is in their right-hand sides by now.
    solveMoves(cells[c], data.moves, 1 / cells[c].volume, rhs, inverse, o, delta, ro);
    for (let a = 0; a < after.length; a++) solveAlone(data, c, after[a], rhs, delta);
    for (let i = FAST; i < STATES; i++) u[o + i] = rhs[o + i] * inverse[o + i];
  }
  out.fill(0);
  for (let l = 0; l < data.outlets.length; l++) {
    const { from, flow } = data.outlets[l];
    const rate = flow / cells[from].volume;
    for (let i = 0; i < FLOWING; i++) out[i] += rate * u[from * STATES + i];
  }
  // Links that run back: what their derivative takes from one cell it gives to the other.
  for (let l = 0; l < data.back.length; l++) {
    const link = data.back[l];
    const a = link.from * STATES;
    const b = link.to * STATES;
    const rate = link.flow / cells[link.from].volume / d;
    for (let i = 0; i < FLOWING; i++) u[b + i] += rate * u[a + i];
    if (link.shear > 0) breakCoarse(link, rate, u, a, u, b);
  }
}
