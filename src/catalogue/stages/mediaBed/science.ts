// Media bed: plants in gravel that floods and drains. Filter, film reactor and bed in one; water is the mean over a cycle, and each draining draws air in.
import { keepBySize } from '../../../model/stages/separating';
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = {
  cells: 1,
  cleaned: (v) => ({ water: v.devices.gravelRinseWater, solids: v.devices.gravelRinsed, nitrifiers: v.devices.gravelNitrifiers, heterotrophs: v.devices.gravelRinsed }),
  volume: (s, v) => (s.area_m2 ?? 2) * (s.depth_m ?? 0.3) * (s.count ?? 1) * v.devices.gravelPores * v.devices.gravelFilled,
  cell(s, v) {
    const floor = (s.area_m2 ?? 2) * (s.count ?? 1);
    const gravel = floor * (s.depth_m ?? 0.3);
    const volume = this.volume(s, v);
    const media = gravel * v.devices.gravelArea;
    return {
      volume, surface: floor * v.devices.gravelOpen, floor, film: media, sludgeRoom: 0, cone: false, depth: (s.depth_m ?? 0.3) * 0.5, bed: true,
      filter: true, filterRoom: v.devices.gravelRoom, mediaArea: media, breath: volume * v.devices.gravelCycles,
    };
  },
  vessel(s) {
    const depth = s.depth_m ?? 0.3;
    return { depth_m: depth, width_m: Math.max(1, Math.min(4, (s.area_m2 ?? 2) / 1.2)), height_m: depth + 0.08 };
  },
  solids(cell, c) {
    const d = c.values.devices;
    keepBySize(cell, c, d.gravelCoarse, d.gravelFine, d.gravelSuperfine);
  },
};
