// Raft bed: plants on floating rafts, roots in the water; three cells in series. Roots filter whatever solids reach them.
import { rootCurtain } from '../../../model/stages/roots';
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = {
  cells: 3,
  volume: (s) => (s.area_m2 ?? 3) * (s.depth_m ?? 0.3) * (s.count ?? 1),
  cell(s, v) {
    const area = ((s.area_m2 ?? 3) * (s.count ?? 1)) / 3;
    const depth = s.depth_m ?? 0.3;
    return { volume: area * depth, surface: area * v.stages.raftOpen, floor: area, film: area * v.stages.raftFilm, sludgeRoom: area * v.stages.floorRoom, cone: false, depth: depth * 0.9, bed: true };
  },
  vessel(s) {
    const area = s.area_m2 ?? 3;
    return { depth_m: s.depth_m ?? 0.3, width_m: Math.max(1, Math.min(4, area / 1.2)), height_m: (s.depth_m ?? 0.3) + 0.08 };
  },
  solids(cell, c) {
    const k = c.values.kinetics;
    const s = c.values.stages;
    rootCurtain(cell, c, 1);
    const still = c.airPerVolume > s.mediaStirAir ? s.raftStill / s.raftAired : s.raftStill;
    cell.settle0 = k.settleCoarse * cell.floor * still;
    cell.settle1 = k.settleFine * cell.floor * still;
    cell.settle2 = k.settleSuperfine * cell.floor * still;
    cell.stir = s.raftStir;
  },
};
