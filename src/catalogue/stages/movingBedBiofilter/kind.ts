// Moving bed: carriers tumbled by air. Much film that stays thin, nothing caught while it moves; the tumbling grinds solids finer.
import type { KindFacts } from '../../../model/stages/stageKind';
import { air, media, volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'treatWater',
  controls: ['air'],
  airMax_L_min: 120,
  cautions: ['mains', 'weight', 'openWater'],
  sizes: { volume_m3: volume(0.3), air_L_min: air(20), media_m3: media(0.12) },
};
