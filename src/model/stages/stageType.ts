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

/** What leaves in a cleaning, as shares: of the stage's water, of the caught solids, of nitrifying and of heterotrophic film. */
export interface CleaningShares { water: number; solids: number; nitrifiers: number; heterotrophs: number }

/** How a stage's caught solids are got rid of. */
export interface Cleaning {
  deed: 'rinse' | 'backwash';
  /** does it by itself every midnight, or as soon as it blocks */
  byItself: boolean;
  shares(values: Values): CleaningShares;
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
  loss?(sizes: StageSizes, flow_m3_d: number, clog: number, values: Values): number;
  /** water in all units together, m³ */
  volume(sizes: StageSizes, values: Values): number;
  /** sizes of each of its cells */
  cell(sizes: StageSizes, values: Values): CellSizes;
  /** one vessel as it stands: water depth, width and height of the tank, m */
  vessel(sizes: StageSizes, values: Values): { depth_m: number; width_m: number; height_m: number };
  solids(cell: Cell, conditions: SolidsConditions): void;
}

/** A guard of the solver: to keep all of what passes would take an endless flow of cleared water. */
const KEPT_MOST = 0.995;

/**
 * m³/d of water cleared in a mixed cell so that a share E of what passes is kept: E = efficiency·(1 − exp(−v A/Q)).
 * With no flow everything settles at a share of its own speed.
 * @param atRest that share, 0–1
 */
export function cleared(speed_m_d: number, area_m2: number, flow_m3_d: number, efficiency: number, atRest: number): number {
  if (flow_m3_d <= 0) return speed_m_d * area_m2 * atRest;
  const kept = Math.min(efficiency * (1 - exp((-speed_m_d * area_m2) / flow_m3_d)), KEPT_MOST);
  return (flow_m3_d * kept) / (1 - kept);
}

/** As `cleared`, for a device that keeps a stated share of what passes. */
export function passing(share: number, flow_m3_d: number): number {
  const kept = Math.min(Math.max(share, 0), KEPT_MOST);
  return (flow_m3_d * kept) / (1 - kept);
}

/** 1/d at which air breaks coarse solids: nothing below the gentle limit. */
export const airShear = (c: SolidsConditions): number => c.values.kinetics.airShear * Math.max(0, c.airPerVolume - c.values.kinetics.airShearFrom);
