// Ultraviolet unit: a lamp in a quartz sleeve kills free bacteria that it reaches. Turbid water takes the light and shelters them.
import { killedShare } from '../../../model/polish/uvDose';
import { passing } from '../../../model/stages/solidsTerms';
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = {
  cells: 1,
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
