// Whether the processes of each place run in a cell.
// Written by `npm run kernels` from the tables of components and processes: never edited, stale copies fail a test.
import type { Cell } from '../cell';
import type { Where } from '../processes/where';

export const RUNS: Readonly<Record<Where, (cell: Cell) => boolean>> = {
  everywhere: () => true,
  sludge: (cell) => cell.bedThickness > 0,
  caught: (cell) => cell.holds,
  filter: (cell) => cell.filter,
  fish: (cell) => cell.fish,
  crop: (cell) => cell.bed,
  lamp: (cell) => cell.kill > 0,
  dosed: (cell) => cell.doseRate > 0,
  settle0: (cell) => cell.settle0 > 0,
  settle1: (cell) => cell.settle1 > 0,
  settle2: (cell) => cell.settle2 > 0,
  catch0: (cell) => cell.catch0 > 0,
  catch1: (cell) => cell.catch1 > 0,
  catch2: (cell) => cell.catch2 > 0,
  shear: (cell) => cell.shear > 0,
  stir: (cell) => cell.stir > 0 && cell.sludgeRoom > 0,
  release: (cell) => cell.release > 0,
};
