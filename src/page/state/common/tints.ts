// The tints: which quantities colour the water, between which fixed ends, and by which quantities a number is judged.
import type { TintId } from './state';

export interface Tint {
  /** variables whose sum is shown and colours the water */
  variables: readonly string[];
  /** variables whose comfort bands decide the mark beside the number */
  judged: readonly string[];
  /** ends of the colour scale, in the unit shown; fixed, so that two pictures compare */
  low: number;
  high: number;
  /** the name by which the words know its unit */
  unitKey: string;
  decimals: number;
}

export const TINTS: Readonly<Record<TintId, Tint>> = {
  ammonia: { variables: ['TAN_mgN_L'], judged: ['TAN_mgN_L', 'NH3_mgN_L'], low: 0, high: 4, unitKey: 'TAN_mgN_L', decimals: 1 },
  nitrite: { variables: ['NO2_mgN_L'], judged: ['NO2_mgN_L'], low: 0, high: 4, unitKey: 'NO2_mgN_L', decimals: 1 },
  nitrate: { variables: ['NO3_mgN_L'], judged: ['NO3_mgN_L'], low: 0, high: 120, unitKey: 'NO3_mgN_L', decimals: 0 },
  oxygen: { variables: ['O2_mg_L'], judged: ['O2_mg_L'], low: 0, high: 9, unitKey: 'O2_mg_L', decimals: 1 },
  carbonDioxide: { variables: ['CO2_mg_L'], judged: ['CO2_mg_L'], low: 0, high: 40, unitKey: 'CO2_mg_L', decimals: 0 },
  hydrogenSulfide: { variables: ['H2S_ug_L'], judged: ['H2S_ug_L'], low: 0, high: 20, unitKey: 'H2S_ug_L', decimals: 1 },
  solids: {
    variables: ['solidsCoarse_mg_L', 'solidsFine_mg_L'],
    judged: ['solids'],
    low: 0,
    high: 40,
    unitKey: 'solids_mg_L',
    decimals: 0,
  },
  pH: { variables: ['pH'], judged: ['pH'], low: 5.5, high: 8.5, unitKey: 'pH', decimals: 1 },
};

export const TINT_ORDER: readonly TintId[] = [
  'ammonia',
  'nitrite',
  'nitrate',
  'oxygen',
  'carbonDioxide',
  'hydrogenSulfide',
  'solids',
  'pH',
];
