// Fine-solids filter: mats over gravel. Catches by size, blocks up (coarse several times faster than fine), then lets water past.
import { stages } from '../parameters/stages';
import { passing } from './stageType';
import type { StageType } from './stageType';

export const fineFilter: StageType = {
  kind: 'fineFilter', group: 'catchSolids', controls: ['rinse'], airMax_L_min: 0, cautions: ['hydrogenSulfide', 'openWater'],
  defaults: { volume_m3: 0.15, count: 1 }, cells: 1,
  volume: (s) => (s.volume_m3 ?? 0.15) * (s.count ?? 1),
  cell(s) {
    const volume = this.volume(s);
    const floor = volume / stages.filterDepth.value;
    return { volume, surface: floor, floor, film: volume * stages.matArea.value, sludgeRoom: 0, cone: false, depth: 0.5, filter: true, mediaArea: volume * stages.matArea.value };
  },
  vessel(s) {
    const volume = s.volume_m3 ?? 0.15;
    return { depth_m: 0.85, width_m: Math.sqrt(volume / stages.filterDepth.value) * 1.1, height_m: 1.0 };
  },
  solids(cell, c) {
    const k = c.values.kinetics;
    const square = c.clog * c.clog;
    const through = 1 / (1 + square * square); // share of the water that still passes the mat
    cell.catch0 = passing(k.matCoarse * through, cell.flow);
    cell.catch1 = passing(k.matFine * through, cell.flow);
    cell.catch2 = passing(k.matSuperfine * through, cell.flow);
    cell.release = cell.flow > 0 && c.clog > 1 ? c.values.stages.blockedShed * (c.clog - 1) : 0;
  },
};
