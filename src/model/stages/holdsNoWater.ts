// The science of what holds no water of its own: a pump in its pipe, a can of base on its table.
import type { StageScience } from './stageScience';

export const holdsNoWater: StageScience = {
  cells: 0,
  volume: () => 0,
  cell: () => ({ volume: 0, surface: 0, floor: 0, film: 0, sludgeRoom: 0, cone: false, depth: 0 }),
  vessel: () => ({ depth_m: 0, width_m: 0.3, height_m: 0.3 }),
  solids: () => undefined,
};
