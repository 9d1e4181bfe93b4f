// Tower: plants in upright matting; water seeps down as a film among roots. Little water, much air, and a lift to its top. Area is the face.
import { passing } from '../../../model/stages/solidsTerms';
import type { StageScience } from '../../../model/stages/stageScience';

const heightOf = (height?: number): number => height ?? 1.6;

export const science: StageScience = {
  cells: 1,
  loss: (s) => heightOf(s.height_m),
  volume: (s, v) => (s.area_m2 ?? 2) * (s.count ?? 1) * v.devices.towerWater,
  cell(s, v) {
    const face = (s.area_m2 ?? 2) * (s.count ?? 1);
    const matting = face * v.devices.towerArea;
    return {
      volume: this.volume(s, v), surface: face * v.devices.towerOpen, floor: face, film: matting, sludgeRoom: 0, cone: false, depth: 0.05, bed: true,
      mediaArea: matting, spray: heightOf(s.height_m), breath: face * v.devices.towerThickness * v.devices.draught,
    };
  },
  vessel(s) {
    const height = heightOf(s.height_m);
    return { depth_m: 0.1, width_m: Math.max(0.4, Math.min(4, (s.area_m2 ?? 2) / height)), height_m: height + 0.15 };
  },
  solids(cell, c) {
    const d = c.values.devices;
    cell.catch0 = passing(d.towerCoarse, cell.flow);
    cell.catch1 = passing(d.towerFine, cell.flow);
    cell.catch2 = passing(d.towerSuperfine, cell.flow);
    cell.release = c.values.kinetics.rootRelease;
  },
};
