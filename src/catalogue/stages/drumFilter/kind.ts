// Screen filter: a drum of fine mesh that washes itself when it covers. A finer mesh keeps more fine solids, never the finest.
import type { KindFacts } from '../../../model/stages/stageKind';
import { volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'catchSolids',
  controls: ['backwash'],
  airMax_L_min: 0,
  cautions: ['mains', 'openWater', 'discharge', 'hydrogenSulfide'],
  sizes: { volume_m3: volume(0.05), mesh_um: { from: 10, to: 1000, unit: 'µm', usual: 60 } },
  cleanedBy: { deed: 'backwash', byItself: true },
};
