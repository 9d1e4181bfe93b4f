// Mineralisation tank, to the side: takes drained solids; aerated, it keeps them in suspension and gives their nutrients back.
import { airShear } from '../../../model/stages/solidsTerms';
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = {
  cells: 1,
  volume: (s) => (s.volume_m3 ?? 0.2) * (s.count ?? 1),
  cell(s, v) {
    const volume = this.volume(s, v);
    const floor = volume / v.stages.tankDepth;
    return { volume, surface: floor, floor, film: floor * v.stages.wallFilm, sludgeRoom: volume * v.stages.mineralRoom, cone: false, depth: 0.6 };
  },
  vessel(s, v) {
    return { depth_m: 0.7, width_m: Math.sqrt((s.volume_m3 ?? 0.2) / v.stages.tankDepth) * 1.1, height_m: 0.85 };
  },
  solids(cell, c) {
    const k = c.values.kinetics;
    const s = c.values.stages;
    const stirred = Math.min(1, c.airPerVolume / s.mediaStirAir);
    const still = 1 - stirred;
    cell.settle0 = k.settleCoarse * cell.floor * still * s.stillTank;
    cell.settle1 = k.settleFine * cell.floor * still * s.stillTank;
    cell.settle2 = k.settleSuperfine * cell.floor * still * s.stillTank;
    cell.stir = s.mineralStir * stirred;
    cell.shear = airShear(c);
  },
};
