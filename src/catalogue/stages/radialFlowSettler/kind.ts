// Radial-flow settler: water enters at the middle, turns outward and up; coarse solids rest in the cone until drained.
import type { KindFacts } from '../../../model/stages/stageKind';
import { air, media, volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'catchSolids',
  controls: ['drain'],
  airMax_L_min: 0,
  cautions: ['hydrogenSulfide', 'weight', 'openWater', 'discharge'],
  sizes: { volume_m3: volume(0.19), air_L_min: air(0), media_m3: media(0) },
  drains: true,
  cone: true,
};
