// Hours past the limits of fish and roots, on seasons whose answer is known.
import { describe, expect, it } from 'vitest';
import { comfortOf } from '../../src/season/comfort';
import { runSeason } from '../../src/season/season';
import { troubleHours } from '../../src/season/troubleHours';
import { inOrder, referencePlan } from './plans';

describe('hours of trouble', () => {
  const feed = { day: 0, do: 'feed' as const, tank: 'fish', g_d: 150 };

  it('name the coat on the roots where the bed stands ahead of all that catches solids', () => {
    const plan = { ...inOrder(['fish', 'rafts', 'settler', 'mats', 'degas', 'sump', 'pump']), days: 30 };
    const coat = troubleHours(plan, runSeason(plan)).find(({ variable }) => variable === 'rootMat_g_m2');
    const limit = comfortOf(plan).find(({ variable }) => variable === 'rootMat_g_m2')?.watchAbove ?? Infinity;
    expect(coat).toMatchObject({ applies: 'roots', stage: 'rafts', side: 'above', limit });
    expect(coat?.value).toBeGreaterThan(limit);
    expect(coat?.watch_h).toBeGreaterThan(0);
  });

  it('name the oxygen of fish whose pump and air stand still, as something to act on, and never more hours than were lived', () => {
    const plan = referencePlan({ days: 3, actions: [feed, { day: 1, do: 'power', on: false }] });
    const hours = troubleHours(plan, runSeason(plan));
    const oxygen = hours.find(({ stage, variable }) => stage === 'fish' && variable === 'O2_mg_L');
    expect(oxygen).toMatchObject({ applies: 'fish', side: 'below' });
    expect(oxygen?.act_h).toBeGreaterThan(12);
    for (const stage of ['fish', 'rafts']) {
      const all = hours.filter((one) => one.stage === stage).reduce((sum, { act_h, watch_h }) => sum + act_h + watch_h, 0);
      expect(all).toBeLessThanOrEqual(3 * 24);
    }
  });

  it('tell nothing of root health, which is what the other limits come to', () => {
    const plan = referencePlan({ days: 2 });
    expect(troubleHours(plan, runSeason(plan)).some(({ variable }) => variable === 'rootHealth')).toBe(false);
  });
});
