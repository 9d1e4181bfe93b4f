// How far a season at its everyday tolerance stands from the same season reckoned two hundred times finer.
import { describe, expect, it } from 'vitest';
import { runSeason } from '../../src/season/season';
import type { Plan } from '../../src/season/plan';
import { course, dayOfPeak, least, most } from './courses';
import { inOrder, referencePlan } from './plans';

const FINE = 2e-5;
const SHARE = 0.005;
/**
 * µg/L of hydrogen sulfide that the engine does not strive to tell apart: a tenth of its absolute tolerance, a hundredth of what fish
 * notice.
 */
const SULFIDE_FLOOR = 0.02;

const bare: Plan = { ...referencePlan({ days: 60 }), start: { ...referencePlan().start, biofilm: 'bare' } };
const forgotten = inOrder(['fish', 'settler', 'mats', 'degas', 'rafts', 'sump', 'pump'], (action) => action.do !== 'drain');

/** d: a broad peak's highest hour moves by some hours with the last digit of its height. */
const FLAT_TOP = 0.25;

function keyNumbers(plan: Plan, tolerance?: number): Record<string, number> {
  const t = runSeason(plan, tolerance === undefined ? {} : { tolerance });
  const nitrite = course(t, 'fish', 'NO2_mgN_L');
  return {
    peakTAN: most(course(t, 'fish', 'TAN_mgN_L')),
    peakNO2: most(nitrite),
    dayOfPeakNO2: dayOfPeak(nitrite),
    minO2: least(course(t, 'fish', 'O2_mg_L')),
    maxBedH2S: most(course(t, 'rafts', 'H2S_ug_L')),
    finalNO3: course(t, 'fish', 'NO3_mgN_L').at(-1) ?? Number.NaN,
  };
}

describe('the key numbers of a season are right within 0.5 %', () => {
  it.each([
    ['the reference', referencePlan()],
    ['a loop begun with bare films', bare],
    ['a loop whose settler nobody drains', forgotten],
  ])('of %s', (_name, plan) => {
    const shown = keyNumbers(plan);
    const exact = keyNumbers(plan, FINE);
    for (const [name, value] of Object.entries(exact)) {
      const floor = name === 'maxBedH2S' ? SULFIDE_FLOOR : name === 'dayOfPeakNO2' ? FLAT_TOP : 0;
      expect(Math.abs(shown[name] - value), `${name}: ${shown[name]} against ${value}`).toBeLessThan(SHARE * Math.abs(value) + floor);
    }
  });
});
