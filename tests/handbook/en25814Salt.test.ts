// EN 25814 (ISO 5814), salt correction of oxygen saturation: so many mg/L less for each g/kg of salinity, as reprinted. Published.
// Benson & Krause 1984, which the model follows, lies 11–14 % above these factors at loop salinities.
import { describe, expect, it } from 'vitest';
import { apart, ask } from './answers';

/** °C, mg/L of oxygen less for each g/kg */
const TABLE: [number, number][] = [
  [10, 0.0632],
  [20, 0.0475],
  [25, 0.0421],
  [30, 0.0371],
];

describe('salt and oxygen', () => {
  it.each(TABLE)('at %i °C each g/kg of salt costs %f mg/L, within 15 %%', (T_C, factor) => {
    const cost = (ask({ T_C }).O2_saturation_mg_L - ask({ T_C, salinity_g_kg: 2 }).O2_saturation_mg_L) / 2;
    expect(apart(cost, factor)).toBeLessThan(0.15);
  });
});
