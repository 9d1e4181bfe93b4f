// Mineralisation tank, to the side: takes drained solids; aerated, it keeps them in suspension and gives their nutrients back.
import { airShear } from './stageType';
import type { StageType } from './stageType';

export const mineralisationTank: StageType = {
  kind: 'mineralisationTank', group: 'treatWater', controls: ['air', 'drain'], airMax_L_min: 80, cautions: ['mains', 'hydrogenSulfide', 'openWater'],
  defaults: { volume_m3: 0.2, air_L_min: 20, count: 1 }, cells: 1,
  volume: (s) => (s.volume_m3 ?? 0.2) * (s.count ?? 1),
  cell(s) {
    const volume = this.volume(s);
    const floor = volume / 0.7;
    return { volume, surface: floor, floor, film: floor * 4, sludgeRoom: volume * 0.6, cone: false, depth: 0.6 };
  },
  vessel(s) {
    return { depth_m: 0.7, width_m: Math.sqrt((s.volume_m3 ?? 0.2) / 0.7) * 1.1, height_m: 0.85 };
  },
  solids(cell, c) {
    const k = c.values.kinetics;
    const stirred = Math.min(1, c.airPerVolume / 30);
    const still = 1 - stirred;
    cell.settle0 = k.settleCoarse * cell.floor * still * 0.5;
    cell.settle1 = k.settleFine * cell.floor * still * 0.5;
    cell.settle2 = k.settleSuperfine * cell.floor * still * 0.5;
    cell.stir = 12 * stirred;
    cell.shear = airShear(c);
  },
};
