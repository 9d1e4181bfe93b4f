// A season that cannot be lived further says where and when; a season in the dark is lived, and nothing grows.
import { describe, expect, it } from 'vitest';
import { lightNow } from '../../src/season/climate';
import { Season, runSeason } from '../../src/season/season';
import { SeasonError } from '../../src/season/seasonError';
import type { SeasonFault } from '../../src/season/seasonError';
import { faultWords } from '../../src/words/faultWords';
import { keptPlan, referencePlan } from './plans';

function faultOf(live: () => unknown): SeasonFault {
  try {
    live();
  } catch (error) {
    if (error instanceof SeasonError) return error.fault;
    throw error;
  }
  throw new Error('the season was lived');
}

describe('a season that cannot be lived further', () => {
  it('names the stage whose water was lost, the day and the hour', () => {
    const season = new Season(referencePlan({ days: 5 }));
    season.liveDay();
    season.liveDay();
    const stage = season.runtime.assembly.stages.find(({ id }) => id === 'settler');
    season.state.y[(stage?.first ?? 0) * (season.state.y.length / season.runtime.assembly.cells.length)] = NaN;
    expect(faultOf(() => season.liveDay())).toMatchObject({ code: 'stepTooSmall', day: 3, stage: 'settler' });
  });

  it('names the stage that no step is small enough for, and says so in words', () => {
    const live = (): unknown => runSeason(keptPlan('nitrification-rig'), { tolerance: 1e-300 });
    expect(faultOf(live)).toMatchObject({ code: 'stepTooSmall', day: 1, stage: keptPlan('nitrification-rig').loop[0].id });
    expect(faultWords(faultOf(live))).toMatch(
      /^On day 1, at [\d.]+ h, the water of the stage “media” changes faster than can be followed\.$/,
    );
  });
});

describe('a day of no length', () => {
  const plan = referencePlan({ days: 12 });
  const dark = { ...plan, climate: { ...plan.climate, dayLength_h: 0 } };

  it('is dark at every hour, noon among them', () => {
    for (let hour = 0; hour <= 24; hour += 0.5) expect(lightNow(dark.climate, hour)).toBe(0);
  });

  it('is lived: plants do not grow, and nobody expects them to; fish live on', () => {
    const leaf = (t: ReturnType<typeof runSeason>): number => t.summary.scores.plants_kg;
    const inDark = runSeason(dark),
      inLight = runSeason(plan);
    const atPlanting = runSeason(dark, { untilDay: 1 });
    expect(inDark.days.every(({ hourly }) => hourly.every(Number.isFinite))).toBe(true);
    expect(leaf(inDark)).toBeCloseTo(leaf(atPlanting), 12);
    expect(leaf(inLight)).toBeGreaterThan(1.5 * leaf(inDark));
    expect(inDark.summary.scores.plantsIdeal_kg).toBeCloseTo(leaf(inDark), 9);
    expect(inDark.summary.scores.survival).toBeGreaterThan(0.9);
  });

  it('stays dark whatever light a person sets', () => {
    const set = runSeason({ ...dark, actions: [...dark.actions, { day: 1, hour: 0, do: 'light', mol_m2_d: 20 }] });
    expect(set.summary.scores.plantsIdeal_kg).toBe(runSeason(dark).summary.scores.plantsIdeal_kg);
  });
});
