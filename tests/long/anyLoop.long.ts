// A thousand random loops, random deeds, a year each: what anyLoop.test.ts asks of a few days.
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { randomPlan } from '../season/randomLoops';
import { CLIPPED, liveSanely } from '../season/sanity';
import type { Lived } from '../season/sanity';

const LOOPS = 1000;
const DAYS = 365;
const EACH = 25;
/** A loop of ten cells takes one to three seconds a year; forty times that is a hang. */
const BUDGET_ms = 120_000;
/**
 * Of all loops: how many may clip more than CLIPPED, and how much the worst. Those are vessels of a few litres with much film, whose
 * reactants run out within seconds, and a tank that a pump feeds from itself, its few solids broken as they go round.
 */
const MAY_CLIP = 0.08;
const CLIP_WORST = 1e-2;

/** Another seed, or fewer days, from outside: LOOPWRIGHT_SEED, LOOPWRIGHT_DAYS. */
const seed = Number(process.env['LOOPWRIGHT_SEED'] ?? 1);
const days = Number(process.env['LOOPWRIGHT_DAYS'] ?? DAYS);

const plans = fc.sample(randomPlan(days), { numRuns: LOOPS, seed });
const lived: { loop: number; life: Lived }[] = [];

describe(`a thousand random loops of seed ${seed}, ${days} days each`, () => {
  it.each(Array.from({ length: LOOPS / EACH }, (_, i) => i * EACH))(
    `from %i on, ${EACH} of them hold numbers, no negative mass or water, and closed books`,
    (from) => {
      const these = plans.slice(from, from + EACH).map((plan, i) => ({ loop: from + i, life: liveSanely(plan, BUDGET_ms) }));
      lived.push(...these);
      expect(these.flatMap(({ loop, life }) => life.faults.map((fault) => `loop ${loop}: ${fault}`))).toEqual([]);
    },
  );

  it('clip next to nothing at zero', () => {
    const clipping = lived.filter(({ life }) => !(life.clipped < CLIPPED)).sort((a, b) => b.life.clipped - a.life.clipped);
    console.table(
      clipping.slice(0, 20).map(({ loop, life }) => ({ loop, clipped: life.clipped.toExponential(2), most: life.clippedMost })),
    );
    expect(clipping.length / lived.length, `share of loops that clip more than ${CLIPPED}`).toBeLessThanOrEqual(MAY_CLIP);
    expect(clipping[0]?.life.clipped ?? 0, `loop ${clipping[0]?.loop}`).toBeLessThan(CLIP_WORST);
  });
});

afterAll(() => {
  const perCell = lived
    .map(({ loop, life }) => ({ loop, us: (1000 * life.ms) / (life.cells * life.days), stepsPerDay: life.steps / life.days }))
    .sort((a, b) => b.us - a.us);
  console.log(`µs per cell and day: median ${perCell[Math.floor(perCell.length / 2)]?.us.toFixed(0)}`);
  console.table(
    perCell.slice(0, 10).map(({ loop, us, stepsPerDay }) => ({ loop, 'µs/cell/day': us.toFixed(0), 'steps/day': stepsPerDay.toFixed(0) })),
  );
});
