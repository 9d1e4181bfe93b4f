// Every kind of stage alone on a bench, fed with used fish water for some days: nothing runs away and no gram is lost.
import { describe, expect, it } from 'vitest';
import { STAGES } from '../../src/catalogue/kinds';
import { runSeason } from '../../src/season/season';
import type { Plan, StageKind } from '../../src/season/plan';
import { benchPlan, feedWater } from '../handbook/bench';

const wet = STAGES.filter(({ cells }) => cells > 0);

function alone(kind: string, change: Partial<Plan> = {}): Plan {
  const { defaults, grows } = STAGES.find((type) => type.kind === kind) ?? STAGES[0];
  const crop = grows ? { crop: { kind: 'lettuce' as const, plants_m2: 24, plantedDay: 0, replant: true } } : {};
  return benchPlan({
    stage: { id: 'one', kind: kind as StageKind, ...defaults, ...crop },
    days: 4,
    rig: {
      inflow: feedWater({
        TAN_mgN_L: 2,
        NO3_mgN_L: 20,
        Fe_mg_L: 1,
        Mg_mg_L: 8,
        organics_mgCOD_L: 8,
        solidsCoarse_mg_L: 10,
        solidsFine_mg_L: 4,
        solidsSuperfine_mg_L: 2,
      }),
      flow_m3_d: 24,
      hold: { T_C: 24 },
    },
    change: { start: { water: 'source', biofilm: 'seeded' }, ...change },
  });
}

describe.each(wet.map(({ kind }) => kind))('%s alone on a bench', (kind) => {
  const t = runSeason(alone(kind));

  it('gives finite numbers at every hour', () => {
    expect(t.days).toHaveLength(4);
    for (const day of t.days) expect(day.hourly.every(Number.isFinite)).toBe(true);
  });

  it('takes nothing below zero that it had to cut off, and closes its books', () => {
    expect(t.summary.clipped).toBeLessThan(1e-6);
    for (const { element, closure } of t.summary.ledger) expect(Math.abs(closure), element).toBeLessThan(1e-9);
  });

  it('does so at a trickle and with no flow', () => {
    for (const flow_m3_d of [0.5, 0]) {
      const plan = alone(kind);
      const slow = runSeason({ ...plan, days: 1, rig: plan.rig && { ...plan.rig, flow_m3_d } });
      for (const day of slow.days) expect(day.hourly.every(Number.isFinite), `${flow_m3_d} m³/d`).toBe(true);
      for (const { element, closure } of slow.summary.ledger)
        expect(Math.abs(closure), `${element} at ${flow_m3_d} m³/d`).toBeLessThan(1e-9);
    }
  });
});
