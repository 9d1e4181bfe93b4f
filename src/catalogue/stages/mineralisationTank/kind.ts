// Mineralisation tank, to the side: takes drained solids; aerated, it keeps them in suspension and gives their nutrients back.
import type { KindFacts } from '../../../model/stages/stageKind';
import { air, volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'treatWater',
  controls: ['air', 'drain'],
  airMax_L_min: 80,
  cautions: ['mains', 'hydrogenSulfide', 'openWater', 'discharge', 'weight'],
  sizes: { volume_m3: volume(0.2), air_L_min: air(20) },
  takesSolids: true,
  drains: true,
};
