// Why the water is as it is: chosen by size from the process sums of a lived season, told with the model's numbers, silent where nothing
// happened.
import { describe, expect, it } from 'vitest';
import { PROCESS_NAMES } from '../../../src/model/processes/catalogue';
import { runSeason } from '../../../src/season/season';
import type { Plan } from '../../../src/season/plan';
import { heldBackBy, lastWholeDay } from '../../../src/page/state/run/daySums';
import type { TintId } from '../../../src/page/state/common/state';
import { mergeSeason } from '../../../src/page/state/run/view';
import { whyAt, type Why } from '../../../src/page/state/run/why';
import { processFacts } from '../../../src/worker/processFacts';
import { referencePlan } from '../../season/plans';
import { learnKinds } from '../../../src/page/state/common/kinds';
import { catalogueEntries } from '../../../src/worker/catalogueEntries';

learnKinds(catalogueEntries());

const facts = processFacts();
function lived(plan: Plan) {
  const view = mergeSeason(null, { ...runSeason(plan), firstDay: 0, sky: new Float32Array(plan.days).fill(1) });
  return {
    view,
    why: (stage: string, day: number, tint: TintId = 'nitrate'): Why[] => whyAt(view, facts, plan, stage, (day + 1) * 24, tint),
  };
}
const reference = lived(referencePlan({ days: 36 }));
const topics = (told: readonly Why[]): string[] => told.map((why) => why.topic);

describe('what the page knows of processes', () => {
  it('nitritation takes ammonia, oxygen and alkalinity and brings nitrite', () => {
    const effect = facts.effects['nitritation'];
    expect(effect.nitrite).toBe(1);
    expect(effect.ammonia).toBeLessThan(-1);
    expect(effect.oxygen).toBeLessThan(-3);
    // two equivalents a mole of nitrogen, a little more for what becomes film
    expect(effect.alkalinity).toBeCloseTo(-2 / 14.007, 2);
  });

  it('settling takes solids out of the water and breaking them leaves as many', () => {
    expect(facts.effects['settleCoarseFast'].solids).toBeLessThan(0);
    expect(facts.effects['shearFast'].coarse).toBeLessThan(0);
    expect(facts.effects['shearFast'].solids).toBeCloseTo(0, 9);
  });
});

describe('why', () => {
  it('in the fish tank: what the fish gave off and breathed, with the feed of that day', () => {
    const [first] = reference.why('fish', 24);
    expect(first.topic).toBe('fish');
    expect(first.amounts['feed']).toBeGreaterThan(150);
    expect(first.amounts['feed']).toBeLessThan(260);
    expect(first.amounts['oxygen']).toBeGreaterThan(50);
  });

  it('its grams are the sums of the season over the cells of the stage', () => {
    const { view } = reference;
    const stage = view.stages.find(({ id }) => id === 'rafts');
    const told = reference.why('rafts', 24, 'ammonia').find(({ topic }) => topic === 'nitrifiers');
    const at = PROCESS_NAMES.indexOf('nitritation');
    let sum = 0;
    for (let i = 0; i < (stage?.cells ?? 0); i += 1) sum += view.days[24].extents[((stage?.first ?? 0) + i) * PROCESS_NAMES.length + at];
    expect(stage?.cells).toBe(3);
    expect(told?.amounts['ammonia']).toBeCloseTo(sum, 12);
    expect(sum).toBeGreaterThan(0.1);
  });

  it('settlers settle, degassing tanks air and nitrify, beds grow', () => {
    expect(topics(reference.why('settler', 24))[0]).toBe('settled');
    expect(topics(reference.why('degas', 24))).toEqual(expect.arrayContaining(['nitrifiers', 'airIn']));
    expect(topics(reference.why('rafts', 24))).toContain('plants');
  });

  it('is two or three things at most, the largest first, and the quantity looked at counts for more', () => {
    for (const { id } of reference.view.stages) {
      const told = reference.why(id, 24);
      expect(told.length).toBeLessThanOrEqual(3);
      expect(told.map(({ weight }) => weight)).toEqual(told.map(({ weight }) => weight).sort((a, b) => b - a));
    }
    const dosed = (tint: TintId): number => reference.why('sump', 34, tint).find(({ topic }) => topic === 'dosed')?.weight ?? 0;
    expect(topics(reference.why('sump', 34, 'pH'))[0]).toBe('dosed');
    expect(dosed('nitrate')).toBeGreaterThan(0);
    expect(dosed('pH')).toBeGreaterThan(1.5 * dosed('nitrate'));
  });

  it('bacteria with little ammonia left are told so, and what slows them most is what is named', () => {
    expect(reference.why('degas', 24)[0].heldBack?.by).toBe('ammonia');
    const at = (readings: Record<string, number>): string | undefined => {
      const sums = {
        stage: 'degas',
        kind: 'degassingTank',
        day: 0,
        extent: () => 0,
        effect: () => 0,
        mean: (variable: string) => readings[variable] ?? NaN,
      };
      return heldBackBy(sums, facts.limits['nitritation'])?.by;
    };
    const well = { TAN_mgN_L: 12, O2_mg_L: 7, pH: 7.4, alkalinity_meq_L: 2 };
    expect(at(well)).toBeUndefined();
    expect(at({ ...well, O2_mg_L: 1 })).toBe('oxygen');
    expect(at({ ...well, pH: 5.9 })).toBe('pH');
    expect(at({ ...well, alkalinity_meq_L: 0.2 })).toBe('alkalinity');
    expect(at({ ...well, O2_mg_L: 1, TAN_mgN_L: 0.1 })).toBe('ammonia');
  });

  it('an undrained settler is told to let sulfide into the water', () => {
    const plan = referencePlan({ days: 26 });
    const undrained = lived({ ...plan, actions: plan.actions.filter((action) => action.do !== 'drain') });
    expect(topics(undrained.why('settler', 25, 'hydrogenSulfide'))).toContain('sulfideMade');
  });

  it('says nothing where nothing happened: before the first whole day, and in a pump', () => {
    expect(lastWholeDay(23.9)).toBe(-1);
    expect(whyAt(reference.view, facts, referencePlan(), 'fish', 20, 'nitrate')).toEqual([]);
    expect(reference.why('pump', 10)).toEqual([]);
    const empty = referencePlan({ days: 3, fish: [], actions: [] });
    expect(topics(lived(empty).why('settler', 2))).not.toContain('settled');
  });

  it('speaks of the day that has passed, never of hours still to come', () => {
    const { view } = reference;
    const at = (hour: number): string => JSON.stringify(whyAt(view, facts, referencePlan(), 'degas', hour, 'nitrate'));
    expect(at(24 * 10)).toBe(at(24 * 10 + 23.9));
    expect(at(24 * 10)).not.toBe(at(24 * 11));
  });
});
