// The books of what each process of a cell has done: its extents.
// Written by `npm run kernels` from the tables of components and processes: never edited, stale copies fail a test.
import type { Cell } from '../cell';
import { addThreeStretch } from '../../numerics/vectors';

/** Adds `half` × (rates of both stages + corrections) to the extents of what can run; the cell's begin at `o`. */
export function addExtents(cell: Cell, extents: Float64Array, r0: Float64Array, r1: Float64Array, delta: Float64Array, half: number,
  o: number): void {
  addThreeStretch(extents, r0, r1, delta, half, o + 0, o + 27);
  if (cell.bedThickness > 0) addThreeStretch(extents, r0, r1, delta, half, o + 27, o + 40);
  if (cell.holds) addThreeStretch(extents, r0, r1, delta, half, o + 40, o + 44);
  if (cell.filter) addThreeStretch(extents, r0, r1, delta, half, o + 44, o + 45);
  if (cell.fish) addThreeStretch(extents, r0, r1, delta, half, o + 45, o + 48);
  if (cell.bed) addThreeStretch(extents, r0, r1, delta, half, o + 48, o + 60);
  if (cell.kill > 0) addThreeStretch(extents, r0, r1, delta, half, o + 60, o + 61);
  if (cell.doseRate > 0) addThreeStretch(extents, r0, r1, delta, half, o + 61, o + 67);
  if (cell.settle0 > 0) addThreeStretch(extents, r0, r1, delta, half, o + 67, o + 70);
  if (cell.settle1 > 0) addThreeStretch(extents, r0, r1, delta, half, o + 70, o + 73);
  if (cell.settle2 > 0) addThreeStretch(extents, r0, r1, delta, half, o + 73, o + 76);
  if (cell.catch0 > 0) addThreeStretch(extents, r0, r1, delta, half, o + 76, o + 79);
  if (cell.catch1 > 0) addThreeStretch(extents, r0, r1, delta, half, o + 79, o + 82);
  if (cell.catch2 > 0) addThreeStretch(extents, r0, r1, delta, half, o + 82, o + 85);
  if (cell.shear > 0) addThreeStretch(extents, r0, r1, delta, half, o + 85, o + 88);
  if (cell.stir > 0 && cell.sludgeRoom > 0) addThreeStretch(extents, r0, r1, delta, half, o + 88, o + 91);
  if (cell.release > 0) addThreeStretch(extents, r0, r1, delta, half, o + 91, o + 94);
}
