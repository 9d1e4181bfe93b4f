// Fish tank: keeps the fish; cleans itself by turnover and its outlet, better from the bottom than over the rim.
import type { StageScience } from '../../../model/stages/stageScience';
import { airShear } from '../../../model/stages/solidsTerms';

export const science: StageScience = {
  cells: 1,
  volume: (s) => (s.volume_m3 ?? 1) * (s.count ?? 1),
  cell(s, v) {
    const volume = this.volume(s, v);
    const depth = Math.min(1.2, Math.max(0.4, 0.9 * Math.sqrt((s.volume_m3 ?? 1))));
    const floor = volume / depth;
    return { volume, surface: floor, floor, film: floor * v.stages.fishTankFilm, sludgeRoom: floor * v.stages.floorRoom, cone: false, depth: depth * 0.9, fish: true };
  },
  vessel(s) {
    const depth = Math.min(1.2, Math.max(0.4, 0.9 * Math.sqrt((s.volume_m3 ?? 1))));
    return { depth_m: depth, width_m: Math.sqrt((s.volume_m3 ?? 1) / depth) * 1.13, height_m: depth + 0.12 };
  },
  solids(cell, c) {
    // Fish and inflow keep solids moving; a bottom outlet leaves little behind.
    const k = c.values.kinetics;
    const s = c.values.stages;
    const bottom = c.outlet === 'bottomLift';
    const still = cell.flow > 0 ? (bottom ? s.bottomLiftStill : s.surfaceStill) : s.idleStill;
    cell.settle0 = k.settleCoarse * cell.floor * still;
    cell.settle1 = k.settleFine * cell.floor * still;
    cell.settle2 = k.settleSuperfine * cell.floor * still;
    cell.stir = cell.flow > 0 ? (bottom ? s.bottomLiftStir : s.surfaceStir) : s.idleStir;
    cell.shear = airShear(c);
  },
};
