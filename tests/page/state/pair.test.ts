// Two seasons side by side: one scale that holds them both, and the numbers that part them.
import { describe, expect, it } from 'vitest';
import { endFor, sharedScale } from '../../../src/page/state/presenter/pairScale';
import { figureAt, figuresOf } from '../../../src/page/state/presenter/pairFigures';
import { TINTS } from '../../../src/page/state/common/tints';
import type { SeasonView } from '../../../src/page/state/common/state';
import { mergeSeason } from '../../../src/page/state/run/view';
import { smallPlan, smallSeason } from './fakeClient';

const DAYS = 4;
/** TAN climbs by 0.1 mg/L an hour in the first tank and 0.2 in the next: 19.2 mg/L at the end of four days. */
const season = (shift = 0): SeasonView => mergeSeason(null, smallSeason(smallPlan(DAYS), 0, shift));

describe('the shared scale', () => {
  it('ends at a round number that neither season passes', () => {
    expect(sharedScale('ammonia', [season(), season(-5)])).toMatchObject({ low: 0, high: 20 });
    expect(sharedScale('ammonia', [season(-5), season(2)])).toMatchObject({ high: 30 });
  });

  it('is the usual one where that fits, and where it does not begin at nothing', () => {
    expect(sharedScale('oxygen', [season()])).toBe(TINTS.oxygen);
    expect(sharedScale('pH', [season()])).toBe(TINTS.pH);
  });

  it('shrinks to traces, with the decimals they need', () => {
    const traces = season();
    for (const { hourly } of traces.days)
      hourly.forEach((value, i) => {
        hourly[i] = value / 100;
      });
    expect(sharedScale('ammonia', [traces])).toMatchObject({ high: 0.2, decimals: 2 });
  });

  it('knows round ends in any power of ten', () => {
    expect([0.034, 0.1, 1.2, 7, 13.3, 99, 101].map((most) => Number(endFor(most).toPrecision(3)))).toEqual([
      0.04, 0.1, 1.5, 8, 15, 100, 150,
    ]);
  });
});

describe('the figures', () => {
  const plan = smallPlan(DAYS);
  const measure = { stage: 'sump', variable: 'TAN_mgN_L', statistic: 'max', fromDay: 0 } as const;

  it('are what is measured and what is looked at, where those differ', () => {
    const [asked, looked] = figuresOf({ measure, tint: 'ammonia', look: 'fish', plan, seasons: [season(), season()] });
    expect(figureAt(asked, season(), 10)).toBeCloseTo(2, 5);
    expect(figureAt(looked, season(), 10)).toBeCloseTo(1, 5);
  });

  it('are what is measured and what it meant to the living, where it is what is looked at', () => {
    const worse = season();
    worse.days.forEach((chunk) => {
      chunk.scores = { ...chunk.scores, fishHealth: 20 };
    });
    const [, second] = figuresOf({
      measure: { ...measure, stage: 'fish' },
      tint: 'ammonia',
      look: 'fish',
      plan,
      seasons: [season(), worse],
    });
    expect(second).toEqual({ kind: 'score', score: 'fishHealth' });
    const poorer = season();
    poorer.days.forEach((chunk) => {
      chunk.scores = { ...chunk.scores, plants_kg: 0.5 };
    });
    expect(
      figuresOf({ measure: { ...measure, stage: 'fish' }, tint: 'ammonia', look: 'fish', plan, seasons: [season(), poorer] })[1],
    ).toEqual({ kind: 'score', score: 'plants_kg' });
  });

  it('may be a score', () => {
    const [asked] = figuresOf({
      measure: { score: 'harvest', statistic: 'last', fromDay: 0 },
      tint: 'oxygen',
      look: 'fish',
      plan,
      seasons: [season(), season()],
    });
    expect(figureAt(asked, season(), 48)).toBe(60);
    expect(figureAt(asked, season(), 3)).toBeNaN();
  });
});
