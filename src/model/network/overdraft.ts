// A step may overdraw a component by a hair. Before anything is clipped, the process that drew on it is undone by as much:
// its whole column backwards, so that nothing is lost and the books stay true. What flows may also come back along a link.
import { ALK, STATES } from '../components';
import { PROCESSES } from '../kernel/sizes';
import { DEFINITIONS } from '../processes/definitions';
import type { Link } from './loopData';
import type { Matrix } from './matrix';

/** Processes to undo for a component, in turn, as their definitions say. */
const drawersOf = (component: number): number[] =>
  DEFINITIONS.flatMap(({ undone = [] }, p) => undone.flatMap(([of, turn]) => (of === component ? [{ p, turn }] : [])))
    .sort((a, b) => a.turn - b.turn)
    .map(({ p }) => p);
const DRAWERS: readonly (readonly number[])[] = Array.from({ length: STATES }, (_, component) => drawersOf(component));

/**
 * Brings y[o + component] back towards zero by undoing processes of cell `c` that drew on it.
 * @param extents this day's extents, mended along
 */
export function undoOverdraft(matrix: Matrix, y: Float64Array, o: number, component: number, extents: Float64Array, c: number): void {
  for (const p of DRAWERS[component]) {
    const missing = -y[o + component];
    if (!(missing > 0)) return;
    const { start, rows, coefficients } = matrix;
    let own = 0;
    let possible = true;
    for (let e = start[p]; e < start[p + 1]; e++) if (rows[e] === component) own = coefficients[e];
    if (!(own < 0)) continue;
    const amount = -missing / own;
    // What the process made must still be there; alkalinity may stand below zero.
    for (let e = start[p]; e < start[p + 1]; e++)
      if (coefficients[e] > 0 && rows[e] !== component && rows[e] !== ALK && y[o + rows[e]] < coefficients[e] * amount) possible = false;
    if (!possible) continue;
    for (let e = start[p]; e < start[p + 1]; e++) y[o + rows[e]] -= coefficients[e] * amount;
    extents[c * PROCESSES + p] -= amount;
    if (y[o + component] < 0) y[o + component] = 0; // rounding of the division, below 1e-16 of the amount
  }
}

/** Brings a flowing component back towards zero from the cell its water went to, or else came from. */
export function undoFlow(links: readonly Link[], y: Float64Array, c: number, component: number): void {
  const i = c * STATES + component;
  for (const link of links) {
    if (y[i] >= 0) return;
    if (link.flow <= 0 || (link.from !== c && link.to !== c)) continue;
    const other = link.from === c ? link.to : link.from;
    if (other < 0) continue;
    const j = other * STATES + component;
    if (y[j] < -y[i]) continue;
    y[j] += y[i];
    y[i] = 0;
  }
}
