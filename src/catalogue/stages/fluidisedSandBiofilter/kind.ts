// Fluidised-sand biofilter: water pressed in at the foot lifts a bed of fine sand, whose every grain carries film. Media is the sand at
// rest.
import type { KindFacts } from '../../../model/stages/stageKind';
import { media } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'treatWater',
  controls: [],
  airMax_L_min: 0,
  cautions: ['pressure', 'mains', 'weight'],
  sizes: { media_m3: media(0.03, 0.001) },
  closed: true,
  pressurised: true,
};
