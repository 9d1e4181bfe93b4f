// Cone settler: a plain tank with a steep cone; water crosses it, coarse solids sink and wait to be drained.
import { restInCone } from '../../../model/stages/separating';
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = {
  cells: 1,
  volume: (s) => (s.volume_m3 ?? 0.3) * (s.count ?? 1),
  cell(s, v) {
    const volume = this.volume(s, v);
    const floor = volume / v.devices.coneDepth;
    return { volume, surface: floor, floor, film: floor * v.stages.wallFilm, sludgeRoom: volume * v.devices.coneRoom, cone: true, depth: 0.6 };
  },
  vessel: (s, v) => ({ depth_m: 1.3, width_m: Math.sqrt((s.volume_m3 ?? 0.3) / v.devices.coneDepth) * 1.13, height_m: 1.4 }),
  solids: (cell, c) => { restInCone(cell, c, c.values.devices.coneEfficiency); },
};
