// What the worker answers when a person acts: earlier days untouched, earlier hours of that day the same within tolerance.
import { describe, expect, it } from 'vitest';
import { runSeason } from '../../src/season/season';
import type { Action, Plan } from '../../src/season/plan';
import { VARIABLES } from '../../src/season/trajectory';
import type { Variable } from '../../src/season/trajectory';
import { createRuns } from '../../src/worker/engineRuns';
import { referencePlan } from '../season/plans';

const plan: Plan = referencePlan({ days: 8 });
const DAY = 4,
  HOUR = 14;
const acted: Plan = { ...plan, actions: [...plan.actions, { day: DAY, hour: HOUR, do: 'air', stage: 'degas', L_min: 5 } satisfies Action] };
/**
 * Shown quantities and what the engine does not strive to tell apart, in their units: its absolute tolerances (CO2: that of carbon, 0.004
 * mol/m³).
 */
const SHOWN: readonly (readonly [Variable, number])[] = [
  ['TAN_mgN_L', 0.01],
  ['NO2_mgN_L', 0.01],
  ['NO3_mgN_L', 0.03],
  ['O2_mg_L', 0.02],
  ['CO2_mg_L', 0.18],
  ['pH', 0.03],
  ['alkalinity_meq_L', 0.004],
];

describe('an action in the middle of a season', () => {
  it('leaves earlier days out of the answer, and the rest is what a fresh run of the new plan gives, bit by bit', () => {
    const runs = createRuns();
    runs.run(plan, 0);
    const answer = runs.run(acted, 99);
    expect(answer.firstDay).toBe(DAY);
    const fresh = runSeason(acted);
    answer.days.forEach((chunk) => expect(chunk.hourly).toEqual(fresh.days[chunk.day].hourly));
    expect(answer.summary).toEqual(fresh.summary);
  });

  it('tells the sky of every day: the light that the weather gave the season', () => {
    const dark: Plan = { ...plan, climate: { ...plan.climate, weather: 0.3, spells: [{ day: 2, days: 3, light: 0.4 }] } };
    const bright: Plan = { ...dark, climate: { ...dark.climate, spells: [] } };
    const { sky } = createRuns().run(dark, 0);
    const usual = createRuns().run(bright, 0).sky;
    expect(sky).toHaveLength(plan.days);
    expect(new Set(usual).size).toBeGreaterThan(plan.days / 2);
    sky.forEach((share, day) => expect(share).toBeCloseTo(usual[day] * (day >= 2 && day < 5 ? 0.4 : 1), 6));
    // a brighter climate has the same sky
    expect(createRuns().run({ ...dark, climate: { ...dark.climate, light_mol_m2_d: 2 * dark.climate.light_mol_m2_d } }, 0).sky).toEqual(
      sky,
    );
  });

  it('leaves earlier days bit-identical and the hours before it equal within tolerance', () => {
    const before = runSeason(plan);
    const after = runSeason(acted);
    for (let day = 0; day < DAY; day++) expect(after.days[day].hourly).toEqual(before.days[day].hourly);
    const width = before.cells * VARIABLES.length;
    let worst = 0;
    for (let hour = 0; hour < HOUR; hour++)
      for (let cell = 0; cell < before.cells; cell++)
        for (const [name, floor] of SHOWN) {
          const i = hour * width + cell * VARIABLES.length + VARIABLES.indexOf(name);
          const [a, b] = [before.days[DAY].hourly[i], after.days[DAY].hourly[i]];
          worst = Math.max(worst, Math.abs(a - b) / (floor + 0.01 * Math.abs(a)));
        }
    expect(worst).toBeLessThan(1);
  });

  it('shows after it', () => {
    const [before, after] = [runSeason(plan), runSeason(acted)];
    expect(after.days[DAY].hourly).not.toEqual(before.days[DAY].hourly);
  });

  it('is taken back without a trace', () => {
    const runs = createRuns();
    const first = runs.run(plan, 0);
    runs.run(acted, 0);
    const again = runs.run(plan, 0);
    expect(again.days.map(({ hourly }) => hourly)).toEqual(first.days.map(({ hourly }) => hourly));
    expect(again.summary).toEqual(first.summary);
  });

  it('two courses are kept: going back and forth between them lives no day again', () => {
    const runs = createRuns();
    const [a, b] = [runs.run(plan, 0), runs.run(acted, 0)];
    expect(runs.run(plan, 0).days[DAY + 1]).toBe(a.days[DAY + 1]);
    expect(runs.run(acted, 0).days[DAY + 1]).toBe(b.days[DAY + 1]);
  });

  it('two courses and two loops shown side by side are kept: coming back to each lives no day again', () => {
    const runs = createRuns();
    const plans = [
      plan,
      acted,
      ...[0.4, 0.5].map((volume_m3) => ({
        ...plan,
        loop: plan.loop.map((stage) => (stage.id === 'degas' ? { ...stage, volume_m3 } : stage)),
      })),
    ];
    const lived = plans.map((one) => runs.run(one, 0));
    plans.forEach((one, index) => expect(runs.run(one, 0).days[DAY + 1]).toBe(lived[index].days[DAY + 1]));
  });

  it('does nothing to days already kept when the design itself changes: all of them come anew', () => {
    const runs = createRuns();
    runs.run(plan, 0);
    expect(
      runs.run({ ...plan, loop: plan.loop.map((stage) => (stage.id === 'degas' ? { ...stage, volume_m3: 0.4 } : stage)) }, 99).firstDay,
    ).toBe(0);
  });
});
