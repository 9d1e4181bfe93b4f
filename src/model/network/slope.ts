// The right-hand side: rates of every process in every cell, times the matrix, plus what the links carry.
import { ALK, IC, O2, STATES } from '../components';
import { CONDITIONAL_LENGTH } from '../equilibrium/conditional';
import { applyColumns } from '../kernel/applyColumns';
import { ratesIn } from '../kernel/rates';
import { DERIVATIVES, PROCESSES } from '../kernel/sizes';
import { saturation } from '../processes/film';
import type { Workspace } from '../processes/workspace';
import { acidBase } from './acidBase';
import { carryAll } from './links';
import type { LoopData } from './loopData';

/** A workspace for a loop; its cell, offsets and arrays are set as it moves. */
export function makeWorkspace(data: LoopData): Workspace {
  return {
    cell: data.cells[0],
    y: data.r0,
    o: 0,
    r: data.r0,
    ro: 0,
    g: data.g,
    go: 0,
    keeps: true,
    perVolume: 1,
    h: 1e-4,
    nh3: 0,
    h2s: 0,
    co2: 0,
    co2IC: 0,
    co2ALK: 0,
    carbon: 0,
    carbonate: 0,
    k1: 0,
    k12: 0,
    nitrifying: 1,
    pull: 0,
    light: 0,
    pinned: 0,
  };
}

/** Moves the workspace to a cell and works out its acid-base state and what that leaves of nitrification. */
export function enterCell(w: Workspace, data: LoopData, index: number, y: Float64Array, stage: 0 | 1): void {
  w.cell = data.cells[index];
  w.y = y;
  w.o = index * STATES;
  w.r = stage === 0 ? data.r0 : data.r1;
  w.ro = index * PROCESSES;
  w.keeps = stage === 0;
  // What is written where nobody asks for derivatives is never read: one cell's room does for all.
  w.g = stage === 0 ? data.g : data.gScratch;
  w.go = stage === 0 ? index * DERIVATIVES : 0;
  w.perVolume = 1 / w.cell.volume;
  w.pull = 0;
  // The latest pH found is the nearest: that of a trial step's end, where the next begins.
  w.h = data.h1[index];
  w.pinned = data.holdH;
  acidBase(w, data.constants, index * CONDITIONAL_LENGTH);
  data.h1[index] = w.h;
  if (stage === 0) data.h[index] = w.h;
  const k = data.kinetics;
  const low = w.h / k.lowH;
  let left = k.nitrifierAtBest / ((1 + low * low) * (1 + k.highH / w.h));
  if (data.holdH === 0) {
    const alkalinity = y[w.o + ALK] * w.perVolume;
    left *= alkalinity > 0 ? alkalinity / (k.alkalinity + alkalinity) : 0;
  }
  // Nitrifiers build themselves of inorganic carbon: without any they stand still.
  w.nitrifying = left * saturation(y[w.o + IC] * w.perVolume, k.nitrifierCarbon);
}

/** f(t, y) of the whole loop; stage 0 also writes derivatives to data.g. */
export function loopSlope(data: LoopData, spaces: readonly Workspace[], t: number, y: Float64Array, out: Float64Array, stage: 0 | 1): void {
  const { cells } = data;
  const { table } = data.matrix;
  const n = cells.length;
  carryAll(data, y, out, stage === 0 ? data.outRate0 : data.outRate1);
  const light = data.light(t);
  for (let c = 0; c < n; c++) {
    spaces[c].light = light;
    enterCell(spaces[c], data, c, y, stage);
  }
  ratesIn(spaces, data);
  for (let c = 0; c < n; c++) {
    const w = spaces[c];
    applyColumns(cells[c], w.perVolume, table, y, w.r, w.ro, out, w.o);
  }
  if (data.holdO2 >= 0) {
    const hold = stage === 0 ? data.holdRate0 : data.holdRate1;
    for (let c = 0; c < cells.length; c++) {
      hold[c] = -out[c * STATES + O2];
      out[c * STATES + O2] = 0;
    }
  }
}
