// Moving bed: carriers tumbled by air. Much film that stays thin, nothing caught while it moves; the tumbling grinds solids finer.
import { airShear, cleared } from '../../../model/stages/solidsTerms';
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = {
  cells: 1,
  volume: (s) => (s.volume_m3 ?? 0.3) * (s.count ?? 1),
  cell(s, v) {
    const volume = this.volume(s, v);
    const floor = volume / v.stages.tankDepth;
    const media = (s.media_m3 ?? 0.12) * (s.count ?? 1) * v.devices.movingArea;
    return { volume, surface: floor, floor, film: media + floor * v.stages.wallFilm, sludgeRoom: volume * v.stages.tankRoom, cone: false, depth: 0.72, mediaArea: media };
  },
  vessel: (s, v) => ({ depth_m: 0.85, width_m: Math.sqrt((s.volume_m3 ?? 0.3) / v.stages.tankDepth) * 1.15, height_m: 0.98 }),
  solids(cell, c) {
    const k = c.values.kinetics;
    const s = c.values.stages;
    const d = c.values.devices;
    const moving = Math.min(1, c.airPerVolume / s.mediaStirAir);
    cell.shear = airShear(c) + d.carrierShear * moving;
    // Carriers at rest pack, and catch like any packing; what they hold comes off when they move again.
    const caught = k.mediaCatch * cell.mediaArea * (1 - (1 - d.movingCatch) * moving);
    cell.catch0 = caught * s.mediaCoarse;
    cell.catch1 = caught;
    cell.catch2 = caught * s.mediaSuperfine;
    cell.release = s.mediaShedStill + s.mediaShed * moving;
    const still = s.stillTank * (1 - moving);
    cell.settle0 = still > 0 ? cleared(k.settleCoarse, cell.floor, cell.flow, still, s.restStill) : 0;
    cell.settle1 = still > 0 ? cleared(k.settleFine, cell.floor, cell.flow, still, s.restStill) : 0;
    cell.settle2 = still > 0 ? cleared(k.settleSuperfine, cell.floor, cell.flow, still, s.restStill) : 0;
    cell.stir = s.stirredLift * moving;
  },
};
