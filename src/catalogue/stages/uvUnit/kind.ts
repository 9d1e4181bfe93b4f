// Ultraviolet unit: a lamp in a quartz sleeve kills free bacteria that it reaches. Turbid water takes the light and shelters them.
import type { KindFacts } from '../../../model/stages/stageKind';
import { volume } from '../../../model/stages/sizes';

export const kind: KindFacts = {
  group: 'dosePolish',
  controls: ['lamp'],
  airMax_L_min: 0,
  cautions: ['uvLight', 'mains'],
  sizes: { volume_m3: volume(0.008), lamp_W: { from: 0, to: 10000, unit: 'W', usual: 40 } },
  closed: true,
  pressurised: true,
  lamp: true,
};
