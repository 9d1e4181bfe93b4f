// Roots in the water as a filter: what hangs there catches solids, more as the crop grows.
import type { Cell } from '../cell';
import type { SolidsConditions } from './stageScience';

/** Sets what roots catch and let go; `times` a raft's curtain. Young roots filter less. */
export function rootCurtain(cell: Cell, c: SolidsConditions, times: number): void {
  const k = c.values.kinetics;
  const s = c.values.stages;
  // A coat of solids lets less water through to the roots, and the thicker it is the more of it falls off.
  const coat = c.mat / k.rootCoat;
  const grown = (times / (1 + coat)) * (s.youngRoots + ((1 - s.youngRoots) * c.leaf) / (c.leaf + s.rootGrowthHalf));
  cell.catch0 = k.rootCoarse * cell.floor * grown;
  cell.catch1 = k.rootFine * cell.floor * grown;
  cell.catch2 = k.rootSuperfine * cell.floor * grown;
  cell.release = k.rootRelease + (k.rootSlough * coat) / (1 + coat);
}
