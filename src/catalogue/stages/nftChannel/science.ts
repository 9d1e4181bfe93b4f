// Film channel: plants in covered channels with a centimetre of water; three cells in series. All of it seeps through the root mat.
import { rootCurtain } from '../../../model/stages/roots';
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = {
  cells: 3,
  volume: (s) => (s.area_m2 ?? 3) * (s.depth_m ?? 0.01) * (s.count ?? 1),
  cell(s, v) {
    const area = ((s.area_m2 ?? 3) * (s.count ?? 1)) / 3;
    const depth = s.depth_m ?? 0.01;
    return {
      volume: area * depth, surface: area * v.devices.channelOpen, floor: area, film: area * v.devices.channelFilm, sludgeRoom: area * v.devices.channelRoom,
      cone: false, depth: depth * 0.9, bed: true, breath: area * v.devices.channelAir * v.devices.draught,
    };
  },
  vessel(s) {
    const depth = s.depth_m ?? 0.01;
    return { depth_m: depth, width_m: Math.max(1, Math.min(4, (s.area_m2 ?? 3) / 1.2)), height_m: depth + 0.06 };
  },
  solids(cell, c) {
    const k = c.values.kinetics;
    const d = c.values.devices;
    rootCurtain(cell, c, d.channelRoots);
    cell.settle0 = k.settleCoarse * cell.floor * d.channelStill;
    cell.settle1 = k.settleFine * cell.floor * d.channelStill;
    cell.settle2 = k.settleSuperfine * cell.floor * d.channelStill;
    cell.stir = d.channelStir;
  },
};
