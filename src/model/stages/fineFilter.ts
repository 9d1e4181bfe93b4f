// Fine-solids filter: mats over gravel. Catches by size, blocks up (coarse several times faster than fine), then lets water past.
import { devices } from '../parameters/devices';
import { practice } from '../parameters/practice';
import { stages } from '../parameters/stages';
import { keepBySize, lossThrough } from './separating';
import type { StageType } from './stageType';

export const fineFilter: StageType = {
  kind: 'fineFilter', group: 'catchSolids', controls: ['rinse'], airMax_L_min: 0, cautions: ['hydrogenSulfide', 'openWater', 'discharge', 'weight'],
  defaults: { volume_m3: 0.15, count: 1 }, cells: 1,
  cleaning: { deed: 'rinse', water: practice.rinseWater.value, solids: practice.rinsedShare.value, nitrifiers: practice.rinsedNitrifiers.value, heterotrophs: practice.rinsedHeterotrophs.value, byItself: false },
  loss(s, flow, clog) {
    return lossThrough(devices.matLoss.value, devices.matVelocity.value, flow, this.volume(s) / stages.filterDepth.value, clog);
  },
  volume: (s) => (s.volume_m3 ?? 0.15) * (s.count ?? 1),
  cell(s) {
    const volume = this.volume(s);
    const floor = volume / stages.filterDepth.value;
    return { volume, surface: floor, floor, film: volume * stages.matArea.value, sludgeRoom: 0, cone: false, depth: 0.5, filter: true, mediaArea: volume * stages.matArea.value };
  },
  vessel(s) {
    const volume = s.volume_m3 ?? 0.15;
    return { depth_m: 0.85, width_m: Math.sqrt(volume / stages.filterDepth.value) * 1.1, height_m: 1.0 };
  },
  solids(cell, c) {
    const k = c.values.kinetics;
    keepBySize(cell, c, k.matCoarse, k.matFine, k.matSuperfine);
  },
};
