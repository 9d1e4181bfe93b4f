// Benson B.B. & Krause D. 1984, The concentration and isotopic fractionation of oxygen dissolved in freshwater and seawater
// in equilibrium with the atmosphere, Limnol. Oceanogr. 29:620–632; as in APHA 4500-O. Values worked out from the equations.
// The pressure coefficient θ is 0.000975 − … (a public copy prints 9.672e-3, ten times too much).
import { describe, expect, it } from 'vitest';
import { apart, ask, table } from './answers';

/** id, °C, salinity g/kg, pressure atm, mg/L */
const TABLE: [string, number, number, number, number][] = [
  ['O2-E-01', 32, 0, 1, 7.305],
  ['O2-E-02', 35, 0, 1, 6.949],
  ['O2-E-03', 20, 5, 1, 8.828],
  ['O2-E-04', 25, 5, 1, 8.032],
  ['O2-E-07', 20, 0, 0.95, 8.627],
  ['O2-E-08', 25, 0, 0.95, 7.837],
  ['O2-E-09', 28, 0, 0.9, 7.015],
  ['O2-E-11', 22, 0, 0.85, 7.398],
  ['O2-E-12', 25, 0, 0.8, 6.558],
];

describe('oxygen saturation with warmth, salt and height', () => {
  it.each(TABLE)('%s: %f °C, %f g/kg and %f atm give %f mg/L, within 0.002', (_id, T_C, salinity_g_kg, pressure_atm, expected) => {
    const found = ask({ T_C, salinity_g_kg, pressure_atm }).O2_saturation_mg_L;
    expect(Math.abs(found - expected)).toBeLessThanOrEqual(0.002);
  });

  it('an independent speciation code lies 0 to 0.6 % above the equation, as is known of its data', () => {
    for (const row of table('phreeqc-o2.csv')) {
      const found = ask({ T_C: Number(row['T_C']) }).O2_saturation_mg_L;
      expect(Math.abs(found - Number(row['O2_mg_L_benson_krause_1984_eq']))).toBeLessThan(0.002);
      expect(apart(found, Number(row['O2_mg_L_phreeqc']))).toBeLessThan(0.006);
    }
  });
});
