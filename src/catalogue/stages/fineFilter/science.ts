// Fine-solids filter: mats over gravel. Catches by size, blocks up (coarse several times faster than fine), then lets water past.
import { keepBySize, lossThrough } from '../../../model/stages/separating';
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = {
  cells: 1,
  cleaned: (v) => ({ water: v.practice.rinseWater, solids: v.practice.rinsedShare, nitrifiers: v.practice.rinsedNitrifiers, heterotrophs: v.practice.rinsedHeterotrophs }),
  loss(s, flow, clog, v) {
    return lossThrough(v.devices.matLoss, v.devices.matVelocity, flow, this.volume(s, v) / v.stages.filterDepth, clog, v);
  },
  volume: (s) => (s.volume_m3 ?? 0.15) * (s.count ?? 1),
  cell(s, v) {
    const volume = this.volume(s, v);
    const floor = volume / v.stages.filterDepth;
    return { volume, surface: floor, floor, film: volume * v.stages.matArea, sludgeRoom: 0, cone: false, depth: 0.5, filter: true, mediaArea: volume * v.stages.matArea };
  },
  vessel(s, v) {
    const volume = s.volume_m3 ?? 0.15;
    return { depth_m: 0.85, width_m: Math.sqrt(volume / v.stages.filterDepth) * 1.1, height_m: 1.0 };
  },
  solids(cell, c) {
    const k = c.values.kinetics;
    keepBySize(cell, c, k.matCoarse, k.matFine, k.matSuperfine);
  },
};
