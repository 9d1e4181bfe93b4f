// FAO AC175E, table 9.IV (row pH 7), and Boyd's values as quoted in a thesis: undissociated hydrogen sulfide. Published.
// The tables use a pK1 of 7.01 at 25 °C; ours is Millero 1988 (6.98). Sources run from 6.94 to 7.01, hence 4 points.
import { describe, expect, it } from 'vitest';
import { ask } from './answers';

/** id, pH, °C, per cent of total sulfide that is H2S, as printed */
const TABLE: [string, number, number, number][] = [
  ['H2S-F-02', 7.0, 18, 56.2],
  ['H2S-F-03', 7.0, 20, 54.6],
  ['H2S-F-04', 7.0, 22, 53.0],
  ['H2S-F-05', 7.0, 24, 51.4],
  ['H2S-F-07', 7.0, 28, 48.2],
  ['H2S-F-08', 7.0, 30, 46.6],
  ['H2S-F-09', 7.0, 32, 45.0],
  ['H2S-F-10', 5.0, 30, 98.9],
];

describe('the toxic share of sulfide', () => {
  it.each(TABLE)('%s: at pH %f and %f °C it is %f %%, within 4 points', (_id, pH, T_C, percent) => {
    expect(Math.abs(100 * ask({ T_C, pH }).H2S_fraction - percent)).toBeLessThanOrEqual(4);
  });
});
