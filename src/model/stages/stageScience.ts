// What the science of a stage says: its water, its cells, how it stands, what head it costs, how it treats solids. No words.
import type { Cell, CellSizes } from '../cell';
import type { Values } from '../parameters/values';

/** Sizes as a plan gives them; each stage says which it takes. */
export interface StageSizes {
  volume_m3?: number;
  area_m2?: number;
  depth_m?: number;
  media_m3?: number;
  air_L_min?: number;
  outlet?: 'bottomLift' | 'surface';
  count?: number;
  /** electrical power of a lamp, W; mesh of a screen, µm; height of a tower, m */
  lamp_W?: number;
  mesh_um?: number;
  height_m?: number;
  flow_m3_h?: number;
}

/** What decides how a cell treats solids until the next cut. */
export interface SolidsConditions {
  values: Values;
  /** sludge against room, 0–1 and beyond; filter blockage, 1 = half bypasses; leaf g dry/m²; gas from the bed, L/m²/d */
  fill: number;
  clog: number;
  leaf: number;
  gas: number;
  /** L/min of air per m³ */
  airPerVolume: number;
  outlet: 'bottomLift' | 'surface';
  /** fine and superfine solids in the water, g dry/m³; lamp power now, W, all units together; mesh, µm */
  fines: number;
  /** solids caught on roots, g dry/m² of bed */
  mat: number;
  lamp_W: number;
  mesh_um: number;
}

/** What leaves in a cleaning, as shares: of the stage's water, of the caught solids, of nitrifying and of heterotrophic film. */
export interface CleaningShares {
  water: number;
  solids: number;
  nitrifiers: number;
  heterotrophs: number;
}

export interface StageScience {
  /** cells in series; a kind that holds no water has none */
  cells: number;
  /** what leaves when it is cleaned, where it can be */
  cleaned?(values: Values): CleaningShares;
  /** m of head that water loses in passing, all units together, where `clog` is its blockage; left out: none */
  loss?(sizes: StageSizes, flow_m3_d: number, clog: number, values: Values): number;
  /** water in all units together, m³ */
  volume(sizes: StageSizes, values: Values): number;
  /** sizes of each of its cells */
  cell(sizes: StageSizes, values: Values): CellSizes;
  /** one vessel as it stands: water depth, width and height of the tank, m */
  vessel(sizes: StageSizes, values: Values): { depth_m: number; width_m: number; height_m: number };
  solids(cell: Cell, conditions: SolidsConditions): void;
}
