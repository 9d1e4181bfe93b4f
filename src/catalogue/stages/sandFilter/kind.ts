// Sand filter: water pressed through sand, good to 20–30 µm; blocks fast and is washed upward. Volume is that of the sand.
import type { KindFacts } from '../../../model/stages/stageKind';
import { volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'catchSolids',
  controls: ['backwash'],
  airMax_L_min: 0,
  cautions: ['pressure', 'mains', 'weight', 'hydrogenSulfide', 'discharge'],
  sizes: { volume_m3: volume(0.05) },
  closed: true,
  pressurised: true,
  cleanedBy: { deed: 'backwash', byItself: false },
};
