// Trickling filter: water sprayed over open packing runs down as a film while air passes by. Strips gases, nitrifies, needs lift to its
// top.
import type { KindFacts } from '../../../model/stages/stageKind';
import { height, media } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'treatWater',
  controls: [],
  airMax_L_min: 0,
  cautions: ['mains', 'weight'],
  sizes: { media_m3: media(0.2, 0.001), height_m: height(1.2) },
  sprayed: true,
};
