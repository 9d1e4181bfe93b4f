// Whatever a person builds and does, the model stays a model: numbers everywhere, nothing below nothing, every gram accounted for.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { referencePlan } from './plans';
import { randomPlan } from './randomLoops';
import { CLIPPED, liveSanely } from './sanity';

describe('any loop, whatever is done to it', () => {
  it('holds numbers, no negative mass, and closed books of N, P, C, S, oxygen demand, charge and water', () => {
    const clipped: number[] = [];
    fc.assert(fc.property(randomPlan(10), (plan) => { clipped.push(liveSanely(plan).clipped); }), { numRuns: 20, seed: 20, endOnFailure: true });
    expect(clipped.filter((share) => !(share < CLIPPED)), 'seasons that clipped too much at zero').toEqual([]);
  });

  it('and the lesson\'s own loop, all its days', () => {
    expect(liveSanely(referencePlan()).clipped, 'mass clipped at zero').toBeLessThan(CLIPPED);
  });
});
