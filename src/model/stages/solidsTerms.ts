// How a cell clears water of solids, and air breaks them: terms that the science of stages is written in.
import { exp } from '../../numerics/elementary';
import type { SolidsConditions } from './stageScience';

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
export const airShear = (c: SolidsConditions): number =>
  c.values.kinetics.airShear * Math.max(0, c.airPerVolume - c.values.kinetics.airShearFrom);
