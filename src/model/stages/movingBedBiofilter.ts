// Moving bed: carriers tumbled by air. Much film that stays thin, nothing caught while it moves; the tumbling grinds solids finer.
import { devices } from '../parameters/devices';
import { stages } from '../parameters/stages';
import { airShear, cleared } from './stageType';
import type { StageType } from './stageType';

export const movingBedBiofilter: StageType = {
  kind: 'movingBedBiofilter', group: 'treatWater', controls: ['air'], airMax_L_min: 120, cautions: ['mains', 'weight', 'openWater'],
  defaults: { volume_m3: 0.3, media_m3: 0.12, air_L_min: 20, count: 1 }, cells: 1,
  volume: (s) => (s.volume_m3 ?? 0.3) * (s.count ?? 1),
  cell(s) {
    const volume = this.volume(s);
    const floor = volume / stages.tankDepth.value;
    const media = (s.media_m3 ?? 0.12) * (s.count ?? 1) * devices.movingArea.value;
    return { volume, surface: floor, floor, film: media + floor * stages.wallFilm.value, sludgeRoom: volume * 0.1, cone: false, depth: 0.72, mediaArea: media };
  },
  vessel: (s) => ({ depth_m: 0.85, width_m: Math.sqrt((s.volume_m3 ?? 0.3) / stages.tankDepth.value) * 1.15, height_m: 0.98 }),
  solids(cell, c) {
    const k = c.values.kinetics;
    const s = c.values.stages;
    const d = c.values.devices;
    const moving = Math.min(1, c.airPerVolume / s.mediaStirAir);
    cell.shear = airShear(c) + d.carrierShear * moving;
    // Carriers at rest pack, and catch like any packing; what they hold comes off when they move again.
    const caught = k.mediaCatch * cell.mediaArea * (1 - (1 - d.movingCatch) * moving);
    cell.catch0 = caught * 2;
    cell.catch1 = caught;
    cell.catch2 = caught * 0.1;
    cell.release = s.mediaShedStill + s.mediaShed * moving;
    const still = s.stillTank * (1 - moving);
    cell.settle0 = still > 0 ? cleared(k.settleCoarse, cell.floor, cell.flow, still) : 0;
    cell.settle1 = still > 0 ? cleared(k.settleFine, cell.floor, cell.flow, still) : 0;
    cell.settle2 = still > 0 ? cleared(k.settleSuperfine, cell.floor, cell.flow, still) : 0;
    cell.stir = s.stirredLift * moving;
  },
};
