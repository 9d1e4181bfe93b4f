// Cartridge filter: pleats of 10–20 µm in a closed housing. Keeps nearly everything, holds little, and asks for much head.
import type { Values } from '../parameters/values';
import { keepBySize, lossThrough } from './separating';
import type { StageType } from './stageType';

const housingFloor = (water: number, v: Values): number => water / v.devices.pressedDepth;

export const cartridgeFilter: StageType = {
  kind: 'cartridgeFilter', group: 'catchSolids', controls: ['rinse'], airMax_L_min: 0, cautions: ['pressure', 'mains', 'discharge'],
  defaults: { volume_m3: 0.02, count: 1 }, cells: 1, pressurised: true,
  cleaning: {
    deed: 'rinse', byItself: false,
    shares: (v) => ({ water: v.practice.rinseWater, solids: v.practice.rinsedShare, nitrifiers: v.practice.rinsedNitrifiers, heterotrophs: v.practice.rinsedHeterotrophs }),
  },
  loss(s, flow, clog, v) {
    return lossThrough(v.devices.cartridgeLoss, v.devices.filterVelocity, flow, housingFloor(this.volume(s, v), v), clog, v);
  },
  volume: (s) => (s.volume_m3 ?? 0.02) * (s.count ?? 1),
  cell(s, v) {
    const volume = this.volume(s, v);
    const floor = housingFloor(volume, v);
    const pleats = volume * v.devices.cartridgeArea;
    return { volume, surface: floor * v.devices.pressedOpen, floor, film: pleats, sludgeRoom: 0, cone: false, depth: 0.5, filter: true, filterRoom: v.devices.cartridgeRoom, mediaArea: pleats };
  },
  vessel: (s, v) => ({ depth_m: v.devices.pressedDepth, width_m: Math.sqrt(housingFloor(s.volume_m3 ?? 0.02, v)) * 1.2, height_m: v.devices.pressedDepth + 0.15 }),
  solids(cell, c) {
    const d = c.values.devices;
    keepBySize(cell, c, d.cartridgeCoarse, d.cartridgeFine, d.cartridgeSuperfine);
  },
};
