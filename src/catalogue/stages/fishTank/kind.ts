// Fish tank: keeps the fish; cleans itself by turnover and its outlet, better from the bottom than over the rim.
import type { KindFacts } from '../../../model/stages/stageKind';
import { air, media, volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'keepFish',
  controls: ['feed', 'air'],
  airMax_L_min: 120,
  cautions: ['mains', 'openWater', 'fishWelfare', 'permits', 'weight'],
  sizes: { volume_m3: volume(1), outlet: ['bottomLift', 'surface'], air_L_min: air(30), media_m3: media(0) },
  keepsFish: true,
};
