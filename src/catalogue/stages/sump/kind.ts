// Sump: the lowest tank; takes up every change of volume, is topped up, and feeds the return pump.
import type { KindFacts } from '../../../model/stages/stageKind';
import { air, media, volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'moveWater',
  controls: [],
  airMax_L_min: 0,
  cautions: ['mains', 'openWater', 'hydrogenSulfide', 'weight'],
  sizes: { volume_m3: volume(0.4), air_L_min: air(0), media_m3: media(0) },
  lowest: true,
};
