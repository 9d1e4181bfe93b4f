// What waters do: how warmth, acid, salt and gases move the shares that matter to fish and plants.
import { describe, expect, it } from 'vitest';
import { debyeHuckelA, univalentActivity } from '../../../src/model/equilibrium/activity';
import { equilibrate } from '../../../src/model/equilibrium/equilibrate';
import { addIon } from '../../../src/model/equilibrium/ionicStrength';
import type { Gas } from '../../../src/model/equilibrium/henry';
import { gasOverWater, solubility_mol_m3_atm } from '../../../src/model/equilibrium/henry';
import { oxygenSaturation_mg_L, vapourPressure_atm } from '../../../src/model/equilibrium/oxygen';

const loop = { T_C: 24, known: { alkalinity: 1, carbon: 1.1 }, ammonia: 0.1, sulfide: 0.001, phosphate: 0.3 };

describe('ammonia', () => {
  it('warming the water raises the toxic share of ammonia', () => {
    const share = (T_C: number): number => equilibrate({ T_C, known: { carbon: 0, pH: 7.5 }, ionicStrength: 0 }).NH3Fraction;
    expect(share(30)).toBeGreaterThan(1.8 * share(20));
  });

  it('ten times less acid raises it nearly tenfold', () => {
    const share = (pH: number): number => equilibrate({ T_C: 24, known: { carbon: 0, pH }, ionicStrength: 0 }).NH3Fraction;
    expect(share(8) / share(7)).toBeGreaterThan(9);
    expect(share(8) / share(7)).toBeLessThan(10);
  });

  it('salts in the water lower it: 3 to 12 % at 0.001 to 0.011 mol/L', () => {
    const share = (I: number): number => equilibrate({ T_C: 24, known: { carbon: 0, pH: 7.5 }, ionicStrength: I }).NH3Fraction;
    expect(1 - share(0.001) / share(0)).toBeGreaterThan(0.03);
    expect(1 - share(0.011) / share(0)).toBeLessThan(0.12);
  });
});

describe('sulfide', () => {
  it('acid water has more of it in the toxic form', () => {
    const share = (pH: number): number => equilibrate({ T_C: 24, known: { carbon: 0, pH } }).H2SFraction;
    expect(share(6.2)).toBeGreaterThan(0.85);
    expect(share(8)).toBeLessThan(0.1);
  });
});

describe('carbon dioxide', () => {
  const plain = { T_C: 24, known: { alkalinity: 1, carbon: 1.1 } };

  it('driving it off raises the pH and leaves alkalinity alone', () => {
    const before = equilibrate(plain);
    const after = equilibrate({ ...plain, known: { alkalinity: 1, carbon: 1.02 } });
    expect(after.pH).toBeGreaterThan(before.pH + 0.3);
    expect(after.alkalinity).toBe(before.alkalinity);
  });

  it('the acid of nitrification turns bicarbonate into it, one for one', () => {
    const after = equilibrate({ ...plain, known: { alkalinity: 0.8, carbon: 1.1 } });
    expect(after.CO2 - equilibrate(plain).CO2).toBeCloseTo(0.2, 2);
  });

  it('hydroxide lifts the pH more than bicarbonate of the same strength', () => {
    const hydroxide = equilibrate({ ...plain, known: { alkalinity: 1.1, carbon: 1.1 } });
    const bicarbonate = equilibrate({ ...plain, known: { alkalinity: 1.1, carbon: 1.2 } });
    expect(hydroxide.pH).toBeGreaterThan(bicarbonate.pH + 0.4);
  });

  it('phosphate softens both', () => {
    const lift = (phosphate: number): number =>
      equilibrate({ ...plain, phosphate, known: { alkalinity: 1.1, carbon: 1.1 } }).pH - equilibrate({ ...plain, phosphate }).pH;
    expect(lift(0.3)).toBeLessThan(lift(0) / 2);
  });
});

describe('what a water is made of', () => {
  it('its species add up to its totals', () => {
    const water = equilibrate(loop);
    expect(water.CO2 + water.HCO3 + water.CO3).toBeCloseTo(1.1, 12);
    expect(water.NH3 / 0.1).toBeCloseTo(water.NH3Fraction, 12);
  });

  it('the three ways to know it agree', () => {
    const first = equilibrate(loop);
    const second = equilibrate({ ...loop, known: { alkalinity: 1, pH: first.pH } });
    const third = equilibrate({ ...loop, known: { carbon: 1.1, pH: first.pH } });
    expect(second.carbon).toBeCloseTo(1.1, 10);
    expect(third.alkalinity).toBeCloseTo(1, 10);
    expect(third.ionicStrength).toBeCloseTo(first.ionicStrength, 12);
  });

  it('pure water is neutral, and neutral is less than 7 when warm', () => {
    const pure = (T_C: number): number => equilibrate({ T_C, known: { alkalinity: 0, carbon: 0 } }).pH;
    expect(pure(25)).toBeCloseTo(13.9948 / 2, 3);
    expect(pure(35)).toBeLessThan(6.9);
  });

  it('sodium closes its charge: a bicarbonate water has the ionic strength of sodium bicarbonate', () => {
    expect(equilibrate({ T_C: 25, known: { alkalinity: 2, pH: 7.5 } }).ionicStrength).toBeCloseTo(0.002, 4);
  });

  it('named ions that already balance need no sodium', () => {
    const strong = { charge: 0, squares: 0 };
    addIon(strong, 2, 1);
    addIon(strong, -1, 2);
    const water = equilibrate({ T_C: 25, known: { alkalinity: 0, carbon: 0 }, strong });
    expect(water.ionicStrength).toBeCloseTo(0.003, 6);
    expect(equilibrate({ T_C: 25, known: { alkalinity: 0, carbon: 0 }, strong, closing: false }).ionicStrength).toBeCloseTo(0.003, 6);
  });

  it('an ionic strength of zero is the ideal solution', () => {
    expect(univalentActivity(debyeHuckelA(25), 0)).toBe(1);
    expect(equilibrate({ ...loop, ionicStrength: 0 }).ionicStrength).toBe(0);
  });

  it('the Debye–Hückel A is about 0.507 at 20 °C and 0.509 at 25 °C', () => {
    expect(Math.abs(debyeHuckelA(20) - 0.507)).toBeLessThan(0.002);
    expect(Math.abs(debyeHuckelA(25) - 0.509)).toBeLessThan(0.002);
  });
});

describe('gases', () => {
  it('warm, salty or high water holds less oxygen', () => {
    expect(oxygenSaturation_mg_L(30)).toBeLessThan(oxygenSaturation_mg_L(20));
    expect(oxygenSaturation_mg_L(20, 5)).toBeLessThan(oxygenSaturation_mg_L(20));
    expect(oxygenSaturation_mg_L(20, 0, 0.9)).toBeLessThan(oxygenSaturation_mg_L(20));
  });

  it('the pressure term changes nothing at one atmosphere', () => {
    expect(oxygenSaturation_mg_L(20, 0, 1 - 1e-12)).toBeCloseTo(oxygenSaturation_mg_L(20), 9);
  });

  it('the air over water at 25 °C holds 0.0313 atm of vapour', () => {
    expect(vapourPressure_atm(25)).toBeCloseTo(0.0313, 4);
  });

  it('carbon dioxide is near thirty times as soluble as oxygen, and sulfide three times that', () => {
    const over = (a: Gas, b: Gas): number => gasOverWater(b, 25) / gasOverWater(a, 25);
    expect(over('CO2', 'O2')).toBeGreaterThan(25);
    expect(over('H2S', 'CO2')).toBeGreaterThan(2.5);
  });

  it('every gas is less soluble in warm water', () => {
    for (const gas of ['O2', 'CO2', 'H2S', 'CH4', 'NH3', 'N2'] as const) {
      expect(solubility_mol_m3_atm(gas, 30)).toBeLessThan(solubility_mol_m3_atm(gas, 15));
    }
  });

  it('oxygen by its solubility is oxygen by its saturation', () => {
    const air_atm = 0.20946 * (1 - vapourPressure_atm(18));
    expect(solubility_mol_m3_atm('O2', 18) * air_atm * 31.998).toBeCloseTo(oxygenSaturation_mg_L(18), 9);
  });
});
