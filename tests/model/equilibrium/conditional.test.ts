// Conditional constants: the same acids at any salt content, with the activities of the ions that appear in each.
import { describe, expect, it } from 'vitest';
import { debyeHuckelA, univalentActivity } from '../../../src/model/equilibrium/activity';
import {
  CONDITIONAL_LENGTH,
  GAMMA1,
  K1,
  K2,
  KN,
  KP1,
  KP2,
  KP3,
  KS,
  KW,
  conditionalConstants,
} from '../../../src/model/equilibrium/conditional';
import { thermodynamicConstants } from '../../../src/model/equilibrium/constants';
import { otherAlkalinity } from '../../../src/model/equilibrium/speciation';

function constants(T_C: number, I: number, offset = 0): Float64Array {
  const k = new Float64Array(CONDITIONAL_LENGTH + offset);
  conditionalConstants(T_C, I, k, offset);
  return k;
}

describe('conditional constants', () => {
  it('are the thermodynamic ones, in mol/m³, in an ideal solution', () => {
    const at = thermodynamicConstants(24);
    const k = constants(24, 0);
    for (const [place, value] of [
      [K1, at.K1],
      [K2, at.K2],
      [KN, at.KN],
      [KS, at.KS],
      [KP1, at.KP1],
      [KP2, at.KP2],
      [KP3, at.KP3],
    ] as const) {
      expect(k[place] / (1000 * value)).toBeCloseTo(1, 14);
    }
    expect(k[KW] / (1e6 * at.Kw)).toBeCloseTo(1, 14);
    expect(k[GAMMA1]).toBe(1);
  });

  // the power is z² of the acid less z² of its base, with H⁺ itself left as an activity
  it.each([
    ['K1', K1, -1],
    ['K2', K2, -3],
    ['KW', KW, -1],
    ['KN', KN, 1],
    ['KS', KS, -1],
    ['KP1', KP1, -1],
    ['KP2', KP2, -3],
    ['KP3', KP3, -5],
  ] as const)('%s changes with salt by the activity of one charge to the power it should', (_name, place, power) => {
    const gamma = univalentActivity(debyeHuckelA(24), 0.05);
    expect(constants(24, 0.05)[place] / constants(24, 0)[place] / gamma ** power).toBeCloseTo(1, 12);
  });

  it('are written where asked and nowhere else', () => {
    const k = constants(24, 0.01, 5);
    expect([...k.subarray(0, 5)]).toEqual([0, 0, 0, 0, 0]);
    expect([...k.subarray(5)]).toEqual([...constants(24, 0.01)]);
  });
});

describe('phosphate', () => {
  it('holds half its second proton at pH 7.198 and 25 °C, and stays a buffer of nearly the same pH from 15 to 35 °C', () => {
    const k = constants(25, 0);
    const water = (phosphate: number): number =>
      otherAlkalinity(1000 * 10 ** -7.198, { carbon: 0, ammonia: 0, sulfide: 0, phosphate }, k, 0);
    expect(water(1) - water(0)).toBeCloseTo(0.5, 3);
    for (const T_C of [15, 35]) expect(Math.abs(Math.log10(constants(T_C, 0)[KP2] / k[KP2]))).toBeLessThan(0.05);
  });
});
