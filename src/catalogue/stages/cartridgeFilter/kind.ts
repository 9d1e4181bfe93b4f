// Cartridge filter: pleats of 10–20 µm in a closed housing. Keeps nearly everything, holds little, and asks for much head.
import type { KindFacts } from '../../../model/stages/stageKind';
import { volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'catchSolids',
  controls: ['rinse'],
  airMax_L_min: 0,
  cautions: ['pressure', 'mains', 'discharge'],
  sizes: { volume_m3: volume(0.02) },
  closed: true,
  pressurised: true,
  cleanedBy: { deed: 'rinse', byItself: false },
};
