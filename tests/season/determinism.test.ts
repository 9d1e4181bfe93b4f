// A season is a pure function of its plan: same plan, same bits; taken up again at midnight it goes on as if never laid down.
import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Season, runSeason } from '../../src/season/season';
import type { Plan } from '../../src/season/plan';
import type { DayChunk } from '../../src/season/trajectory';
import { referencePlan } from './plans';
import { randomPlan } from './randomLoops';

const bytes = (array: Float32Array | Float64Array): Uint8Array => new Uint8Array(array.buffer, array.byteOffset, array.byteLength);
const hashOf = (days: readonly DayChunk[]): string => {
  const hash = createHash('sha256');
  for (const day of days) {
    hash.update(bytes(day.hourly));
    hash.update(bytes(day.extents));
    hash.update(JSON.stringify([day.scores, day.events]));
  }
  return hash.digest('hex');
};
const lively: Plan = referencePlan({
  days: 14,
  climate: { ...referencePlan().climate, water_C: undefined, weather: 0.8 },
  actions: [
    ...referencePlan().actions,
    { day: 5, hour: 3, do: 'pump', on: false },
    { day: 5, hour: 7, do: 'pump', on: true },
    { day: 8, hour: 10, do: 'exchange', stage: 'sump', fraction: 0.4 },
    { day: 9, hour: 14, do: 'takeFish', tank: 'fish', number: 10 },
  ],
});

describe('the same plan', () => {
  it('gives the same bits twice', () => {
    expect(hashOf(runSeason(lively).days)).toBe(hashOf(runSeason(lively).days));
  });

  it('gives other bits with another seed', () => {
    expect(hashOf(runSeason({ ...lively, seed: 'orchard-8' }).days)).not.toBe(hashOf(runSeason(lively).days));
  });
});

describe('a season taken up at a midnight', () => {
  it.each([1, 5, 6, 9, 13])('after %i days goes on bit by bit like the unbroken one', (after) => {
    const whole = runSeason(lively);
    const first = new Season(lively);
    for (let day = 0; day < after; day++) first.liveDay();
    const second = new Season(lively, {}, first.checkpoint());
    const days: DayChunk[] = [];
    while (second.day < lively.days) days.push(second.liveDay());
    days.forEach((chunk, i) => {
      expect(chunk.hourly).toEqual(whole.days[after + i].hourly);
      expect(chunk.extents).toEqual(whole.days[after + i].extents);
    });
    expect(hashOf(days)).toBe(hashOf(whole.days.slice(after)));
    expect(second.summary()).toEqual(whole.summary);
  });

  it.each(fc.sample(randomPlan(6), { numRuns: 10, seed: 8 }).map((plan, i) => [i, plan] as const))(
    'goes on bit by bit in random loop %i too, whatever stages, weather and deeds it has',
    (_, plan) => {
      const whole = runSeason(plan);
      const first = new Season(plan);
      for (let day = 0; day < 3; day++) first.liveDay();
      const second = new Season(plan, {}, first.checkpoint());
      const days: DayChunk[] = [];
      while (second.day < plan.days) days.push(second.liveDay());
      expect(hashOf(days)).toBe(hashOf(whole.days.slice(3)));
      expect(second.summary()).toEqual(whole.summary);
    },
  );

  it('leaves the checkpoint as it was, so that two branches can grow from it', () => {
    const first = new Season(lively);
    for (let day = 0; day < 4; day++) first.liveDay();
    const checkpoint = first.checkpoint();
    const one = new Season(lively, {}, checkpoint).liveDay();
    expect(hashOf([new Season(lively, {}, checkpoint).liveDay()])).toBe(hashOf([one]));
  });
});

describe('chance', () => {
  const bare: Plan = { ...lively, days: 3, start: { ...lively.start, biofilm: 'bare' } };

  it('a change of weather does not move the first settlers', () => {
    const calm = new Season({ ...bare, climate: { ...bare.climate, weather: 0 } });
    const stormy = new Season({ ...bare, days: 40, climate: { ...bare.climate, weather: 1 } });
    expect(stormy.state.y).toEqual(calm.state.y);
    expect(stormy.runtime.weather.light.slice(0, 3)).not.toEqual(calm.runtime.weather.light);
  });

  it('a longer season has the same first days of weather', () => {
    expect(new Season({ ...bare, days: 40 }).runtime.weather.light.slice(0, 3)).toEqual(new Season(bare).runtime.weather.light);
  });
});
