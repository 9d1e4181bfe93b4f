// Closes the loop after the sweep down it. The sweep leaves out what the return brings to the first cell. What its derivative
// takes from the last cell it must give to the first, and from there water carries it on round the loop, again and again: its
// echo in each cell is the same share for all that is dissolved and does not vanish on the way. Fast reactants (oxygen,
// sulfide, organics, methane) and solids die out instead, and get no more than the return itself. Either way every sum stays kept.
import { ALK, FLOWING, N2, OP, STATES, TAN } from '../components';
import { addStretch } from '../../numerics/vectors';
import { breakCoarse } from './links';
import type { LoopData } from './loopData';

/** Two stretches of components last: TAN to alkalinity, and nitrogen gas over the salts to free bacteria. */
const lasts = (i: number): boolean => (i >= TAN && i <= ALK) || (i >= N2 && i <= OP);

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
      if (!round || !lasts(i)) u[b + i] += rate * leaves[i];
    }
    if (link.shear > 0) breakCoarse(link, rate, u, a, u, b);
  }
  if (!round) return;
  for (let c = 0; c < cells.length; c++) addEcho(u, c * STATES, echo[c]);
  // What an outlet or a rim loses of the echo goes to the books with the rest.
  for (let l = 0; l < outlets.length; l++) addEcho(outDelta, 0, outlets[l].rate * echo[outlets[l].from]);
}

function addEcho(to: Float64Array, o: number, share: number): void {
  addStretch(to, o + TAN, leaves, TAN, share, ALK - TAN + 1);
  addStretch(to, o + N2, leaves, N2, share, OP - N2 + 1);
}
