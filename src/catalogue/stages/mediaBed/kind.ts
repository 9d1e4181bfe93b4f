// Media bed: plants in gravel that floods and drains. Filter, film reactor and bed in one; water is the mean over a cycle, and each
// draining draws air in.
import type { KindFacts } from '../../../model/stages/stageKind';
import { area, depth } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'growPlants',
  controls: ['rinse'],
  airMax_L_min: 0,
  cautions: ['produce', 'weight', 'mains', 'hydrogenSulfide'],
  sizes: { area_m2: area(2), depth_m: depth(0.3, 0.05, 2) },
  grows: true,
  cleanedBy: { deed: 'rinse', byItself: false },
};
