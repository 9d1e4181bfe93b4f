// Fine-solids filter: mats over gravel. Catches by size, blocks up (coarse several times faster than fine), then lets water past.
import type { KindFacts } from '../../../model/stages/stageKind';
import { air, media, volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'catchSolids',
  controls: ['rinse'],
  airMax_L_min: 0,
  cautions: ['hydrogenSulfide', 'openWater', 'discharge', 'weight'],
  sizes: { volume_m3: volume(0.15), air_L_min: air(0), media_m3: media(0) },
  cleanedBy: { deed: 'rinse', byItself: false },
};
