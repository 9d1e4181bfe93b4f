// Bead filter: floating beads in a closed hull keep solids and carry film; tumbled clean by a backwash. Volume is that of the beads.
import type { Values } from '../../../model/parameters/values';
import { keepBySize, lossThrough } from '../../../model/stages/separating';
import type { StageScience } from '../../../model/stages/stageScience';

const hullFloor = (water: number, v: Values): number => water / v.devices.pressedDepth;

export const science: StageScience = {
  cells: 1,
  cleaned: (v) => ({ water: v.devices.backwashWater, solids: v.devices.backwashSolids, nitrifiers: v.devices.backwashNitrifiers, heterotrophs: v.devices.backwashHeterotrophs }),
  loss(s, flow, clog, v) {
    return lossThrough(v.devices.beadLoss, v.devices.filterVelocity, flow, hullFloor(this.volume(s, v), v), clog, v);
  },
  volume: (s, v) => (s.volume_m3 ?? 0.05) * (s.count ?? 1) * v.devices.beadWater,
  cell(s, v) {
    const volume = this.volume(s, v);
    const floor = hullFloor(volume, v);
    const media = (s.volume_m3 ?? 0.05) * (s.count ?? 1) * v.devices.beadArea;
    return { volume, surface: floor * v.devices.pressedOpen, floor, film: media, sludgeRoom: 0, cone: false, depth: 0.5, filter: true, filterRoom: v.devices.beadRoom, mediaArea: media };
  },
  vessel: (s, v) => ({ depth_m: 0.8, width_m: Math.sqrt(hullFloor((s.volume_m3 ?? 0.05) * v.devices.beadWater, v)) * 1.3, height_m: 0.95 }),
  solids(cell, c) {
    const d = c.values.devices;
    keepBySize(cell, c, d.beadCoarse, d.beadFine, d.beadSuperfine);
  },
};
