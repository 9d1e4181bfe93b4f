// Head lost in four smooth pipes at 20 °C by two textbook formulae, worked out by hand: Darcy–Weisbach with
// Swamee & Jain 1976 (J. Hydraul. Div. ASCE 102:657–664) and a roughness of 1.5 µm, and Hazen–Williams with C 150.
// Flag: derived. No fittings.
import { describe, expect, it } from 'vitest';
import { headLoss_m, speed_m_s } from '../../src/model/hydraulics/pipe';
import { hydraulics } from '../../src/model/parameters/hydraulics';
import { apart } from './answers';
import { RECORDED } from '../../src/catalogue/values';

const { hydraulics: h } = RECORDED;

/** flow L/h, diameter mm, length m, speed m/s, loss m by Darcy–Weisbach, loss m by Hazen–Williams */
const TABLE: [number, number, number, number, number, number][] = [
  [2000, 25, 5, 1.13, 0.312, 0.296],
  [2000, 32, 5, 0.69, 0.096, 0.089],
  [22680, 77.9, 10, 1.32, 0.204, 0.209],
  [22680, 102.3, 10, 0.77, 0.055, 0.056],
];

const flow_m3_d = (L_h: number): number => (L_h * 24) / 1000;
/** Printed to three decimals, so the last place may be off by half. */
const HALF_PLACE_m = 0.0005;

describe('head lost in a pipe', () => {
  it('is reckoned with the roughness the table names', () => {
    expect(hydraulics.roughness.value).toBe(1.5e-6);
  });

  it.each(TABLE)(
    '%f L/h through %f mm over %f m: speed, and the loss by Darcy–Weisbach within 1 %% and the rounding',
    (L_h, mm, length_m, speed, darcy) => {
      const diameter_m = mm / 1000;
      expect(Math.abs(speed_m_s(flow_m3_d(L_h), diameter_m) - speed)).toBeLessThan(0.0051);
      expect(Math.abs(headLoss_m(flow_m3_d(L_h), { length_m, diameter_m, fittings: 0 }, 20, h) - darcy)).toBeLessThan(
        HALF_PLACE_m + 0.01 * darcy,
      );
    },
  );

  it.each(TABLE)(
    '%f L/h through %f mm over %f m: agrees with the other formula within 9 %%',
    (L_h, mm, length_m, _speed, _darcy, hazen) => {
      expect(apart(headLoss_m(flow_m3_d(L_h), { length_m, diameter_m: mm / 1000, fittings: 0 }, 20, h), hazen)).toBeLessThan(0.09);
    },
  );
});
