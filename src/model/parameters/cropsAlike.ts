// Numbers that all crops have alike until one is known better: what pH and cold leave of growth and roots.
import type { ParameterGroup } from './parameter';

export const cropsAlike = {
  acidFrom: { value: 4.8, unit: 'pH', low: 4.4, high: 5.2, source: 'below it growth falls, to nothing one pH lower; from memory', flag: 'memory' },
  rootLeast: { value: 0.3, unit: 'share of root health', low: 0.1, high: 0.5, source: 'that cold or heat leaves at least', flag: 'assumption' },
  rootWider: { value: 3, unit: '°C', low: 1, high: 5, source: 'roots bear so much more cold and heat than leaves do before they suffer', flag: 'assumption' },
} as const satisfies ParameterGroup;
