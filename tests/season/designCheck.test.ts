// A design looked over before any run: what is said, and of which stage.
import { describe, expect, it } from 'vitest';
import { checkDesign } from '../../src/season/designCheck';
import type { Plan, StageSpec } from '../../src/season/plan';
import { referencePlan } from './plans';

const changed = (change: (stage: StageSpec) => StageSpec): Plan => ({ ...referencePlan(), loop: referencePlan().loop.map(change) });
const told = (plan: Plan): string[] => checkDesign(plan).problems.map(({ stage, key }) => `${stage} ${key}`);

describe('a design', () => {
  it('of the first lesson has no fault', () => {
    expect(told(referencePlan())).toEqual([]);
  });

  it('whose filter stands too high names the link before it, with the centimetres it is short, and no other', () => {
    const { problems } = checkDesign(changed((stage) => (stage.id === 'mats' ? { ...stage, stand_m: 0.6 } : stage)));
    const uphill = problems.filter(({ key }) => key === 'design.uphill');
    expect(uphill.map(({ stage }) => stage)).toEqual(['settler']);
    expect(uphill[0]?.values['cm']).toBeGreaterThan(20);
  });

  it('with a narrow pipe says which tank would spill', () => {
    expect(told(changed((stage) => (stage.id === 'settler' ? { ...stage, pipe_mm: 20 } : stage)))).toContain('settler design.overflow');
  });

  it('with a sump of fifty litres says that it cannot hold what runs down when the pump stops', () => {
    expect(told(changed((stage) => (stage.id === 'sump' ? { ...stage, volume_m3: 0.05 } : stage)))).toContain('sump design.sumpSmall');
  });

  it('with a pump too weak for the lift says so', () => {
    expect(
      told(changed((stage) => (stage.kind === 'returnPump' ? { ...stage, curve: { maxHead_m: 1, maxFlow_m3_h: 3 } } : stage))),
    ).toContain('pump design.pumpSmall');
  });
});
