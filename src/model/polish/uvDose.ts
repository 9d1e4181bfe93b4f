// The dose that water receives from a lamp as it passes, and what it kills of free bacteria there.
import { exp } from '../../numerics/elementary';
import type { Values } from '../parameters/values';
import { uvSurvival, uvWaterFactor } from './uv';

const DAY_s = 86400;
const CM_PER_M = 100;
/** mJ/cm² in a J/m² */
const MJ_CM2_PER_J_M2 = 0.1;

/**
 * Ultraviolet dose that water receives in a pass, mJ/cm²: mean irradiance × time = power × path of the light × water factor / flow,
 * whatever the volume.
 * @param lamp_W electrical power, all units together
 * @param fines_g_m3 fine and superfine solids, g dry/m³
 */
export function doseOf(d: Values['devices'], lamp_W: number, flow_m3_d: number, fines_g_m3: number): number {
  if (lamp_W <= 0 || flow_m3_d <= 0) return 0;
  const passes = d.lightPasses * exp(-d.finesAbsorb * Math.max(0, fines_g_m3));
  const path = d.lampGap * uvWaterFactor(passes, d.lampGap * CM_PER_M);
  return ((lamp_W * d.lampShare * d.sleevePasses * path * DAY_s) / flow_m3_d) * MJ_CM2_PER_J_M2;
}

/**
 * Share of free bacteria killed in a pass, 0–1. Those in or behind particles grow in number with fines, and die at `shieldedKill` of the
 * rate of the free.
 */
export function killedShare(d: Values['devices'], lamp_W: number, flow_m3_d: number, fines_g_m3: number): number {
  const dose = doseOf(d, lamp_W, flow_m3_d, fines_g_m3);
  const fines = Math.max(0, fines_g_m3);
  const reached = 1 - uvSurvival(dose, d.killDose, 0, 0);
  return 1 - uvSurvival(dose, d.killDose, fines / (fines + d.shieldHalf), reached * d.shieldedKill);
}
