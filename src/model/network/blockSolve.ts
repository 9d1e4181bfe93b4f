// Solves (d I − W) u = rhs cell by cell down the loop. W keeps whole process columns times chosen derivatives, so every
// conserved sum stays conserved. Order in a cell: pore water and methane alone, the dense block of eight, solids alone by size, then the rest.
// Links that run back (the return) are closed by a conservative correction of the cell they enter.
import type { Alone } from '../cell';
import { FAST, FLOWING, O2, STATES } from '../components';
import { backSubstitute, factorise } from '../../numerics/dense';
import { PROCESSES, SLOTS } from '../processes/catalogue';
import type { LoopData } from './loopData';
import { breakCoarse } from './slope';
import { moveDiagonal, solveMoves } from './solidsMoves';

const BLOCK = FAST * FAST;

/** Diagonals that stay until the next cut: what links carry off and what the moves of solids take. Called once forcing is set. */
export function fixDiagonals(data: LoopData): void {
  const { cells, ownFixed } = data;
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
  w.fill(0);
  own.set(data.ownFixed);
  for (let c = 0; c < cells.length; c++) {
    const { block, before, after } = cells[c].work;
    const o = c * STATES;
    const go = c * PROCESSES * SLOTS;
    const wo = c * BLOCK;
    for (let a = 0; a < before.length; a++) sumAlone(before[a], g, go, own, o);
    for (let a = 0; a < after.length; a++) sumAlone(after[a], g, go, own, o);
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
    const wo = c * BLOCK;
    for (let i = 0; i < BLOCK; i++) lu[wo + i] = -w[wo + i];
    for (let i = 0; i < FAST; i++) lu[wo + i * FAST + i] += d + own[o + i];
    if (data.holdO2 >= 0) for (let j = 0; j < FAST; j++) lu[wo + O2 * FAST + j] = j === O2 ? d : 0;
    if (!factorise(lu, wo, FAST)) return false;
    for (let i = FAST; i < STATES; i++) inverse[o + i] = 1 / (d + own[o + i]);
  }
  return true;
}

/** Processes of one component solved alone: what their sink moves goes to the rows after it. */
function solveAlone(data: LoopData, c: number, alone: Alone, rhs: Float64Array, delta: Float64Array): void {
  const { row, processes: list } = alone;
  const { start, rows, coefficients } = data.matrix;
  const o = c * STATES;
  const u = rhs[o + row] * data.inverse[o + row];
  for (let a = 0; a < list.length; a++) {
    const p = list[a];
    const moved = data.g[(c * PROCESSES + p) * SLOTS] * u;
    delta[c * PROCESSES + p] = moved;
    for (let e = start[p]; e < start[p + 1]; e++) if (rows[e] !== row) rhs[o + rows[e]] += coefficients[e] * moved;
  }
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
  const { cells, links, matrix, g, lu, inverse } = data;
  const { slotRows } = matrix;
  for (let c = 0; c < cells.length; c++) {
    const { slotted, rest, before, after } = cells[c].work;
    const o = c * STATES;
    const ro = c * PROCESSES;
    const go = c * PROCESSES * SLOTS;
    for (let l = 0; l < links.length; l++) {
      const link = links[l];
      if (link.to !== c || link.from < 0 || link.from >= c) continue;
      const from = link.from * STATES;
      const rate = link.flow / cells[link.from].volume;
      for (let i = 0; i < FLOWING; i++) rhs[o + i] += rate * u[from + i];
      if (link.shear > 0) breakCoarse(link, rate, u, from, rhs, o);
    }
    // Alone, since their sinks take oxygen, nitrate and the like from the dense block.
    for (let a = 0; a < before.length; a++) solveAlone(data, c, before[a], rhs, delta);
    // The dense block.
    for (let i = 0; i < FAST; i++) u[o + i] = rhs[o + i];
    let held = 0;
    if (data.holdO2 >= 0) {
      held = -u[o + O2];
      u[o + O2] = 0;
    }
    backSubstitute(lu, c * BLOCK, FAST, u, o);
    for (let b = 0; b < slotted.length; b++) {
      const p = slotted[b];
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
  for (let l = 0; l < links.length; l++) {
    const { from, to, flow } = links[l];
    if (to >= 0 || from < 0) continue;
    const rate = flow / cells[from].volume;
    for (let i = 0; i < FLOWING; i++) out[i] += rate * u[from * STATES + i];
  }
  // Links that run back: what their derivative takes from one cell it gives to the other.
  for (let l = 0; l < links.length; l++) {
    const link = links[l];
    if (link.from < 0 || link.to < 0 || link.from < link.to) continue;
    const a = link.from * STATES;
    const b = link.to * STATES;
    const rate = link.flow / cells[link.from].volume / d;
    for (let i = 0; i < FLOWING; i++) u[b + i] += rate * u[a + i];
    if (link.shear > 0) breakCoarse(link, rate, u, a, u, b);
  }
}
