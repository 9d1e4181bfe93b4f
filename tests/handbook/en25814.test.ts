// EN 25814 (ISO 5814), saturation table: fresh water under water-saturated air at 101.325 kPa, as reprinted. Published.
import { describe, expect, it } from 'vitest';
import { ask } from './answers';

/** id, °C, mg/L as printed */
const TABLE: [string, number, string][] = [
  ['O2-P-01', 4, '13.1'],
  ['O2-P-02', 5, '12.8'],
  ['O2-P-03', 6, '12.5'],
  ['O2-P-06', 9, '11.6'],
  ['O2-P-07', 10, '11.3'],
  ['O2-P-09', 12, '10.8'],
  ['O2-P-12', 15, '10.1'],
  ['O2-P-13', 16, '9.87'],
  ['O2-P-15', 18, '9.47'],
  ['O2-P-17', 20, '9.09'],
  ['O2-P-19', 22, '8.74'],
  ['O2-P-20', 23, '8.58'],
  ['O2-P-21', 24, '8.42'],
  ['O2-P-22', 25, '8.26'],
  ['O2-P-23', 26, '8.11'],
  ['O2-P-24', 27, '7.97'],
  ['O2-P-25', 28, '7.83'],
  ['O2-P-26', 29, '7.69'],
  ['O2-P-27', 30, '7.56'],
];

const lastDigit = (text: string): number => 1 / 10 ** (text.split('.')[1] ?? '').length;

describe('oxygen saturation of fresh water', () => {
  it.each(TABLE)('%s: water of %f °C holds %s mg/L, to the last digit', (_id, T_C, printed) => {
    expect(Math.abs(ask({ T_C }).O2_saturation_mg_L - Number(printed))).toBeLessThanOrEqual(lastDigit(printed));
  });
});
