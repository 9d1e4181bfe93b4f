// Swirl separator: water enters along the wall and turns; solids gather at the middle and sink, but the swirl carries many out.
import type { KindFacts } from '../../../model/stages/stageKind';
import { air, media, volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'catchSolids',
  controls: ['drain'],
  airMax_L_min: 0,
  cautions: ['hydrogenSulfide', 'weight', 'openWater', 'discharge'],
  sizes: { volume_m3: volume(0.15), air_L_min: air(0), media_m3: media(0) },
  drains: true,
  cone: true,
};
