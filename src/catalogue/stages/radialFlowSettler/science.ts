// Radial-flow settler: water enters at the middle, turns outward and up; coarse solids rest in the cone until drained.
// η 0.99 over three velocity classes gives 78 % at 268 m/d (Davidson & Summerfelt 2005).
import { restInCone } from '../../../model/stages/separating';
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = {
  cells: 1,
  volume: (s) => (s.volume_m3 ?? 0.19) * (s.count ?? 1),
  cell(s, v) {
    const volume = this.volume(s, v);
    const floor = volume / v.stages.settlerDepth;
    return { volume, surface: floor, floor, film: floor * v.stages.wallFilm, sludgeRoom: volume * v.stages.settlerRoom, cone: true, depth: 0.5 };
  },
  vessel(s, v) {
    const volume = s.volume_m3 ?? 0.19;
    const width = Math.sqrt(volume / v.stages.settlerDepth) * 1.13;
    return { depth_m: 1.0, width_m: width, height_m: 1.1 };
  },
  solids: (cell, c) => { restInCone(cell, c, c.values.kinetics.radialEfficiency); },
};
