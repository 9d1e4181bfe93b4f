// Constants of fresh water at zero ionic strength. Plummer & Busenberg 1982, Geochim. Cosmochim. Acta 46:1011–1040 (CO2, HCO3⁻, CO3²⁻);
// phreeqc.dat (water); Emerson et al. 1975 (ammonium); Millero et al. 1988 (sulfide). Table worked out from the equations: derived. Beside
// them other published forms: Weiss 1974 (CO2), Harned & Owen (water), Anthonisen et al. 1976 (ammonia), Skougstad et al. 1979 (CO2 from
// pH).
import { describe, expect, it } from 'vitest';
import {
  ammoniumPKa,
  logBicarbonate,
  logCarbonDioxideSolubility,
  logCarbonicAcid,
  logWaterIonProduct,
  sulfidePK1,
} from '../../src/model/equilibrium/constants';
import { apart, ask } from './answers';

/** °C, log KH, log K1, log K2, log Kw, pKa of ammonium, pK1 of hydrogen sulfide */
const TABLE: [number, number, number, number, number, number, number][] = [
  [5, -1.1921, -6.5163, -10.5544, -14.7296, 9.9047, 7.3258],
  [10, -1.2694, -6.4633, -10.4879, -14.5314, 9.7314, 7.2278],
  [15, -1.3408, -6.4188, -10.4284, -14.3433, 9.5641, 7.1379],
  [20, -1.4069, -6.3819, -10.3756, -14.1646, 9.4025, 7.0555],
  [25, -1.4679, -6.3519, -10.3289, -13.9948, 9.2464, 6.9801],
  [30, -1.5244, -6.3281, -10.2879, -13.8333, 9.0954, 6.9114],
  [35, -1.5766, -6.3102, -10.2523, -13.6796, 8.9492, 6.8489],
];
const LAST_DIGIT = 1.01e-4;

describe('the constants of fresh water', () => {
  it.each(TABLE)('at %i °C are those of their equations, to the fourth decimal', (T_C, KH, K1, K2, Kw, ammonium, sulfide) => {
    const found = [
      logCarbonDioxideSolubility(T_C),
      logCarbonicAcid(T_C),
      logBicarbonate(T_C),
      logWaterIonProduct(T_C),
      ammoniumPKa(T_C),
      sulfidePK1(T_C),
    ];
    [KH, K1, K2, Kw, ammonium, sulfide].forEach((value, i) => {
      expect(Math.abs(found[i] - value), `column ${i}`).toBeLessThan(LAST_DIGIT);
    });
  });

  it.each([5, 10, 15, 20, 25, 30])('at %i °C carbon dioxide dissolves as Weiss 1974 has it, within 0.002 of the logarithm', (T_C) => {
    const T = (T_C + 273.15) / 100;
    const weiss = (-60.2409 + 93.4517 / T + 23.3585 * Math.log(T)) / Math.LN10;
    expect(Math.abs(logCarbonDioxideSolubility(T_C) - weiss)).toBeLessThan(0.002);
  });

  it.each([5, 15, 25, 35])('at %i °C water splits as the older form has it, within 0.004', (T_C) => {
    const T = T_C + 273.15;
    expect(Math.abs(-logWaterIonProduct(T_C) - (4471 / T + 0.01706 * T - 6.0875))).toBeLessThan(0.004);
  });

  it.each([5, 12, 20, 26, 32])('at %i °C the toxic share of ammonia is that of Anthonisen 1976, within 1.5 %%', (T_C) => {
    for (const pH of [6.5, 7.5, 8.5]) {
      const anthonisen = 10 ** pH / (Math.exp(6344 / (273 + T_C)) + 10 ** pH);
      expect(apart(ask({ T_C, pH }).NH3_fraction, anthonisen)).toBeLessThan(0.015);
    }
  });
});

describe('the rule CO2 = 1.60 × 10^(6 − pH) × bicarbonate', () => {
  const factor = (T_C: number): number => {
    const pH = 6.5;
    const { CO2_mg_L } = ask({ T_C, pH, alkalinity_meq_L: 2, ionicStrength_mol_L: 0 });
    return CO2_mg_L / (2 * 61.017) / 10 ** (6 - pH);
  };

  it('is one for 25 °C: 1.62 there, 2.10 at 10 °C', () => {
    expect(Math.abs(factor(25) - 1.62)).toBeLessThan(0.01);
    expect(Math.abs(factor(10) - 2.1)).toBeLessThan(0.015);
  });
});
