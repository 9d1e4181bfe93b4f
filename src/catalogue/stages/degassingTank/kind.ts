// Degassing tank: strong air drives carbon dioxide, methane and hydrogen sulfide out; with media in it, a biofilter too.
import type { KindFacts } from '../../../model/stages/stageKind';
import { air, media, volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'treatWater',
  controls: ['air'],
  airMax_L_min: 120,
  cautions: ['mains', 'hydrogenSulfide', 'weight', 'openWater'],
  sizes: { volume_m3: volume(0.3), air_L_min: air(60), media_m3: media(0) },
};
