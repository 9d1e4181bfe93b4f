// Tower: plants in upright matting; water seeps down as a film among roots. Little water, much air, and a lift to its top. Area is the
// face.
import type { KindFacts } from '../../../model/stages/stageKind';
import { area, height } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'growPlants',
  controls: [],
  airMax_L_min: 0,
  cautions: ['produce', 'mains', 'weight'],
  sizes: { area_m2: area(2), height_m: height(1.6) },
  grows: true,
  sprayed: true,
};
