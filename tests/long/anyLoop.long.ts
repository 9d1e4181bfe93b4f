// A thousand random loops, forty-five days each: what anyLoop.test.ts asks of twenty short ones.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CLIPPED, liveSanely } from '../season/sanity';
import { randomPlan } from '../season/randomLoops';

const LOOPS = 1000;
const DAYS = 45;

describe('a thousand random loops', () => {
  it('hold numbers, no negative mass and closed books, all season', () => {
    const clipped: number[] = [];
    fc.assert(fc.property(randomPlan(DAYS), (plan) => { clipped.push(liveSanely(plan).clipped); }), { numRuns: LOOPS, seed: 1, endOnFailure: true });
    clipped.sort((a, b) => a - b);
    console.log(`clipped: median ${clipped[Math.floor(clipped.length / 2)]}, worst ${clipped.at(-1) ?? 0}`);
    expect(clipped.filter((share) => !(share < CLIPPED)), 'seasons that clipped too much at zero').toEqual([]);
  });
});
