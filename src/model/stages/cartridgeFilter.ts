// Cartridge filter: pleats of 10–20 µm in a closed housing. Keeps nearly everything, holds little, and asks for much head.
import { devices } from '../parameters/devices';
import { practice } from '../parameters/practice';
import { keepBySize, lossThrough } from './separating';
import type { StageType } from './stageType';

const housingFloor = (water: number): number => water / devices.pressedDepth.value;

export const cartridgeFilter: StageType = {
  kind: 'cartridgeFilter', group: 'catchSolids', controls: ['rinse'], airMax_L_min: 0, cautions: ['pressure', 'mains', 'discharge'],
  defaults: { volume_m3: 0.02, count: 1 }, cells: 1, pressurised: true,
  cleaning: { deed: 'rinse', water: practice.rinseWater.value, solids: practice.rinsedShare.value, nitrifiers: practice.rinsedNitrifiers.value, heterotrophs: practice.rinsedHeterotrophs.value, byItself: false },
  loss(s, flow, clog) {
    return lossThrough(devices.cartridgeLoss.value, devices.filterVelocity.value, flow, housingFloor(this.volume(s)), clog);
  },
  volume: (s) => (s.volume_m3 ?? 0.02) * (s.count ?? 1),
  cell(s) {
    const volume = this.volume(s);
    const floor = housingFloor(volume);
    const pleats = volume * devices.cartridgeArea.value;
    return { volume, surface: floor * devices.pressedOpen.value, floor, film: pleats, sludgeRoom: 0, cone: false, depth: 0.5, filter: true, filterRoom: devices.cartridgeRoom.value, mediaArea: pleats };
  },
  vessel: (s) => ({ depth_m: devices.pressedDepth.value, width_m: Math.sqrt(housingFloor(s.volume_m3 ?? 0.02)) * 1.2, height_m: devices.pressedDepth.value + 0.15 }),
  solids(cell, c) {
    const d = c.values.devices;
    keepBySize(cell, c, 1, d.cartridgeFine, d.cartridgeSuperfine);
  },
};
