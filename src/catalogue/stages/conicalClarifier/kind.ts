// Cone settler: a plain tank with a steep cone; water crosses it, coarse solids sink and wait to be drained.
import type { KindFacts } from '../../../model/stages/stageKind';
import { air, media, volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'catchSolids',
  controls: ['drain'],
  airMax_L_min: 0,
  cautions: ['hydrogenSulfide', 'weight', 'openWater', 'discharge'],
  sizes: { volume_m3: volume(0.3), air_L_min: air(0), media_m3: media(0) },
  drains: true,
  cone: true,
};
