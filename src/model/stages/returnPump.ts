// Return pump: lifts water from the sump; breaks coarse solids that pass it. Holds no water of its own.
import type { StageType } from './stageType';

export const returnPump: StageType = {
  kind: 'returnPump', group: 'moveWater', controls: ['pump'], airMax_L_min: 0, cautions: ['mains'],
  defaults: {}, cells: 0,
  volume: () => 0,
  cell: () => ({ volume: 0, surface: 0, floor: 0, film: 0, sludgeRoom: 0, cone: false, depth: 0 }),
  vessel: () => ({ depth_m: 0, width_m: 0.3, height_m: 0.3 }),
  solids: () => undefined,
};
