// Trussell R.P. 1972, The percent un-ionized ammonia in aqueous ammonia solutions at different pH levels and temperatures,
// J. Fish. Res. Board Can. 29:1505–1507; fresh water table as reprinted. An older pKa: its 25 °C column runs 1.5–2.5 % low.
import { describe, expect, it } from 'vitest';
import { apart, ask } from './answers';

/** id, pH, °C, per cent un-ionised, as printed */
const TABLE: [string, number, number, number][] = [
  ['NH3-T-02', 7.0, 15, 0.27],
  ['NH3-T-03', 7.0, 20, 0.4],
  ['NH3-T-04', 7.0, 25, 0.55],
  ['NH3-T-05', 7.5, 10, 0.59],
  ['NH3-T-06', 7.5, 15, 0.85],
  ['NH3-T-07', 7.5, 20, 1.24],
  ['NH3-T-09', 8.0, 10, 1.83],
  ['NH3-T-12', 8.0, 25, 5.28],
  ['NH3-T-13', 8.5, 10, 5.55],
  ['NH3-T-15', 8.5, 20, 11.18],
  ['NH3-T-17', 7.2, 20, 0.63],
  ['NH3-T-18', 7.8, 25, 3.39],
  ['NH3-T-19', 8.2, 15, 4.14],
  ['NH3-T-20', 8.3, 25, 10.0],
];

describe('the toxic share of ammonia against an older table', () => {
  it.each(TABLE)('%s: at pH %f and %f °C it is the printed %f %%, within 3 %%', (_id, pH, T_C, percent) => {
    expect(apart(100 * ask({ T_C, pH }).NH3_fraction, percent)).toBeLessThan(0.03);
  });
});
