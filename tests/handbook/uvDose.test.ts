// Ultraviolet dose. Water factor (1 − 10^(−aL))/(aL ln 10): Beer–Lambert, Bolton & Linden 2003 from memory; table worked out by hand:
// derived. Doses: Yoshimizu et al. 1990 (abstract seen), 2.2 mJ/cm² for 99.99 % of fish-pathogenic bacteria; US EPA 2011 table (seen
// quoted), viruses 58/100/143/186 and Cryptosporidium 2.5/5.8/12/22 mJ/cm² for 1/2/3/4 tenfold kills. Published.
import { describe, expect, it } from 'vitest';
import { uvSurvival, uvWaterFactor } from '../../src/model/polish/uv';
import { apart } from './answers';

/** id, transmittance of 1 cm in %, path cm, mean over incident irradiance */
const TABLE: [string, number, number, number][] = [
  ['UV-01', 50, 1, 0.7213],
  ['UV-03', 50, 5, 0.2795],
  ['UV-04', 60, 1, 0.783],
  ['UV-05', 60, 2, 0.6264],
  ['UV-06', 60, 5, 0.3611],
  ['UV-08', 70, 2, 0.7149],
  ['UV-09', 70, 5, 0.4665],
  ['UV-11', 80, 2, 0.8067],
  ['UV-12', 80, 5, 0.6026],
  ['UV-13', 85, 1, 0.923],
  ['UV-14', 85, 2, 0.8537],
  ['UV-16', 90, 1, 0.9491],
  ['UV-17', 90, 2, 0.9017],
  ['UV-18', 90, 5, 0.7774],
  ['UV-19', 95, 1, 0.9748],
];

/** Tenfold kills of a dose where nothing is shielded. */
const logs = (dose: number, D10: number): number => -Math.log10(uvSurvival(dose, D10, 0, 0));

describe('ultraviolet light in water', () => {
  it.each(TABLE)('%s: water of %f %% transmittance leaves over %f cm a mean of %f, within 0.1 %%', (_id, percent, path, factor) => {
    expect(apart(uvWaterFactor(percent / 100, path), factor)).toBeLessThan(0.001);
  });

  it('is not weakened by clear water, nor by none', () => {
    expect(uvWaterFactor(1, 5)).toBe(1);
    expect(uvWaterFactor(0.6, 0)).toBe(1);
    // the series and the quotient meet
    expect(Math.abs(uvWaterFactor(Math.exp(-0.99e-5), 1) - uvWaterFactor(Math.exp(-1.01e-5), 1))).toBeLessThan(2e-7);
  });
});

describe('what a dose kills', () => {
  it('leaves one in ten thousand fish-pathogenic bacteria at 2.2 mJ/cm², four times the dose for one in ten', () => {
    expect(apart(uvSurvival(2.2, 2.2 / 4, 0, 0), 1e-4)).toBeLessThan(1e-9);
  });

  it.each([
    [58, 1],
    [100, 2],
    [143, 3],
    [186, 4],
  ])('of hardy viruses at %f mJ/cm² is %f tenfold, within 0.3', (dose, published) => {
    expect(Math.abs(logs(dose, 186 / 4) - published)).toBeLessThan(0.3);
  });

  it('of Cryptosporidium grows more slowly than dose: one kill rate for all overstates high doses', () => {
    // Published 3 tenfold at 12 mJ/cm²; the one-hit law drawn through 1 tenfold at 2.5 gives 4.8: such tailing needs a shielded share.
    expect(logs(12, 2.5)).toBeGreaterThan(3);
    const tailing = -Math.log10(uvSurvival(12, 2.5, 1e-3, 0));
    expect(Math.abs(tailing - 3)).toBeLessThan(0.3);
  });
});

describe('germs shielded by particles', () => {
  it('outlive any dose but for the share that dies all the same', () => {
    expect(uvSurvival(1e6, 2, 0.2, 0.25)).toBeCloseTo(0.15, 12);
  });

  it('live on with the rest where there is no dose', () => {
    expect(uvSurvival(0, 2, 0.2, 0)).toBeCloseTo(1, 12);
  });

  it('make turbid water keep more alive at the same dose', () => {
    expect(uvSurvival(10, 2, 0.1, 0.2)).toBeGreaterThan(100 * uvSurvival(10, 2, 0, 0.2));
  });
});
