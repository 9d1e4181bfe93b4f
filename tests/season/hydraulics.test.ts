// Water through the loop: retention, falls, stands, and what stops when the power does.
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { CL, STATES } from '../../src/model/components';
import { designOf } from '../../src/season/design';
import { Season, runSeason } from '../../src/season/season';
import { course } from './courses';
import { referencePlan } from './plans';
import { RECORDED } from '../../src/catalogue/values';
import { randomPlan } from './randomLoops';

describe('a design', () => {
  it('keeps water in every stage for its volume over the flow', () => {
    const plan = referencePlan();
    const flow = plan.loop.find(({ kind }) => kind === 'returnPump')?.flow_m3_h ?? 0;
    const settler = designOf(plan, RECORDED).stages.find(({ id }) => id === 'settler');
    expect(settler?.retention_min).toBeCloseTo((0.19 / flow) * 60, 9);
    const bed = designOf(plan, RECORDED).stages.find(({ id }) => id === 'rafts');
    expect(bed?.retention_min).toBeCloseTo((0.9 / flow) * 60, 9);
  });

  it('falls at least 5 cm from each gravity stage to the next, has its lifted stages above the fish tank, and lifts upwards', () => {
    fc.assert(
      fc.property(randomPlan(5), (given) => {
        // where nobody chose the stands
        const plan = { ...given, loop: given.loop.map((stage) => ({ ...stage, stand_m: undefined })) };
        const { stages, lift_m } = designOf(plan, RECORDED);
        const pump = stages.findIndex(({ kind }) => kind === 'returnPump');
        for (let i = 1; i < pump; i++) expect(stages[i - 1].level_m - stages[i].level_m, stages[i].id).toBeGreaterThan(0.05 - 1e-9);
        for (const stage of stages.slice(pump + 1)) expect(stage.level_m).toBeGreaterThan(stages[0].level_m);
        expect(lift_m).toBeGreaterThan(0);
        // what stands before the sump stands on the floor; a stage behind a sump would have to stand lower than that
        const sump = stages.findIndex(({ kind }) => kind === 'sump');
        for (const stage of stages.slice(0, sump)) expect(stage.floor_m, `${stage.id} stands in the ground`).toBeGreaterThan(-1e-9);
      }),
      { numRuns: 60, seed: 5 },
    );
  });

  it('names what a beginner forgets: plants, solids, the pump', () => {
    const plan = referencePlan();
    const only = (...ids: string[]): string[] =>
      designOf({ ...plan, loop: plan.loop.filter(({ id }) => ids.includes(id)) }, RECORDED).problems.map(({ key }) => key);
    expect(only('fish', 'sump', 'pump')).toEqual(['design.noPlants', 'design.noSolids']);
    expect(only('fish', 'settler', 'rafts', 'sump')).toEqual(['design.noPump']);
  });
});

describe('when the power fails', () => {
  const plan = referencePlan({
    days: 4,
    actions: [...referencePlan().actions, { day: 2, hour: 6, do: 'power', on: false }, { day: 2, hour: 12, do: 'power', on: true }],
  });

  it('pump and air stop for those hours and no others, and oxygen falls in the fish tank', () => {
    const t = runSeason(plan);
    const flow = course(t, 'rafts', 'flow_m3_d');
    const air = course(t, 'degas', 'air_L_min');
    const off = Array.from({ length: 6 }, (_, i) => 2 * 24 + 6 + i);
    // a value stands for the end of its hour
    flow.forEach((value, hour) => expect(value > 0, `hour ${hour}`).toBe(!off.includes(hour)));
    air.forEach((value, hour) => expect(value > 0, `hour ${hour}`).toBe(!off.includes(hour)));
    const oxygen = course(t, 'fish', 'O2_mg_L');
    expect(oxygen[2 * 24 + 11]).toBeLessThan(0.8 * oxygen[2 * 24 + 5]);
  });

  it('the pump alone can stop: air goes on', () => {
    const t = runSeason({ ...plan, actions: [...referencePlan().actions, { day: 2, hour: 6, do: 'pump', on: false }] });
    expect(course(t, 'rafts', 'flow_m3_d').at(-1)).toBe(0);
    expect(course(t, 'degas', 'air_L_min').at(-1)).toBeGreaterThan(0);
  });

  it('uses less electricity than a loop that ran on', () => {
    const used = (off: boolean): number =>
      runSeason({ ...plan, actions: off ? plan.actions : referencePlan().actions }).summary.scores.energy_kWh;
    // the refilled tanks stand a little lower at first, so the pump lifts a little more
    expect(used(true) / used(false)).toBeCloseTo(1 - 6 / 96, 2);
  });
});

describe('water carries what it holds', () => {
  it('salt thrown into the fish tank is spread over the whole loop within a day', () => {
    const plan = referencePlan({ days: 3, fish: [], actions: [{ day: 1, hour: 0, do: 'salt', stage: 'fish', g: 100 }] });
    const season = new Season(plan);
    while (season.day < plan.days) season.liveDay();
    const chloride = season.runtime.assembly.cells.map((cell) => season.state.y[cell.index * STATES + CL] / cell.volume);
    expect(Math.max(...chloride) / Math.min(...chloride)).toBeLessThan(1.02);
  });
});
