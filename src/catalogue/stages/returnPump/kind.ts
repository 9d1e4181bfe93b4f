// Return pump: lifts water from the sump; breaks coarse solids that pass it. Holds no water of its own.
import type { KindFacts } from '../../../model/stages/stageKind';

export const kind: KindFacts = {
  group: 'moveWater',
  controls: ['pump'],
  airMax_L_min: 0,
  cautions: ['mains'],
  sizes: { flow_m3_h: { from: 0, to: 1000, unit: 'm³/h', usual: 1 } },
  pumps: true,
};
