// Emerson K., Russo R.C., Lund R.E., Thurston R.V. 1975, Aqueous ammonia equilibrium calculations: effect of pH and
// temperature, J. Fish. Res. Board Can. 32:2379–2383. Equation published; its slope is 2729.92 (2727.92 is a copying slip).
// Table: UF/IFAS EDIS FA031 fig. 4 and SRAC 463, "calculated from Emerson et al. 1975", as reprinted in Fundamentals of
// Aquatic Veterinary Medicine, table 1.4. Left out as printing errors: its 32 °C column, and pH 7.4 at 20 °C.
import { describe, expect, it } from 'vitest';
import { apart, ask } from './answers';

/** id, pH, °C, share of total ammonia that is un-ionised, as printed */
const TABLE: [string, number, number, number][] = [
  ['NH3-P-03', 7.0, 20, 0.0039],
  ['NH3-P-04', 7.0, 24, 0.0052],
  ['NH3-P-05', 7.0, 28, 0.0069],
  ['NH3-P-06', 7.2, 22, 0.0072],
  ['NH3-P-07', 7.2, 30, 0.0126],
  ['NH3-P-09', 7.4, 26, 0.015],
  ['NH3-P-10', 7.6, 16, 0.0116],
  ['NH3-P-12', 7.6, 28, 0.0271],
  ['NH3-P-13', 7.8, 12, 0.0135],
  ['NH3-P-14', 7.8, 24, 0.0322],
  ['NH3-P-16', 8.0, 14, 0.0247],
  ['NH3-P-19', 8.0, 30, 0.0743],
  ['NH3-P-20', 8.2, 26, 0.088],
  ['NH3-P-21', 8.4, 20, 0.0904],
  ['NH3-P-22', 8.4, 28, 0.1495],
  ['NH3-P-23', 8.6, 24, 0.1737],
  ['NH3-P-24', 8.6, 28, 0.2178],
];

/** id, pH, °C, per cent un-ionised, worked out by hand from the equation */
const GRID: [string, number, number, number][] = [
  ['NH3-E-01', 6.0, 12, 0.02168],
  ['NH3-E-03', 7.0, 12, 0.2164],
  ['NH3-E-05', 8.0, 12, 2.123],
  ['NH3-E-06', 6.0, 18, 0.03415],
  ['NH3-E-07', 6.5, 18, 0.1079],
  ['NH3-E-08', 7.0, 18, 0.3404],
  ['NH3-E-09', 7.6, 18, 1.342],
  ['NH3-E-11', 6.0, 22, 0.04575],
  ['NH3-E-12', 6.5, 22, 0.1445],
  ['NH3-E-13', 7.0, 22, 0.4556],
  ['NH3-E-15', 8.0, 22, 4.376],
  ['NH3-E-17', 6.5, 26, 0.192],
  ['NH3-E-18', 7.0, 26, 0.6048],
  ['NH3-E-19', 7.6, 26, 2.365],
  ['NH3-E-20', 8.0, 26, 5.736],
  ['NH3-E-23', 7.0, 30, 0.7965],
  ['NH3-E-24', 7.6, 30, 3.097],
  ['NH3-E-25', 8.0, 30, 7.432],
  ['NH3-E-26', 6.0, 32, 0.09189],
  ['NH3-E-28', 7.0, 32, 0.9114],
  ['NH3-E-29', 7.6, 32, 3.532],
];

/** The table has four decimals. */
const LAST_DIGIT = 1e-4;

describe('the toxic share of ammonia where only pH and temperature are known', () => {
  it.each(TABLE)('%s: at pH %f and %f °C it is the printed %f, to the last digit', (_id, pH, T_C, fraction) => {
    expect(Math.abs(ask({ T_C, pH }).NH3_fraction - fraction)).toBeLessThanOrEqual(LAST_DIGIT);
  });

  it.each(GRID)('%s: at pH %f and %f °C it is %f %% by the equation, within 0.1 %%', (_id, pH, T_C, percent) => {
    expect(apart(100 * ask({ T_C, pH }).NH3_fraction, percent)).toBeLessThan(0.001);
  });
});
