// Screen filter: a drum of fine mesh that washes itself when it covers. A finer mesh keeps more fine solids, never the finest.
import type { Values } from '../../../model/parameters/values';
import { keepBySize, lossThrough } from '../../../model/stages/separating';
import type { StageScience } from '../../../model/stages/stageScience';

const floorOf = (volume: number, v: Values): number => volume / v.devices.screenDepth;

export const science: StageScience = {
  cells: 1,
  cleaned: (v) => ({ water: v.devices.screenWash, solids: v.devices.screenWashed, nitrifiers: v.devices.backwashNitrifiers, heterotrophs: v.devices.backwashHeterotrophs }),
  loss(s, flow, clog, v) {
    return lossThrough(v.devices.screenLoss, v.devices.filterVelocity, flow, floorOf(this.volume(s, v), v), clog, v);
  },
  volume: (s) => (s.volume_m3 ?? 0.05) * (s.count ?? 1),
  cell(s, v) {
    const volume = this.volume(s, v);
    const floor = floorOf(volume, v);
    return { volume, surface: floor, floor, film: floor * v.stages.wallFilm, sludgeRoom: 0, cone: false, depth: 0.3, filter: true, filterRoom: v.devices.screenRoom };
  },
  vessel: (s, v) => ({ depth_m: v.devices.screenDepth, width_m: Math.sqrt(floorOf(s.volume_m3 ?? 0.05, v)) * 1.3, height_m: v.devices.screenDepth + 0.3 }),
  solids(cell, c) {
    const d = c.values.devices;
    // Fine solids kept: the usual mesh's share, rising with the root of the mesh's fineness (an assumption), up to a most.
    const mesh = c.mesh_um > 0 ? c.mesh_um : d.screenMesh;
    const fine = Math.min(d.screenFineMost, d.screenFine * Math.sqrt(d.screenMesh / mesh));
    keepBySize(cell, c, d.screenCoarse, fine, d.screenSuperfine);
  },
};
