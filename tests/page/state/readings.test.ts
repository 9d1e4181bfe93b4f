// Reading numbers out of a season.
import { describe, expect, it } from 'vitest';
import { inletOf, readingAt } from '../../../src/page/state/run/readings';
import { harvestShares, percentOfMass, scoresAt, waterOf } from '../../../src/page/state/common/selectors';
import { troublesNow } from '../../../src/page/state/run/troubles';
import { mergeSeason } from '../../../src/page/state/run/view';
import { SCORES, smallPlan, smallSeason } from './fakeClient';

const plan = {
  ...smallPlan(),
  loop: [
    ...smallPlan().loop.slice(0, 1),
    { id: 'rafts', kind: 'raftBed' as const, area_m2: 3, depth_m: 0.3 },
    ...smallPlan().loop.slice(1),
  ],
};
const view = mergeSeason(null, smallSeason(plan, 0));

describe('a reading', () => {
  it('is the sample itself on the hour, and linear in between', () => {
    expect(readingAt(view, 'fish', 'TAN_mgN_L', 0, 'inside')).toBe(0);
    expect(readingAt(view, 'fish', 'TAN_mgN_L', 24, 'inside')).toBeCloseTo(2.4, 5);
    expect(readingAt(view, 'fish', 'TAN_mgN_L', 24.5, 'inside')).toBeCloseTo(2.45, 5);
  });

  it('inside a long bed is the mean of its cells, out is the last one', () => {
    expect(readingAt(view, 'rafts', 'TAN_mgN_L', 10, 'inside')).toBeCloseTo(3, 5);
    expect(readingAt(view, 'rafts', 'TAN_mgN_L', 10, 'out')).toBeCloseTo(4, 5);
  });

  it('amounts add up over the cells of a long bed', () => {
    expect(readingAt(view, 'rafts', 'number', 10, 'inside')).toBe(180);
    expect(readingAt(view, 'fish', 'number', 10, 'inside')).toBe(60);
  });

  it('past the end stays at the end', () => {
    expect(readingAt(view, 'fish', 'TAN_mgN_L', 1e6, 'inside')).toBeCloseTo(9.6, 4);
  });

  it('is no number for a pump, an unknown stage or an unknown variable', () => {
    expect(readingAt(view, 'pump', 'TAN_mgN_L', 1, 'inside')).toBeNaN();
    expect(readingAt(view, 'nowhere', 'TAN_mgN_L', 1, 'inside')).toBeNaN();
    expect(readingAt(view, 'fish', 'gold', 1, 'inside')).toBeNaN();
  });
});

describe('water on its way', () => {
  it('what comes in is what the stage upstream lets go, and a pump only passes it on', () => {
    expect(inletOf(plan, 'sump')).toBe('rafts');
    expect(inletOf(plan, 'fish')).toBe('sump');
    expect(waterOf({ plan, season: view, now_h: 10 }, 'sump', 'TAN_mgN_L').in).toBeCloseTo(4, 5);
  });
});

describe('scores and troubles', () => {
  it('scores are those of the last whole day', () => {
    expect(scoresAt(view, 23)).toBeNull();
    expect(scoresAt(view, 24)?.fishHealth).toBe(80);
    expect(scoresAt(view, 96)?.fishHealth).toBe(83);
  });

  it('fish that lost weight count as no gain, not as a loss of plants', () => {
    expect(harvestShares({ ...SCORES, gain_kg: -3 })).toEqual({ plants: 0.6, gain: 0 });
    expect(harvestShares({ ...SCORES, gainIdeal_kg: 0 })).toEqual({ plants: 0.6, gain: 0 });
  });

  it('feed as a share of body mass counts every fish', () => {
    expect(percentOfMass(60, { number: 60, mass_g: 50 })).toBeCloseTo(2);
    expect(percentOfMass(60, { number: 0, mass_g: 0 })).toBe(0);
  });

  it('the worst trouble comes first', () => {
    const comfort = [
      { applies: 'fish' as const, variable: 'O2_mg_L', watchBelow: 6.5, actBelow: 3 },
      { applies: 'fish' as const, variable: 'TAN_mgN_L', watchAbove: 1, actAbove: 2 },
    ];
    const state = { plan, season: view, comfort };
    expect(troublesNow({ ...state, now_h: 30 }).map((one) => one.mark)).toEqual(['act', 'watch']);
    expect(troublesNow({ ...state, now_h: 1 }).map((one) => (one.kind === 'band' ? one.variable : one.event))).toEqual(['O2_mg_L']);
  });

  it('a stopped pump is a trouble until it runs again', () => {
    const stopped = {
      ...plan,
      actions: [
        { day: 0, hour: 2, do: 'pump' as const, on: false },
        { day: 0, hour: 8, do: 'pump' as const, on: true },
      ],
    };
    const at = (now_h: number) => troublesNow({ plan: stopped, season: view, comfort: [], now_h }).length;
    expect([at(1), at(3), at(9)]).toEqual([0, 1, 0]);
  });
});
