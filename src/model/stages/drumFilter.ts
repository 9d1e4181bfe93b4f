// Screen filter: a drum of fine mesh that washes itself when it covers. A finer mesh keeps more fine solids, never the finest.
import { devices } from '../parameters/devices';
import { stages } from '../parameters/stages';
import { keepBySize, lossThrough } from './separating';
import type { StageType } from './stageType';

/** Share of fine solids that a mesh keeps: that of the usual mesh, rising with the root of its fineness (an assumption), never above this. */
const FINE_MOST = 0.85;

const floorOf = (volume: number): number => volume / devices.screenDepth.value;

export const drumFilter: StageType = {
  kind: 'drumFilter', group: 'catchSolids', controls: ['backwash'], airMax_L_min: 0, cautions: ['mains', 'openWater', 'discharge', 'hydrogenSulfide'],
  defaults: { volume_m3: 0.05, mesh_um: 60, count: 1 }, cells: 1,
  cleaning: { deed: 'backwash', water: devices.screenWash.value, solids: devices.screenWashed.value, nitrifiers: devices.backwashNitrifiers.value, heterotrophs: devices.backwashHeterotrophs.value, byItself: true },
  loss(s, flow, clog) {
    return lossThrough(devices.screenLoss.value, devices.filterVelocity.value, flow, floorOf(this.volume(s)), clog);
  },
  volume: (s) => (s.volume_m3 ?? 0.05) * (s.count ?? 1),
  cell(s) {
    const volume = this.volume(s);
    const floor = floorOf(volume);
    return { volume, surface: floor, floor, film: floor * stages.wallFilm.value, sludgeRoom: 0, cone: false, depth: 0.3, filter: true, filterRoom: devices.screenRoom.value };
  },
  vessel: (s) => ({ depth_m: devices.screenDepth.value, width_m: Math.sqrt(floorOf(s.volume_m3 ?? 0.05)) * 1.3, height_m: devices.screenDepth.value + 0.3 }),
  solids(cell, c) {
    const d = c.values.devices;
    const mesh = c.mesh_um > 0 ? c.mesh_um : d.screenMesh;
    keepBySize(cell, c, d.screenCoarse, Math.min(FINE_MOST, d.screenFine * Math.sqrt(d.screenMesh / mesh)), d.screenSuperfine);
  },
};
