// Trickling filter: water sprayed over open packing runs down as a film while air passes by. Strips gases, nitrifies, needs lift to its top.
import { passing } from '../../../model/stages/solidsTerms';
import type { StageScience } from '../../../model/stages/stageScience';

const heightOf = (height?: number): number => height ?? 1.2;

export const science: StageScience = {
  cells: 1,
  loss: (s) => heightOf(s.height_m),
  volume: (s, v) => (s.media_m3 ?? 0.2) * (s.count ?? 1) * v.devices.tricklingWater,
  cell(s, v) {
    const packing = (s.media_m3 ?? 0.2) * (s.count ?? 1);
    const floor = packing / heightOf(s.height_m);
    const film = packing * v.devices.tricklingArea;
    return {
      volume: this.volume(s, v), surface: floor * v.devices.tricklingOpen, floor, film, sludgeRoom: 0, cone: false, depth: 0.05, mediaArea: film,
      spray: heightOf(s.height_m), breath: packing * v.devices.draught,
    };
  },
  vessel(s) {
    const height = heightOf(s.height_m);
    return { depth_m: 0.1, width_m: Math.sqrt((s.media_m3 ?? 0.2) / height) * 1.15, height_m: height + 0.2 };
  },
  solids(cell, c) {
    const d = c.values.devices;
    cell.catch0 = passing(d.tricklingCoarse, cell.flow);
    cell.catch1 = passing(d.tricklingFine, cell.flow);
    cell.catch2 = passing(d.tricklingSuperfine, cell.flow);
    cell.release = cell.flow > 0 ? d.tricklingShed : c.values.stages.mediaShedStill;
  },
};
