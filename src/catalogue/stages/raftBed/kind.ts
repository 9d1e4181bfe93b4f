// Raft bed: plants on floating rafts, roots in the water; three cells in series. Roots filter whatever solids reach them.
import type { KindFacts } from '../../../model/stages/stageKind';
import { air, area, depth, media } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'growPlants',
  controls: ['air'],
  airMax_L_min: 60,
  cautions: ['produce', 'weight', 'openWater', 'mains'],
  sizes: { area_m2: area(3), depth_m: depth(0.3, 0.01, 2), air_L_min: air(15), media_m3: media(0) },
  grows: true,
};
