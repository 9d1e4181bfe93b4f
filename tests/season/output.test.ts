// Hourly rows are read off states between steps, where only what rows are made from is filled in.
import { describe, expect, it } from 'vitest';
import { Rosenbrock2 } from '../../src/numerics/rosenbrock';
import { Season } from '../../src/season/season';
import { stageType } from '../../src/catalogue/stageTypes';
import type { Plan } from '../../src/season/plan';
import { VARIABLES } from '../../src/season/trajectory';
import { inOrder, referencePlan } from './plans';

const days = (plan: Plan, everything: boolean): Float32Array[] => {
  const season = new Season(plan);
  if (everything) season.runtime.solver = new Rosenbrock2(season.runtime.system);
  return Array.from({ length: 3 }, () => season.liveDay().hourly);
};

describe('hourly rows', () => {
  it.each([
    ['the reference loop', referencePlan()],
    ['a shorter loop', inOrder(['fish', 'settler', 'mats', 'rafts', 'sump', 'pump'], () => true)],
  ] as const)('of %s are the same where the whole state is filled in', (_, plan) => {
    expect(plan.loop.some(({ kind }) => stageType(kind).grows)).toBe(true);
    expect(days(plan, false)).toEqual(days(plan, true));
  });

  it('have something to show of all that a full loop has', () => {
    const season = new Season(referencePlan());
    let hourly = new Float32Array(0);
    for (let day = 0; day < 12; day++) hourly = new Float32Array(season.liveDay().hourly);
    const never = VARIABLES.filter((_, v) => hourly.every((value, i) => i % VARIABLES.length !== v || value === 0));
    // Nothing is cut yet, nothing needs a base or runs over a rim.
    expect(never).toEqual(['cut_kg', 'dose_g_d', 'spill_m3_d']);
  });
});
