// Radial-flow settler: water enters at the middle, turns outward and up; coarse solids rest in the cone until drained.
// η 0.99 over three velocity classes gives 78 % at 268 m/d (Davidson & Summerfelt 2005).
import { stages } from '../parameters/stages';
import { cleared } from './stageType';
import type { StageType } from './stageType';

export const radialFlowSettler: StageType = {
  kind: 'radialFlowSettler', group: 'catchSolids', controls: ['drain'], airMax_L_min: 0, cautions: ['hydrogenSulfide', 'weight', 'openWater'],
  defaults: { volume_m3: 0.19, count: 1 }, cells: 1,
  volume: (s) => (s.volume_m3 ?? 0.19) * (s.count ?? 1),
  cell(s) {
    const volume = this.volume(s);
    const floor = volume / stages.settlerDepth.value;
    return { volume, surface: floor, floor, film: floor * stages.wallFilm.value, sludgeRoom: volume * stages.settlerRoom.value, cone: true, depth: 0.5 };
  },
  vessel(s) {
    const volume = s.volume_m3 ?? 0.19;
    const width = Math.sqrt(volume / stages.settlerDepth.value) * 1.13;
    return { depth_m: 1.0, width_m: width, height_m: 1.1 };
  },
  solids(cell, c) {
    const k = c.values.kinetics;
    const full = Math.min(c.fill, 1.2);
    const left = Math.max(0, 1 - full * full * full * full) * k.radialEfficiency;
    cell.settle0 = cleared(k.settleCoarse, cell.floor, cell.flow, left);
    cell.settle1 = cleared(k.settleFine, cell.floor, cell.flow, left);
    cell.settle2 = cleared(k.settleSuperfine, cell.floor, cell.flow, left);
    // Past its room sludge washes out; gas lifts some earlier.
    const { coneFull, coneScour } = c.values.stages;
    cell.stir = (c.fill > coneFull && cell.flow > 0 ? coneScour * (c.fill - coneFull) : 0) + k.gasLift * c.gas;
  },
};
