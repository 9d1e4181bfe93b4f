// Raft bed: plants on floating rafts, roots in the water; three cells in series. Roots filter whatever solids reach them.
import type { StageType } from './stageType';

export const raftBed: StageType = {
  kind: 'raftBed', group: 'growPlants', controls: ['air'], airMax_L_min: 60, cautions: ['produce', 'weight', 'openWater', 'mains'],
  defaults: { area_m2: 3, depth_m: 0.3, air_L_min: 15, count: 1 }, cells: 3,
  volume: (s) => (s.area_m2 ?? 3) * (s.depth_m ?? 0.3) * (s.count ?? 1),
  cell(s) {
    const area = ((s.area_m2 ?? 3) * (s.count ?? 1)) / 3;
    const depth = s.depth_m ?? 0.3;
    // Rafts cover nearly all of the surface; floor, underside and roots carry film, about 4 m² a m².
    return { volume: area * depth, surface: area * 0.05, floor: area, film: area * 4, sludgeRoom: area * 0.05, cone: false, depth: depth * 0.9, bed: true };
  },
  vessel(s) {
    const area = s.area_m2 ?? 3;
    return { depth_m: s.depth_m ?? 0.3, width_m: Math.max(1, Math.min(4, area / 1.2)), height_m: (s.depth_m ?? 0.3) + 0.08 };
  },
  solids(cell, c) {
    const k = c.values.kinetics;
    const roots = 0.25 + (0.75 * c.leaf) / (c.leaf + 40); // young roots filter less
    cell.catch0 = k.rootCoarse * cell.floor * roots;
    cell.catch1 = k.rootFine * cell.floor * roots;
    cell.catch2 = k.rootSuperfine * cell.floor * roots;
    cell.release = k.rootRelease;
    const still = c.airPerVolume > 30 ? 0.1 : 0.3;
    cell.settle0 = k.settleCoarse * cell.floor * still * 0.1;
    cell.settle1 = k.settleFine * cell.floor * still * 0.1;
    cell.settle2 = k.settleSuperfine * cell.floor * still * 0.1;
    cell.stir = 0.02;
  },
};
