// How the return pump fares, read off lived seasons: as set, held back by a blocked filter, switched off, without power, dry.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Lesson } from '../../../src/lessons/lesson';
import { checkDesign } from '../../../src/season/designCheck';
import { runSeason } from '../../../src/season/season';
import type { Action, Plan } from '../../../src/season/plan';
import { openingPlan } from '../../../src/page/state/build/planEdits';
import { drewAir, pumpNow, type PumpNow } from '../../../src/page/state/run/pump';
import { mergeSeason } from '../../../src/page/state/run/view';
import { say, isWord } from '../../../src/words/say';
import { referencePlan } from '../../season/plans';
import { event, withEvents } from '../picture/loops';

function lived(plan: Plan): (now_h: number) => PumpNow {
  const view = mergeSeason(null, { ...runSeason(plan), firstDay: 0, sky: new Float32Array(plan.days).fill(1) });
  const design = checkDesign(plan);
  return (now_h) => {
    const now = pumpNow(view, plan, design, now_h);
    if (now === null) throw new Error('no pump');
    return now;
  };
}
const during = (...actions: Action[]): Plan => ({ ...referencePlan({ days: 4 }), actions: [...referencePlan().actions, ...actions] });

describe('the return pump', () => {
  it('pours what it is set to, and stands in its tank as planned', () => {
    const now = lived(referencePlan({ days: 4 }))(60);
    expect(now.state).toBe('runs');
    expect(now.tank).toBe('sump');
    expect(now.flow_m3_d / (now.setting_m3_d ?? NaN)).toBeGreaterThan(0.95);
    expect(now.lift_m).toBeGreaterThan(0.5);
    expect(Math.abs(now.depth_m / now.usualDepth_m - 1)).toBeLessThan(0.15);
  });

  it('with a curve of its own has no setting to show', () => {
    const plan = referencePlan({ days: 2 });
    const now = lived({
      ...plan,
      loop: plan.loop.map((stage) => (stage.kind === 'returnPump' ? { ...stage, curve: { maxHead_m: 3, maxFlow_m3_h: 3 } } : stage)),
    })(30);
    expect(now.state).toBe('byCurve');
    expect(now.setting_m3_d).toBeNull();
    expect(now.flow_m3_d).toBeGreaterThan(5);
  });

  it('is switched off and on again, and what stood high runs down meanwhile', () => {
    const at = lived(during({ day: 1, hour: 6, do: 'pump', on: false }, { day: 2, hour: 6, do: 'pump', on: true }));
    expect([28, 40, 56].map((hour) => at(hour).state)).toEqual(['runs', 'off', 'runs']);
    expect(at(40).flow_m3_d).toBe(0);
    expect(at(40).depth_m).toBeGreaterThan(at(28).depth_m + 0.005);
  });

  it('has no power while the mains are off', () => {
    const at = lived(during({ day: 1, hour: 6, do: 'power', on: false }, { day: 1, hour: 12, do: 'power', on: true }));
    expect([28, 33, 40].map((hour) => at(hour).state)).toEqual(['runs', 'noPower', 'runs']);
  });

  it('is set to another flow', () => {
    const at = lived(during({ day: 1, hour: 6, do: 'flow', flow_m3_h: 1 }));
    expect(at(40).setting_m3_d).toBe(24);
    expect(at(40).flow_m3_d).toBeLessThan(at(20).flow_m3_d);
  });

  it('draws air where the loop as a lesson gives it keeps its tank short, and pours again in between', () => {
    const lesson = JSON.parse(readFileSync(new URL('../../../levels/08-where-the-pump.json', import.meta.url), 'utf8')) as Lesson;
    const at = lived({ ...openingPlan(lesson), days: 14 });
    const dry = Array.from({ length: 14 * 24 }, (_, hour) => at(hour)).filter(({ state }) => state === 'drewAir');
    expect(dry.length).toBeGreaterThan(10);
    expect(dry.length).toBeLessThan(14 * 24 - 20);
    expect(dry.every(({ flow_m3_d }) => flow_m3_d <= 1e-6)).toBe(true);
  });

  it('has words for every state', () => {
    for (const state of ['runs', 'byCurve', 'weak', 'off', 'noPower', 'drewAir', 'cannotLift'] as const) {
      expect(isWord(`pump.${state}`)).toBe(true);
      expect(say(`pump.${state}`, { tank: 'Sump' })).not.toContain('{');
    }
  });

  it('is nothing to tell of in a loop without one', () => {
    const plan = referencePlan({ days: 2 });
    const view = mergeSeason(null, { ...runSeason(plan), firstDay: 0, sky: new Float32Array(2).fill(1) });
    expect(pumpNow(view, { ...plan, loop: plan.loop.filter(({ kind }) => kind !== 'returnPump') }, checkDesign(plan), 10)).toBeNull();
  });
});

describe('a pump', () => {
  it('is taken to have drawn air from then on, until somebody turns it', () => {
    const view = withEvents(event(10, 'pumpDry', 'sump'), event(50, 'pumpOff'));
    expect([9, 10, 30, 51].map((now_h) => drewAir(view, 'sump', now_h))).toEqual([false, true, true, false]);
  });

  it('in another tank says nothing about this one', () => {
    expect(drewAir(withEvents(event(10, 'pumpDry', 'elsewhere')), 'sump', 20)).toBe(false);
  });
});
