// Variants of a plan: which there are, that they are the same each time, and that each differs from the plan in one thing only.
import { describe, expect, it } from 'vitest';
import { takesSolids } from '../../src/season/plan';
import { runSeason } from '../../src/season/season';
import {
  inOrder,
  liveVariant,
  movableStages,
  MOST_SEQUENCES,
  ordersOf,
  possibleSequences,
  routinesOf,
  sequencesOf,
  swapsOf,
  variantsOf,
  withoutAction,
  withoutPart,
} from '../../src/season/variants';
import { keptPlan, referencePlan } from './plans';

const ORDER = ['fish', 'a', 'b', 'sump', 'pump', 'c'];
const many = ['fish', ...'abcdefg', 'sump', 'pump'];
const named = (orders: readonly string[][]): string[] => orders.map((order) => order.join(' '));

describe('the sequences of parts', () => {
  it('are all that there are, with the order given first, and what is no part stays where it stands', () => {
    expect(named(sequencesOf(ORDER, ['a', 'b', 'c']))).toEqual([
      'fish a b sump pump c',
      'fish a c sump pump b',
      'fish b a sump pump c',
      'fish b c sump pump a',
      'fish c a sump pump b',
      'fish c b sump pump a',
    ]);
    expect(named(sequencesOf(ORDER, []))).toEqual(['fish a b sump pump c']);
  });

  it('are five parts whole and six a sample of as many, drawn alike each time, each once, the order given first', () => {
    expect(sequencesOf(many, [...'abcde'])).toHaveLength(MOST_SEQUENCES);
    const sample = named(sequencesOf(many, [...'abcdefg']));
    expect(sample).toHaveLength(MOST_SEQUENCES);
    expect(sample[0]).toBe(many.join(' '));
    expect(new Set(sample).size).toBe(MOST_SEQUENCES);
    expect(named(sequencesOf(many, [...'abcdefg']))).toEqual(sample);
    // a drawn order is no neighbour of the one before: the sample reaches over all places
    for (const part of 'abcdefg') expect(new Set(sample.map((order) => order.split(' ').indexOf(part))).size).toBe(7);
  });

  it('hold each swap of two parts, and none twice', () => {
    expect(named(swapsOf(ORDER, ['a', 'b', 'c']))).toEqual(['fish b a sump pump c', 'fish c b sump pump a', 'fish a c sump pump b']);
    expect(ordersOf(ORDER, ['a', 'b', 'c'])).toHaveLength(6);
    const all = named(ordersOf(many, [...'abcdefg']));
    for (const swap of named(swapsOf(many, [...'abcdefg']))) expect(all).toContain(swap);
    expect(new Set(all).size).toBe(all.length);
    expect(all.length).toBeGreaterThan(MOST_SEQUENCES);
    expect(all.length).toBeLessThanOrEqual(MOST_SEQUENCES + 21);
  });

  it('are as many as the parts can stand in', () => {
    expect([0, 1, 2, 4, 6].map(possibleSequences)).toEqual([1, 1, 2, 24, 720]);
  });
});

describe('the variants of a plan', () => {
  const plan = referencePlan();
  const variants = variantsOf(plan);

  it('move every stage but fish tank, sump and pump', () => {
    expect(movableStages(plan.loop)).toEqual(['settler', 'mats', 'degas', 'rafts']);
    expect(variants.sequences).toHaveLength(24);
    expect(variants.sequences[0].plan).toEqual(plan);
    for (const { order, plan: one } of variants.sequences) {
      expect(one.loop.map(({ id }) => id)).toEqual(order);
      expect([order[0], ...order.slice(-2)]).toEqual(['fish', 'sump', 'pump']);
      expect({ ...one, loop: [] }).toEqual({ ...plan, loop: [] });
    }
  });

  it('leave out a part with what is done to it, and nothing else', () => {
    expect(variants.withoutPart.map(({ part }) => part)).toEqual(['settler', 'mats', 'degas', 'rafts']);
    const [{ plan: without }] = variants.withoutPart;
    expect(without.loop.map(({ id }) => id)).toEqual(['fish', 'mats', 'degas', 'rafts', 'sump', 'pump']);
    expect(plan.actions.filter((action) => !without.actions.includes(action)).map((action) => action.do)).toEqual(['drain']);
  });

  it('let what stands at the side take no more from a part that is gone', () => {
    const every = keptPlan('every-part');
    const from = every.side.find(takesSolids)?.takes[0] ?? '';
    expect(from).not.toBe('');
    const without = withoutPart(every, from);
    expect(without.side.find(takesSolids)?.takes).not.toContain(from);
    expect(every.side.find(takesSolids)?.takes).toContain(from);
  });

  it('leave out one routine at a time, of two alike only one', () => {
    expect(variants.withoutRoutine.map(({ routine }) => routine.do)).toEqual(['drain', 'rinse']);
    for (const { routine, plan: one } of variants.withoutRoutine)
      expect(one.actions).toEqual(plan.actions.filter((action) => action !== routine));
    const [drain] = routinesOf(plan);
    const twice = { ...plan, actions: [drain, { ...drain }] };
    expect(withoutAction(twice, twice.actions[0]).actions).toEqual([drain]);
    expect(variantsOf(twice).withoutRoutine).toHaveLength(2);
  });

  it('change nothing of the plan that they come from', () => {
    expect(plan).toEqual(referencePlan());
  });
});

describe('a variant', () => {
  it('is lived to its end as any season is, and one order differs from another', () => {
    const plan = referencePlan({ days: 4 });
    const lived = liveVariant(plan, 0.5);
    expect('trajectory' in lived && lived.trajectory.summary).toEqual(runSeason(plan, { plantsWeight: 0.5 }).summary);
    const other = liveVariant(inOrder(plan, ['fish', 'rafts', 'settler', 'mats', 'degas', 'sump', 'pump']), 0.5);
    expect('trajectory' in other && other.trajectory.summary.scores).not.toEqual('trajectory' in lived && lived.trajectory.summary.scores);
  });
});
