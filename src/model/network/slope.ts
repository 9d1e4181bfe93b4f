// The right-hand side: rates of every process in every cell, times the matrix, plus what the links carry.
import { ALK, CF, FLOWING, O2, STATES } from '../components';
import { CONDITIONAL_LENGTH } from '../equilibrium/conditional';
import { PROCESSES, SLOTS } from '../processes/catalogue';
import { doseRates } from '../processes/dosing';
import { filmRates } from '../processes/film';
import { fishRates } from '../processes/fish';
import { gasRates } from '../processes/gas';
import { hydrolysisRates } from '../processes/hydrolysis';
import { opportunistRates } from '../processes/opportunists';
import { plantRates } from '../processes/plants';
import { sludgeRates } from '../processes/sludge';
import { solidsRates } from '../processes/solids';
import type { Workspace } from '../processes/workspace';
import { acidBase } from './acidBase';
import { applyColumns } from './columns';
import type { LoopData, Link } from './loopData';
import { moveSolids } from './solidsMoves';

/** A workspace for a loop; its cell, offsets and arrays are set as it moves. */
export function makeWorkspace(data: LoopData): Workspace {
  return {
    cell: data.cells[0], y: data.r0, o: 0, r: data.r0, ro: 0, g: data.g, go: 0, keeps: true, perVolume: 1,
    h: 1e-4, nh3: 0, h2s: 0, co2: 0, co2IC: 0, co2ALK: 0, nitrifying: 1, pull: 0, light: 0,
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
  w.go = stage === 0 ? index * PROCESSES * SLOTS : 0;
  w.perVolume = 1 / w.cell.volume;
  w.pull = 0;
  const guesses = stage === 0 ? data.h : data.h1;
  acidBase(w, data.constants, index * CONDITIONAL_LENGTH, guesses[index], data.holdH);
  guesses[index] = w.h;
  if (stage === 0) data.h1[index] = w.h;
  const k = data.kinetics;
  const low = w.h / k.lowH;
  // 1.016: so that the factor is 1 at pH 7.5
  let left = 1.016 / ((1 + low * low) * (1 + k.highH / w.h));
  if (data.holdH === 0) {
    const alkalinity = y[w.o + ALK] * w.perVolume;
    left *= alkalinity > 0 ? alkalinity / (k.alkalinity + alkalinity) : 0;
  }
  w.nitrifying = left;
}

/** All rates of the cell the workspace is in. */
export function cellRates(w: Workspace, data: LoopData): void {
  const k = data.kinetics;
  const { cell } = w;
  filmRates(w, k);
  hydrolysisRates(w, k);
  if (cell.bedThickness > 0) sludgeRates(w, k);
  solidsRates(w);
  gasRates(w, data.saturation);
  opportunistRates(w, k);
  if (cell.fish) fishRates(w);
  if (cell.bed) plantRates(w, k);
  if (cell.doseRate > 0) doseRates(w);
}

function carry(link: Link, data: LoopData, y: Float64Array, out: Float64Array, outRate: Float64Array): void {
  const { from, to, flow } = link;
  if (from < 0) {
    const o = to * STATES;
    for (let i = 0; i < FLOWING; i++) out[o + i] += flow * data.inflow[i];
    return;
  }
  const rate = flow / data.cells[from].volume;
  const a = from * STATES;
  if (to < 0) {
    for (let i = 0; i < FLOWING; i++) {
      const moved = rate * y[a + i];
      out[a + i] -= moved;
      outRate[i] += moved;
    }
    return;
  }
  const b = to * STATES;
  for (let i = 0; i < FLOWING; i++) out[a + i] -= rate * y[a + i];
  for (let i = 0; i < FLOWING; i++) out[b + i] += rate * y[a + i];
  if (link.shear > 0) breakCoarse(link, rate, y, a, out, b);
}

/** A pump's share of coarse solids arrives as fine and superfine. */
export function breakCoarse(link: Link, rate: number, source: Float64Array, a: number, target: Float64Array, b: number): void {
  for (let part = 0; part < 3; part++) {
    const broken = rate * source[a + CF + part] * link.shear;
    target[b + CF + part] -= broken;
    target[b + CF + 3 + part] += broken * (1 - link.superfine);
    target[b + CF + 6 + part] += broken * link.superfine;
  }
}

/** f(t, y) of the whole loop; stage 0 also writes derivatives to data.g. */
export function loopSlope(data: LoopData, w: Workspace, t: number, y: Float64Array, out: Float64Array, stage: 0 | 1): void {
  const { cells } = data;
  out.fill(0);
  w.light = data.light(t);
  for (let c = 0; c < cells.length; c++) {
    enterCell(w, data, c, y, stage);
    cellRates(w, data);
    const { r, ro, o } = w;
    moveSolids(cells[c], data.moves, w.perVolume, y, out, o, r, ro);
    applyColumns(cells[c], data.matrix.table, r, ro, out, o);
    const { from, at, coefficients } = cells[c].work.apply;
    for (let i = 0; i < from.length; i++) out[o + at[i]] += coefficients[i] * r[ro + from[i]];
  }
  const outRate = stage === 0 ? data.outRate0 : data.outRate1;
  outRate.fill(0);
  for (let l = 0; l < data.links.length; l++) carry(data.links[l], data, y, out, outRate);
  if (data.holdO2 >= 0) {
    const hold = stage === 0 ? data.holdRate0 : data.holdRate1;
    for (let c = 0; c < cells.length; c++) {
      hold[c] = -out[c * STATES + O2];
      out[c * STATES + O2] = 0;
    }
  }
}
