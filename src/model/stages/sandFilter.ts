// Sand filter: water pressed through sand, good to 20–30 µm; blocks fast and is washed upward. Volume is that of the sand.
import { devices } from '../parameters/devices';
import { keepBySize, lossThrough } from './separating';
import type { StageType } from './stageType';

const hullFloor = (water: number): number => water / devices.pressedDepth.value;

export const sandFilter: StageType = {
  kind: 'sandFilter', group: 'catchSolids', controls: ['backwash'], airMax_L_min: 0, cautions: ['pressure', 'mains', 'weight', 'hydrogenSulfide', 'discharge'],
  defaults: { volume_m3: 0.05, count: 1 }, cells: 1, pressurised: true,
  cleaning: { deed: 'backwash', water: devices.backwashWater.value, solids: devices.backwashSolids.value, nitrifiers: devices.sandNitrifiers.value, heterotrophs: devices.backwashHeterotrophs.value, byItself: false },
  loss(s, flow, clog) {
    return lossThrough(devices.sandLoss.value, devices.filterVelocity.value, flow, hullFloor(this.volume(s)), clog);
  },
  volume: (s) => (s.volume_m3 ?? 0.05) * (s.count ?? 1) * devices.sandWater.value,
  cell(s) {
    const volume = this.volume(s);
    const floor = hullFloor(volume);
    const media = (s.volume_m3 ?? 0.05) * (s.count ?? 1) * devices.sandArea.value * devices.sandFilm.value;
    return { volume, surface: floor * devices.pressedOpen.value, floor, film: media, sludgeRoom: 0, cone: false, depth: 0.5, filter: true, filterRoom: devices.sandRoom.value, mediaArea: media };
  },
  vessel: (s) => ({ depth_m: 0.8, width_m: Math.sqrt(hullFloor((s.volume_m3 ?? 0.05) * devices.sandWater.value)) * 1.3, height_m: 0.95 }),
  solids(cell, c) {
    const d = c.values.devices;
    keepBySize(cell, c, d.sandCoarse, d.sandFine, d.sandSuperfine);
  },
};
