// What a stage's file says of it: group, sizes, cells, how it treats solids, controls and cautions. No words: keys only.
import { exp } from '../../numerics/elementary';
import type { Cell, CellSizes } from '../cell';
import type { Values } from '../parameters/values';

/** Sizes as a plan gives them; each stage says which it takes. */
export interface StageSizes {
  volume_m3?: number; area_m2?: number; depth_m?: number; media_m3?: number; air_L_min?: number; outlet?: 'bottomLift' | 'surface'; count?: number;
}

/** What decides how a cell treats solids until the next cut. */
export interface SolidsConditions {
  values: Values;
  /** sludge against room, 0–1 and beyond; filter blockage, 1 = half bypasses; leaf g dry/m²; gas from the bed, L/m²/d */
  fill: number; clog: number; leaf: number; gas: number;
  /** L/min of air per m³ */
  airPerVolume: number;
  outlet: 'bottomLift' | 'surface';
}

export interface StageType {
  kind: string;
  group: 'keepFish' | 'catchSolids' | 'treatWater' | 'growPlants' | 'moveWater' | 'dosePolish';
  controls: ('air' | 'feed' | 'drain' | 'rinse' | 'pump' | 'base')[];
  airMax_L_min: number;
  cautions: string[];
  defaults: StageSizes;
  /** cells in series */
  cells: number;
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
