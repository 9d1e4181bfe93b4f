// Whatever a person builds and does, the model stays a model: numbers everywhere, nothing below nothing, every gram accounted for.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../src/lessons/planChecks';
import { STAGES } from '../../src/catalogue/kinds';
import { referencePlan } from './plans';
import { randomPlan } from './randomLoops';
import { CLIPPED, liveSanely } from './sanity';

const DAYS = 5;
const PLANS = fc.sample(randomPlan(DAYS), { numRuns: 36, seed: 20 });
/** a loop of a dozen cells takes a tenth of a second for five days; a hundred times that is a hang */
const BUDGET_ms = 10_000;

describe('any loop, whatever is done to it', () => {
  it('is one that may be built, and together they hold every kind of the catalogue', () => {
    expect(PLANS.flatMap((plan, i) => checkPlan(plan).map(({ path, got, expected }) => `loop ${i}, ${path}: ${got}, ${expected}`))).toEqual(
      [],
    );
    const kinds = new Set<string>(PLANS.flatMap(({ loop, side }) => [...loop, ...side].map(({ kind }) => kind)));
    expect(STAGES.map(({ kind }) => kind).filter((kind) => !kinds.has(kind))).toEqual([]);
  });

  it('holds numbers, no negative mass or water, and closed books of N, P, C, S, oxygen demand, charge and water', () => {
    const lived = PLANS.map((plan) => liveSanely(plan, BUDGET_ms));
    expect(lived.flatMap(({ faults }, i) => faults.map((fault) => `loop ${i}: ${fault}`))).toEqual([]);
  });

  it("and the lesson's own loop, all its days, with next to nothing clipped at zero", () => {
    const { faults, clipped } = liveSanely(referencePlan());
    expect(faults).toEqual([]);
    expect(clipped).toBeLessThan(CLIPPED);
  });
});
