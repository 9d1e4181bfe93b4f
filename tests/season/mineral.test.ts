// A mineralisation tank gets what the stages it takes from let out: drained sludge and rinsed solids alike.
import { describe, expect, it } from 'vitest';
import { runSeason } from '../../src/season/season';
import type { Plan } from '../../src/season/plan';
import { course } from './courses';
import { referencePlan } from './plans';

const withTank = (takes: string[]): Plan => {
  const plan = referencePlan({ days: 12 });
  return {
    ...plan,
    side: [...plan.side, { id: 'mineral', kind: 'mineralisationTank', volume_m3: 0.2, air_L_min: 20, takes, returnsTo: 'sump' }],
  };
};

describe('what is rinsed out of a filter', () => {
  const toDrain = runSeason(withTank([]));
  const toTank = runSeason(withTank(['mats']));

  it('lies in the tank that takes from it from the hour of rinsing on', () => {
    // the mats are rinsed at nine of day 3; hour k of a course ends k + 1 hours after the start
    const sludge = course(toTank, 'mineral', 'sludge_g');
    expect(sludge[3 * 24 + 8]).toBeLessThan(1);
    expect(sludge[3 * 24 + 10]).toBeGreaterThan(4);
    expect(Math.max(...course(toDrain, 'mineral', 'sludge_g'))).toBeLessThan(1);
  });

  it('is not discharged, and the books stay closed', () => {
    expect(toTank.summary.scores.solidsDischarged_g).toBeLessThan(toDrain.summary.scores.solidsDischarged_g - 30);
    for (const { element, closure } of toTank.summary.ledger) expect(Math.abs(closure), element).toBeLessThan(1e-9);
  });
});
