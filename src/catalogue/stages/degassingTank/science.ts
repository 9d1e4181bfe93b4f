// Degassing tank: strong air drives carbon dioxide, methane and hydrogen sulfide out; with media in it, a biofilter too.
import { airShear, cleared } from '../../../model/stages/solidsTerms';
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = {
  cells: 1,
  volume: (s) => (s.volume_m3 ?? 0.3) * (s.count ?? 1),
  cell(s, v) {
    const volume = this.volume(s, v);
    const floor = volume / v.stages.tankDepth;
    const media = (s.media_m3 ?? 0) * (s.count ?? 1) * v.stages.mediaArea;
    return { volume, surface: floor, floor, film: media + floor * v.stages.wallFilm, sludgeRoom: volume * v.stages.tankRoom, cone: false, depth: 0.72, mediaArea: media };
  },
  vessel(s, v) {
    const volume = s.volume_m3 ?? 0.3;
    return { depth_m: 0.85, width_m: Math.sqrt(volume / v.stages.tankDepth) * 1.15, height_m: 0.98 };
  },
  solids(cell, c) {
    const k = c.values.kinetics;
    const s = c.values.stages;
    const stirred = Math.min(1, c.airPerVolume / s.mediaStirAir);
    cell.shear = airShear(c);
    // Media catch a little; stirred media less, and shed it again.
    const caught = k.mediaCatch * cell.mediaArea * (1 - (1 - s.stirredCatch) * stirred);
    cell.catch0 = caught * s.mediaCoarse;
    cell.catch1 = caught;
    cell.catch2 = caught * s.mediaSuperfine;
    cell.release = s.mediaShedStill + s.mediaShed * stirred;
    // A stirred tank keeps its solids in suspension; a still one is a poor settler.
    const still = s.stillTank * (1 - stirred);
    cell.settle0 = still > 0 ? cleared(k.settleCoarse, cell.floor, cell.flow, still, s.restStill) : 0;
    cell.settle1 = still > 0 ? cleared(k.settleFine, cell.floor, cell.flow, still, s.restStill) : 0;
    cell.settle2 = still > 0 ? cleared(k.settleSuperfine, cell.floor, cell.flow, still, s.restStill) : 0;
    cell.stir = s.stirredLift * stirred;
  },
};
