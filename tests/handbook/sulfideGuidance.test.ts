// Russian guidance document, appendix V, table V.1: mass fraction of H2S in total sulfide. Published.
// Its pK1 at 25 °C is 6.95–6.98; ours is Millero 1988 (6.98).
import { describe, expect, it } from 'vitest';
import { ask } from './answers';

/** id, pH, °C, per cent of total sulfide that is H2S, as printed */
const TABLE: [string, number, number, number][] = [
  ['H2S-R-01', 5.4, 15, 98.1],
  ['H2S-R-02', 5.4, 20, 97.8],
  ['H2S-R-03', 5.4, 25, 97.4],
  ['H2S-R-04', 5.4, 30, 97.0],
  ['H2S-R-05', 6.0, 15, 92.2],
  ['H2S-R-06', 6.0, 20, 91.2],
  ['H2S-R-07', 6.0, 25, 89.8],
  ['H2S-R-09', 6.2, 20, 87.6],
  ['H2S-R-13', 6.3, 25, 82.0],
  ['H2S-R-14', 6.3, 30, 79.6],
];

describe('the toxic share of sulfide', () => {
  it.each(TABLE)('%s: at pH %f and %f °C it is %f %%, within 1.5 points', (_id, pH, T_C, percent) => {
    expect(Math.abs(100 * ask({ T_C, pH }).H2S_fraction - percent)).toBeLessThanOrEqual(1.5);
  });
});
