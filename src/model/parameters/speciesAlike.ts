// Numbers that all species have alike until one is known better: where harm begins to kill, how discomforts add up, how warmth speeds them.
import type { ParameterGroup } from './parameter';

export const speciesAlike = {
  warmthTheta: { value: 1.06, unit: '1/°C', low: 1.04, high: 1.08, source: 'digestion against 28 °C and basal loss against 25 °C, Q10 near 1.8, from memory', flag: 'memory' },
  hungerWeight: { value: 0.3, unit: 'share of the worst', low: 0.15, high: 0.5, source: 'discomfort of fish that get nothing at all: healthy fish bear weeks of fasting', flag: 'assumption' },
  lesserWeight: { value: 0.25, unit: 'share', low: 0.1, high: 0.5, source: 'of all discomforts but the worst, what counts in welfare', flag: 'assumption' },
  nh3Onset: { value: 5, unit: 'times nh3Safe', low: 3, high: 8, source: 'ammonia from which fish begin to die', flag: 'assumption' },
  no2Onset: { value: 2, unit: 'times no2Safe', low: 1, high: 4, source: 'nitrite from which fish begin to die', flag: 'assumption' },
  acidOnset: { value: 0.5, unit: 'pH', low: 0, high: 1, source: 'above pHHarm: acid from which fish begin to die', flag: 'assumption' },
  baseOnset: { value: 0.3, unit: 'pH', low: 0, high: 0.6, source: 'above pHHighSafe: base from which fish begin to die', flag: 'assumption' },
  baseLethal: { value: 0.5, unit: 'pH', low: 0.2, high: 1, source: 'above pHHighHarm: half die in a day', flag: 'assumption' },
  warmthOnset: { value: 2, unit: '°C', low: 1, high: 4, source: 'short of coldLethal and hotLethal: warmth from which fish begin to die', flag: 'assumption' },
  easeBelow: { value: 5, unit: '°C', low: 3, high: 8, source: 'below optimumLow: cold that is still no discomfort', flag: 'assumption' },
  easeAbove: { value: 1, unit: '°C', low: 0, high: 2, source: 'above optimumHigh: heat that is still no discomfort', flag: 'assumption' },
} as const satisfies ParameterGroup;
