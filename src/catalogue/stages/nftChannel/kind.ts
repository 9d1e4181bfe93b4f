// Film channel: plants in covered channels with a centimetre of water; three cells in series. All of it seeps through the root mat.
import type { KindFacts } from '../../../model/stages/stageKind';
import { area, depth } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'growPlants',
  controls: [],
  airMax_L_min: 0,
  cautions: ['produce', 'mains'],
  sizes: { area_m2: area(3), depth_m: depth(0.01, 0.002, 0.1) },
  grows: true,
};
