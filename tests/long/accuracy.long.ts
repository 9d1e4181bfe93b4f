// How far seasons at the everyday tolerance stand from the same seasons reckoned ten times finer, over random loops.
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { runSeason } from '../../src/season/season';
import { quantileOf } from '../../src/season/ensemble';
import type { Plan } from '../../src/season/plan';
import { course, dayOfPeak, least, most } from '../season/courses';
import { randomPlan } from '../season/randomLoops';

const LOOPS = 200;
const DAYS = 60;
const EACH = 20;
const FINE = 4e-4;
const MEDIAN = 0.003;
const NINE_OF_TEN = 0.01;

/**
 * Below its floor a quantity is compared absolutely: errors count against the floor. mg/L (oxygen: what a meter tells); µg/L of sulfide, a
 * tenth of what fish notice; a day of a day.
 */
const FLOOR = { peakTAN: 0.01, peakNO2: 0.01, dayOfPeakNO2: 1, minO2: 0.1, finalNO3: 0.01, maxBedH2S: 0.2 } as const;
type Key = keyof typeof FLOOR;
type KeyNumbers = Record<Key, number>;

const plans = fc.sample(randomPlan(DAYS), { numRuns: LOOPS, seed: Number(process.env['LOOPWRIGHT_SEED'] ?? 3) });

/** The stage whose sulfide is looked at: the first bed, or the fish tank where there is none. */
const bedOf = (plan: Plan): string => plan.loop.find(({ crop }) => crop !== undefined)?.id ?? 'fish';

function keyNumbers(plan: Plan, tolerance?: number): KeyNumbers {
  const t = runSeason(plan, tolerance === undefined ? {} : { tolerance });
  const nitrite = course(t, 'fish', 'NO2_mgN_L');
  return {
    peakTAN: most(course(t, 'fish', 'TAN_mgN_L')),
    peakNO2: most(nitrite),
    dayOfPeakNO2: dayOfPeak(nitrite),
    minO2: least(course(t, 'fish', 'O2_mg_L')),
    finalNO3: course(t, 'fish', 'NO3_mgN_L').at(-1) ?? Number.NaN,
    maxBedH2S: most(course(t, bedOf(plan), 'H2S_ug_L')),
  };
}

const errorsOf = (shown: KeyNumbers, exact: KeyNumbers): KeyNumbers =>
  Object.fromEntries(
    (Object.keys(FLOOR) as Key[]).map((key) => [key, Math.abs(shown[key] - exact[key]) / Math.max(FLOOR[key], Math.abs(exact[key]))]),
  ) as KeyNumbers;

const found: { loop: number; errors: KeyNumbers }[] = [];

describe(`the key numbers of ${LOOPS} random loops`, () => {
  it.each(Array.from({ length: LOOPS / EACH }, (_, i) => i * EACH))(`from loop %i on, ${EACH} are reckoned twice`, (from) => {
    const failed: string[] = [];
    plans.slice(from, from + EACH).forEach((plan, i) => {
      try {
        found.push({ loop: from + i, errors: errorsOf(keyNumbers(plan), keyNumbers(plan, FINE)) });
      } catch (error) {
        failed.push(`loop ${from + i}: ${error instanceof Error ? error.message : String(error)}`);
      }
    });
    expect(failed).toEqual([]);
  });

  it(`are right within ${100 * MEDIAN} % in the middle and ${100 * NINE_OF_TEN} % in nine of ten`, () => {
    const all = Float64Array.from(found.flatMap(({ errors }) => Object.values(errors))).sort();
    expect(quantileOf(all, 0.5)).toBeLessThanOrEqual(MEDIAN);
    expect(quantileOf(all, 0.9)).toBeLessThanOrEqual(NINE_OF_TEN);
  });
});

afterAll(() => {
  console.table(
    (Object.keys(FLOOR) as Key[]).map((key) => {
      const errors = Float64Array.from(found, (one) => one.errors[key]).sort();
      const worst = found.reduce((a, b) => (b.errors[key] > a.errors[key] ? b : a), found[0]);
      return {
        key,
        'median %': (100 * quantileOf(errors, 0.5)).toPrecision(2),
        'p90 %': (100 * quantileOf(errors, 0.9)).toPrecision(2),
        'worst %': (100 * worst.errors[key]).toPrecision(2),
        loop: worst.loop,
      };
    }),
  );
});
