// What a stage's file says of it: group, sizes, cells, how it treats solids, controls and cautions. No words: keys only.
import { exp } from '../../numerics/elementary';
import type { Cell, CellSizes } from '../cell';
import type { Values } from '../parameters/values';

/** Sizes as a plan gives them; each stage says which it takes. */
export interface StageSizes {
  volume_m3?: number; area_m2?: number; depth_m?: number; media_m3?: number; air_L_min?: number; outlet?: 'bottomLift' | 'surface'; count?: number;
  /** electrical power of a lamp, W; mesh of a screen, µm; height of a tower, m */
  lamp_W?: number; mesh_um?: number; height_m?: number;
}

/** What decides how a cell treats solids until the next cut. */
export interface SolidsConditions {
  values: Values;
  /** sludge against room, 0–1 and beyond; filter blockage, 1 = half bypasses; leaf g dry/m²; gas from the bed, L/m²/d */
  fill: number; clog: number; leaf: number; gas: number;
  /** L/min of air per m³ */
  airPerVolume: number;
  outlet: 'bottomLift' | 'surface';
  /** fine and superfine solids in the water, g dry/m³; lamp power now, W, all units together; mesh, µm */
  fines: number;
  /** solids caught on roots, g dry/m² of bed */
  mat: number;
  lamp_W: number; mesh_um: number;
}

/** How a stage's caught solids are got rid of: what leaves with them, as shares. */
export interface Cleaning {
  deed: 'rinse' | 'backwash';
  /** of the stage's water, of the caught solids, of nitrifying and of heterotrophic film */
  water: number; solids: number; nitrifiers: number; heterotrophs: number;
  /** does it by itself every midnight, or as soon as it blocks */
  byItself: boolean;
}

export interface StageType {
  kind: string;
  group: 'keepFish' | 'catchSolids' | 'treatWater' | 'growPlants' | 'moveWater' | 'dosePolish';
  controls: ('air' | 'feed' | 'drain' | 'rinse' | 'backwash' | 'pump' | 'base' | 'lamp')[];
  airMax_L_min: number;
  cautions: string[];
  defaults: StageSizes;
  /** cells in series */
  cells: number;
  /** settled solids can be let out at the bottom; plants can grow here */
  drains?: boolean;
  grows?: boolean;
  cleaning?: Cleaning;
  /** stands in a pressure pipe where it comes after the pump, so that its loss is the pump's */
  pressurised?: boolean;
  /** m of head that water loses in passing, all units together, where `clog` is its blockage; left out: none */
  loss?(sizes: StageSizes, flow_m3_d: number, clog: number): number;
  /** water in all units together, m³ */
  volume(sizes: StageSizes): number;
  /** sizes of each of its cells */
  cell(sizes: StageSizes): CellSizes;
  /** one vessel as it stands: water depth, width and height of the tank, m */
  vessel(sizes: StageSizes): { depth_m: number; width_m: number; height_m: number };
  solids(cell: Cell, conditions: SolidsConditions): void;
}

/**
 * m³/d of water cleared in a mixed cell so that a share E of what passes is kept: E = efficiency·(1 − exp(−v A/Q)).
 * With no flow everything settles at its own speed.
 */
export function cleared(speed_m_d: number, area_m2: number, flow_m3_d: number, efficiency: number): number {
  if (flow_m3_d <= 0) return speed_m_d * area_m2 * 0.5;
  const kept = Math.min(efficiency * (1 - exp((-speed_m_d * area_m2) / flow_m3_d)), 0.995);
  return (flow_m3_d * kept) / (1 - kept);
}

/** As `cleared`, for a device that keeps a stated share of what passes. */
export function passing(share: number, flow_m3_d: number): number {
  const kept = Math.min(Math.max(share, 0), 0.995);
  return (flow_m3_d * kept) / (1 - kept);
}

/** 1/d at which air breaks coarse solids: nothing below the gentle limit. */
export const airShear = (c: SolidsConditions): number => c.values.kinetics.airShear * Math.max(0, c.airPerVolume - c.values.kinetics.airShearFrom);
