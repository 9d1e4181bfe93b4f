// Ultraviolet unit: a lamp in a quartz sleeve kills free bacteria that it reaches. Turbid water takes the light and shelters them.
import { exp } from '../../numerics/elementary';
import type { Values } from '../parameters/values';
import { uvSurvival, uvWaterFactor } from '../polish/uv';
import { passing } from './stageType';
import type { StageType } from './stageType';

const DAY_s = 86400;
const CM_PER_M = 100;
/** mJ/cm² in a J/m² */
const MJ_CM2_PER_J_M2 = 0.1;

/**
 * Ultraviolet dose that water receives in a pass, mJ/cm²: mean irradiance × time = power × path of the light × water factor / flow, whatever the volume.
 * @param lamp_W electrical power, all units together
 * @param fines_g_m3 fine and superfine solids, g dry/m³
 */
export function doseOf(d: Values['devices'], lamp_W: number, flow_m3_d: number, fines_g_m3: number): number {
  if (lamp_W <= 0 || flow_m3_d <= 0) return 0;
  const passes = d.lightPasses * exp(-d.finesAbsorb * Math.max(0, fines_g_m3));
  const path = d.lampGap * uvWaterFactor(passes, d.lampGap * CM_PER_M);
  return ((lamp_W * d.lampShare * d.sleevePasses * path * DAY_s) / flow_m3_d) * MJ_CM2_PER_J_M2;
}

/** Share of free bacteria killed in a pass, 0–1. Those in or behind particles grow in number with fines, and die at `shieldedKill` of the rate of the free. */
export function killedShare(d: Values['devices'], lamp_W: number, flow_m3_d: number, fines_g_m3: number): number {
  const dose = doseOf(d, lamp_W, flow_m3_d, fines_g_m3);
  const fines = Math.max(0, fines_g_m3);
  const reached = 1 - uvSurvival(dose, d.killDose, 0, 0);
  return 1 - uvSurvival(dose, d.killDose, fines / (fines + d.shieldHalf), reached * d.shieldedKill);
}

export const uvUnit: StageType = {
  kind: 'uvUnit', group: 'dosePolish', controls: ['lamp'], airMax_L_min: 0, cautions: ['uvLight', 'mains'],
  defaults: { volume_m3: 0.008, lamp_W: 40, count: 1 }, cells: 1, pressurised: true,
  volume: (s) => (s.volume_m3 ?? 0.008) * (s.count ?? 1),
  cell(s, v) {
    const volume = this.volume(s, v);
    const floor = volume / v.devices.pressedDepth;
    return { volume, surface: floor * v.devices.pressedOpen, floor, film: floor, sludgeRoom: 0, cone: false, depth: 0.3 };
  },
  vessel: (s) => ({ depth_m: 0.25, width_m: Math.max(0.3, Math.min(1.2, (s.volume_m3 ?? 0.008) * 100)), height_m: 0.3 }),
  solids(cell, c) {
    cell.kill = passing(killedShare(c.values.devices, c.lamp_W, cell.flow, c.fines), cell.flow);
  },
};
