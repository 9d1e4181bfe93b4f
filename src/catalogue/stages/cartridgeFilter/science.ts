// Cartridge filter: pleats of 10–20 µm in a closed housing. Keeps nearly everything, holds little, and asks for much head.
import type { Values } from '../../../model/parameters/values';
import { keepBySize, lossThrough } from '../../../model/stages/separating';
import type { StageScience } from '../../../model/stages/stageScience';

const housingFloor = (water: number, v: Values): number => water / v.devices.pressedDepth;

export const science: StageScience = {
  cells: 1,
  cleaned: (v) => ({ water: v.practice.rinseWater, solids: v.practice.rinsedShare, nitrifiers: v.practice.rinsedNitrifiers, heterotrophs: v.practice.rinsedHeterotrophs }),
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
