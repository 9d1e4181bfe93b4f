// Bead filter: floating beads in a closed hull keep solids and carry film; tumbled clean by a backwash. Volume is that of the beads.
import { devices } from '../parameters/devices';
import { keepBySize, lossThrough } from './separating';
import type { StageType } from './stageType';

const hullFloor = (water: number): number => water / devices.pressedDepth.value;

export const beadFilter: StageType = {
  kind: 'beadFilter', group: 'catchSolids', controls: ['backwash'], airMax_L_min: 0, cautions: ['pressure', 'mains', 'hydrogenSulfide', 'discharge'],
  defaults: { volume_m3: 0.05, count: 1 }, cells: 1, pressurised: true,
  cleaning: { deed: 'backwash', water: devices.backwashWater.value, solids: devices.backwashSolids.value, nitrifiers: devices.backwashNitrifiers.value, heterotrophs: devices.backwashHeterotrophs.value, byItself: false },
  loss(s, flow, clog) {
    return lossThrough(devices.beadLoss.value, devices.filterVelocity.value, flow, hullFloor(this.volume(s)), clog);
  },
  volume: (s) => (s.volume_m3 ?? 0.05) * (s.count ?? 1) * devices.beadWater.value,
  cell(s) {
    const volume = this.volume(s);
    const floor = hullFloor(volume);
    const media = (s.volume_m3 ?? 0.05) * (s.count ?? 1) * devices.beadArea.value;
    return { volume, surface: floor * devices.pressedOpen.value, floor, film: media, sludgeRoom: 0, cone: false, depth: 0.5, filter: true, filterRoom: devices.beadRoom.value, mediaArea: media };
  },
  vessel: (s) => ({ depth_m: 0.8, width_m: Math.sqrt(hullFloor((s.volume_m3 ?? 0.05) * devices.beadWater.value)) * 1.3, height_m: 0.95 }),
  solids(cell, c) {
    const d = c.values.devices;
    keepBySize(cell, c, d.beadCoarse, d.beadFine, d.beadSuperfine);
  },
};
