// All rates of some cells, family by family, not cell by cell: the code of all of them does not fit a processor's nearest
// cache, that of one does.
// Written by `npm run kernels` from the tables of components and processes: never edited, stale copies fail a test.
import { filmRates } from '../processes/film';
import { rootRates } from '../processes/roots';
import { hydrolysisRates } from '../processes/hydrolysis';
import { sludgeRates } from '../processes/sludge';
import { solidsRates } from '../processes/solids';
import { fishRates } from '../processes/fish';
import { gasRates } from '../processes/gas';
import { plantRates } from '../processes/plants';
import { freeBacteriaRates } from '../processes/freeBacteria';
import { doseRates } from '../processes/dosing';
import type { RateNumbers, Workspace } from '../processes/workspace';

/** Writes the rates, and at stage 0 the kept derivatives, of the cells that the workspaces are in. */
export function ratesIn(spaces: readonly Workspace[], numbers: RateNumbers): void {
  const n = spaces.length;
  for (let c = 0; c < n; c++) filmRates(spaces[c], numbers);
  for (let c = 0; c < n; c++) if (spaces[c].cell.bed) rootRates(spaces[c], numbers);
  for (let c = 0; c < n; c++) hydrolysisRates(spaces[c], numbers);
  for (let c = 0; c < n; c++) if (spaces[c].cell.bedThickness > 0) sludgeRates(spaces[c], numbers);
  for (let c = 0; c < n; c++) if (spaces[c].cell.filter) solidsRates(spaces[c], numbers);
  for (let c = 0; c < n; c++) if (spaces[c].cell.fish) fishRates(spaces[c], numbers);
  for (let c = 0; c < n; c++) gasRates(spaces[c], numbers);
  for (let c = 0; c < n; c++) if (spaces[c].cell.bed) plantRates(spaces[c], numbers);
  for (let c = 0; c < n; c++) freeBacteriaRates(spaces[c], numbers);
  for (let c = 0; c < n; c++) if (spaces[c].cell.doseRate > 0) doseRates(spaces[c]);
}
