// No number of the model is dead: each, moved within its range, moves a season or a design.
import { describe, expect, it } from 'vitest';
import { CROPS, SPECIES } from '../../src/catalogue/kinds';
import { GROUPS } from '../../src/catalogue/values';
import type { Parameter } from '../../src/model/parameters/parameter';
import { checkDesign } from '../../src/season/designCheck';
import type { Plan } from '../../src/season/plan';
import { runSeason } from '../../src/season/season';
import { cropPlans, sharedPlans, speciesPlans } from './everyParameterPlans';

type Answer = readonly number[];

/** All that a person could see of a plan: hours, what each process did, scores, the design. */
function answerOf(plan: Plan, parameters: Record<string, number> = {}): Answer {
  const { initial, days, summary } = runSeason(plan, { parameters });
  const { stages, lift_m } = checkDesign(plan, parameters);
  const books = summary.ledger.flatMap(({ start, inflow, outflow, end }) => [start, inflow, outflow, end]);
  const levels = stages.map(({ level_m }) => level_m);
  return [
    ...books,
    lift_m,
    ...levels,
    ...Object.values(summary.scores),
    ...initial,
    ...days.flatMap(({ hourly, extents }) => [...hourly, ...extents]),
  ];
}

const differ = (a: Answer, b: Answer): boolean =>
  a.length !== b.length || a.some((x, i) => Math.abs(x - b[i]) > 1e-7 * (Math.abs(x) + Math.abs(b[i])) + 1e-9);

const entries = Object.entries(GROUPS).flatMap(([group, parameters]) =>
  Object.entries(parameters).map(([name, parameter]): [string, string, Parameter] => [group, name, parameter]),
);
const groups = Object.keys(GROUPS);
const shared = sharedPlans();
const plansOf = (group: string): Plan[] =>
  group in SPECIES ? speciesPlans(group as keyof typeof SPECIES) : group in CROPS ? cropPlans(group as keyof typeof CROPS) : shared;

/** The names in a group that no plan answers to. */
function deadIn(group: string): string[] {
  const plans = plansOf(group);
  const recorded: (Answer | undefined)[] = plans.map(() => undefined);
  let usual = 0;
  return entries
    .filter(([of, , { fixed }]) => of === group && fixed === undefined)
    .filter(([, name, { value, low, high }]) => {
      const far = high > value ? high : low;
      // Begins with the plan that answered last: neighbours are asked for by the same.
      for (let i = 0; i < plans.length; i++) {
        const p = (usual + i) % plans.length;
        if (!differ((recorded[p] ??= answerOf(plans[p])), answerOf(plans[p], { [`${group}.${name}`]: far }))) continue;
        usual = p;
        return false;
      }
      return true;
    })
    .map(([, name]) => name);
}

describe.each(groups)('a number of %s', (group) => {
  it('moves a season or a design within its range, each', () => {
    expect(deadIn(group)).toEqual([]);
  }, 300_000);
});
