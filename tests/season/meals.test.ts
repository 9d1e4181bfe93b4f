// Feed given to a tank without fish sinks, rots and feeds the first bacteria: how a loop is cycled before it is stocked (common practice).
import { describe, expect, it } from 'vitest';
import { runSeason } from '../../src/season/season';
import type { Plan } from '../../src/season/plan';
import { course, most } from './courses';
import { referencePlan } from './plans';

const empty: Plan = { ...referencePlan({ days: 20 }), fish: [] };
const unfed: Plan = { ...empty, actions: empty.actions.filter((action) => action.do !== 'feed') };

describe('feed in a tank without fish', () => {
  const fed = runSeason(empty);
  const without = runSeason(unfed);

  it('rots to ammonia, and bacteria carry it on', () => {
    expect(most(course(fed, 'fish', 'TAN_mgN_L'))).toBeGreaterThan(5 * most(course(without, 'fish', 'TAN_mgN_L')));
    expect(most(course(fed, 'fish', 'NO2_mgN_L'))).toBeGreaterThan(5 * most(course(without, 'fish', 'NO2_mgN_L')));
  });

  it('is booked: nitrogen fed is nitrogen found', () => {
    const nitrogen = fed.summary.ledger.find(({ element }) => element === 'N');
    expect(Math.abs(nitrogen?.closure ?? 1)).toBeLessThan(1e-9);
    expect(nitrogen?.inflow ?? 0).toBeGreaterThan((without.summary.ledger.find(({ element }) => element === 'N')?.inflow ?? 0) + 50);
  });
});
