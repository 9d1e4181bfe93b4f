// Sump: the lowest tank; takes up every change of volume, is topped up, and feeds the return pump.
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = {
  cells: 1,
  volume: (s) => (s.volume_m3 ?? 0.4) * (s.count ?? 1),
  cell(s, v) {
    const volume = this.volume(s, v);
    const floor = volume / v.stages.sumpDepth;
    return { volume, surface: floor * v.stages.sumpOpen, floor, film: floor * v.stages.sumpFilm, sludgeRoom: floor * v.stages.floorRoom, cone: false, depth: 0.4 };
  },
  vessel(s, v) {
    const volume = s.volume_m3 ?? 0.4;
    return { depth_m: 0.6, width_m: Math.sqrt(volume / v.stages.sumpDepth) * 1.1, height_m: 0.95 };
  },
  solids(cell, c) {
    const k = c.values.kinetics;
    const s = c.values.stages;
    const still = cell.flow > 0 ? s.sumpStill : s.idleStill;
    cell.settle0 = k.settleCoarse * cell.floor * still;
    cell.settle1 = k.settleFine * cell.floor * still;
    cell.settle2 = k.settleSuperfine * cell.floor * still;
    cell.stir = cell.flow > 0 ? s.sumpStir : 0;
  },
};
