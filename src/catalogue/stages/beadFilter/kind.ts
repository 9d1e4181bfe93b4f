// Bead filter: floating beads in a closed hull keep solids and carry film; tumbled clean by a backwash. Volume is that of the beads.
import type { KindFacts } from '../../../model/stages/stageKind';
import { volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'catchSolids',
  controls: ['backwash'],
  airMax_L_min: 0,
  cautions: ['pressure', 'mains', 'hydrogenSulfide', 'discharge'],
  sizes: { volume_m3: volume(0.05) },
  closed: true,
  pressurised: true,
  cleanedBy: { deed: 'backwash', byItself: false },
};
