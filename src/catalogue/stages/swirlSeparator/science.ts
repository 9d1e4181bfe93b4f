// Swirl separator: water enters along the wall and turns; solids gather at the middle and sink, but the swirl carries many out.
// η 0.47 over the velocity classes gives 37 % at 268 m/d (Davidson & Summerfelt 2005).
import { restInCone } from '../../../model/stages/separating';
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = {
  cells: 1,
  volume: (s) => (s.volume_m3 ?? 0.15) * (s.count ?? 1),
  cell(s, v) {
    const volume = this.volume(s, v);
    const floor = volume / v.devices.swirlDepth;
    return { volume, surface: floor, floor, film: floor * v.stages.wallFilm, sludgeRoom: volume * v.devices.swirlRoom, cone: true, depth: 0.5 };
  },
  vessel: (s, v) => ({ depth_m: 1.0, width_m: Math.sqrt((s.volume_m3 ?? 0.15) / v.devices.swirlDepth) * 1.13, height_m: 1.1 }),
  solids: (cell, c) => { restInCone(cell, c, c.values.devices.swirlEfficiency); },
};
