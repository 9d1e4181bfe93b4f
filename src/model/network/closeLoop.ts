// Closes the loop after the sweep down it. The sweep leaves out what the return brings to the first cell. What its derivative
// takes from the last cell it must give to the first, and from there water carries it on round the loop, again and again: its
// echo in each cell is the same share for all that is dissolved and does not vanish on the way. Fast reactants (oxygen,
// sulfide, organics, methane) and solids die out instead, and get no more than the return itself. Either way every sum stays kept.
import { FLOWING, LASTING, STATES } from '../components';
import { addStretch } from '../../numerics/vectors';
import { breakCoarse } from './links';
import type { LoopData } from './loopData';

/** Components that last stand in stretches: where each begins, and how many they are. */
const BEGINS = LASTING.filter((i) => !LASTING.includes(i - 1));
const LENGTHS = BEGINS.map((from) => Array.from({ length: FLOWING }, (_, n) => n).findIndex((n) => !LASTING.includes(from + n)));
const lasts = Array.from({ length: FLOWING }, (_, i) => LASTING.includes(i));

/** What leaves the last cell, in one solve. */
const leaves = new Float64Array(FLOWING);

/** Shares of what leaves the last cell that its echo makes up in each cell, for one d; only where just one link runs back. */
export function findEchoes(data: LoopData, d: number): void {
  const { cells, echo, outflow, back } = data;
  if (back.length !== 1) return;
  const { from, to, rate } = back[0];
  for (let c = 0; c < cells.length; c++) {
    let sum = c === to ? rate : 0;
    const into = data.forward[c];
    for (let l = 0; l < into.length; l++) sum += into[l].rate * echo[into[l].from];
    echo[c] = sum / (d + outflow[c]);
  }
  // Each time round adds a smaller echo of the last: a geometric series.
  const all = 1 / (1 - echo[from]);
  for (let c = 0; c < cells.length; c++) echo[c] *= all;
}

/** Adds to the solution of the sweep what the links that run back bring. */
export function closeLoop(data: LoopData, d: number, u: Float64Array): void {
  const { cells, echo, back, outlets, outDelta } = data;
  const round = back.length === 1;
  for (let l = 0; l < back.length; l++) {
    const link = back[l];
    const a = link.from * STATES;
    const b = link.to * STATES;
    const rate = link.rate / d;
    for (let i = 0; i < FLOWING; i++) {
      leaves[i] = u[a + i];
      if (!round || !lasts[i]) u[b + i] += rate * leaves[i];
    }
    if (link.shear > 0) breakCoarse(link, rate, u, a, u, b);
  }
  if (!round) return;
  for (let c = 0; c < cells.length; c++) addEcho(u, c * STATES, echo[c]);
  // What an outlet or a rim loses of the echo goes to the books with the rest.
  for (let l = 0; l < outlets.length; l++) addEcho(outDelta, 0, outlets[l].rate * echo[outlets[l].from]);
}

function addEcho(to: Float64Array, o: number, share: number): void {
  for (let k = 0; k < BEGINS.length; k++) addStretch(to, o + BEGINS[k], leaves, BEGINS[k], share, LENGTHS[k]);
}
