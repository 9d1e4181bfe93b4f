// Tucker C.S. 1984, factors for carbon dioxide from pH, temperature and alkalinity (also SRAC 464 and 468), as reprinted.
// Two typing errors of the reprint are mended (pH 7.6 at 10 °C printed 0.64). Left out: the 35 °C column, 2.4 % above
// Plummer & Busenberg 1982, which the rest of the table follows. The factors are for zero ionic strength.
import { describe, expect, it } from 'vitest';
import { ask } from './answers';

/** id, pH, °C, mg/L of CO2 per mg/L (as CaCO3) of alkalinity, as printed */
const TABLE: [string, number, number, string][] = [
  ['CO2-F-01', 6.0, 10, '2.539'],
  ['CO2-F-04', 6.0, 30, '1.882'],
  ['CO2-F-05', 6.2, 15, '1.46'],
  ['CO2-F-07', 6.2, 25, '1.244'],
  ['CO2-F-08', 6.4, 10, '1.01'],
  ['CO2-F-09', 6.4, 20, '0.841'],
  ['CO2-F-10', 6.4, 25, '0.784'],
  ['CO2-F-11', 6.4, 30, '0.749'],
  ['CO2-F-12', 6.6, 15, '0.582'],
  ['CO2-F-13', 6.6, 20, '0.531'],
  ['CO2-F-14', 6.6, 25, '0.495'],
  ['CO2-F-15', 6.8, 10, '0.402'],
  ['CO2-F-16', 6.8, 20, '0.335'],
  ['CO2-F-17', 6.8, 25, '0.313'],
  ['CO2-F-18', 6.8, 30, '0.298'],
  ['CO2-F-22', 7.2, 10, '0.16'],
  ['CO2-F-23', 7.2, 20, '0.133'],
  ['CO2-F-25', 7.2, 30, '0.119'],
  ['CO2-F-26', 7.4, 15, '0.092'],
  ['CO2-F-27', 7.4, 20, '0.084'],
  ['CO2-F-28', 7.4, 25, '0.078'],
  ['CO2-F-29', 7.6, 10, '0.064'],
  ['CO2-F-31', 7.6, 25, '0.05'],
  ['CO2-F-33', 7.8, 15, '0.037'],
  ['CO2-F-34', 7.8, 20, '0.034'],
];

const CACO3_MG_PER_MEQ = 50.043;
const lastDigit = (text: string): number => 1 / 10 ** (text.split('.')[1] ?? '').length;

describe('carbon dioxide from pH and alkalinity', () => {
  it.each(TABLE)(
    '%s: at pH %f and %f °C each mg/L of alkalinity goes with %s mg/L, within 1.5 %% or the last digit',
    (_id, pH, T_C, factor) => {
      const alkalinity_meq_L = 100 / CACO3_MG_PER_MEQ;
      const found = ask({ T_C, pH, alkalinity_meq_L, ionicStrength_mol_L: 0 }).CO2_mg_L / 100;
      const tolerance = Math.max(0.015 * Number(factor), lastDigit(factor));
      expect(Math.abs(found - Number(factor))).toBeLessThanOrEqual(tolerance);
    },
  );
});
