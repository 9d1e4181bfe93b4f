// Both ends of what roots bear. One end is published: the commercial raft system of the University of the Virgin Islands keeps clean roots
// behind its clarifiers and netting, with air under its rafts, and bears 25 kg of basil a square metre and year (Rakocy et al. 2004). The
// other is common practice (no source): a bed that gets a tank's unfiltered solids, or stands without air in warm water, does not.
import { describe, expect, it } from 'vitest';
import { runSeason } from '../../src/season/season';
import type { Plan } from '../../src/season/plan';
import { keptPlan } from '../season/plans';
import { liveRafts } from './raftSystem';

const DAYS = 120;
const without =
  (...kinds: string[]) =>
  (plan: Plan): Plan => {
    const gone = new Set(plan.loop.filter(({ kind }) => kinds.includes(kind)).map(({ id }) => id));
    return {
      ...plan,
      loop: plan.loop.filter(({ id }) => !gone.has(id)),
      actions: plan.actions.filter((action) => !('stage' in action && action.stage !== undefined && gone.has(action.stage))),
    };
  };
const airless = (plan: Plan): Plan => ({
  ...plan,
  loop: plan.loop.map((stage) => (stage.id === 'rafts' ? { ...stage, air_L_min: 0 } : stage)),
});

describe('the commercial raft system', () => {
  const [asBuilt, noNetting, noAir, neither] = [
    (plan: Plan) => plan,
    without('fineFilter'),
    airless,
    without('fineFilter', 'conicalClarifier'),
  ].map((change) => liveRafts(0.9, DAYS, change));

  it('keeps clean roots behind its netting, and bears its published basil within a fifth', () => {
    expect(asBuilt.mean('rafts', 'rootMat_g_m2')).toBeLessThan(8);
    expect(asBuilt.mean('rafts', 'rootHealth')).toBeGreaterThan(0.95);
    expect(asBuilt.mean('rafts', 'rootRot')).toBeLessThan(0.2);
    expect(Math.abs(asBuilt.crop_kg_m2_yr / 25 - 1)).toBeLessThan(0.2);
  });

  it('loses a sixth of it or more without the netting, half without settlers too', () => {
    expect(noNetting.mean('rafts', 'rootMat_g_m2')).toBeGreaterThan(2 * asBuilt.mean('rafts', 'rootMat_g_m2'));
    expect(noNetting.crop_kg_m2_yr).toBeLessThan(0.84 * asBuilt.crop_kg_m2_yr);
    expect(neither.crop_kg_m2_yr).toBeLessThan(0.5 * asBuilt.crop_kg_m2_yr);
  });

  it('loses a third or more without air under its rafts', () => {
    expect(noAir.mean('rafts', 'rootO2_mg_L')).toBeLessThan(0.5 * asBuilt.mean('rafts', 'rootO2_mg_L'));
    expect(noAir.crop_kg_m2_yr).toBeLessThan(0.67 * asBuilt.crop_kg_m2_yr);
  });
});

// 100 g of feed a day and square metre, 27 °C, no air in the bed.
describe('a small bed of basil in warm, still water', () => {
  const plan = keptPlan('order-basil-4m2');
  const ordered = (...ids: string[]): Plan => ({
    ...plan,
    loop: ['fish', ...ids, 'sump', 'pump'].flatMap((id) => plan.loop.filter((stage) => stage.id === id)),
  });
  const harvest = (one: Plan, parameters: Record<string, number> = {}): number => runSeason(one, { parameters }).summary.scores.harvest;
  const behind = ordered('settler', 'mats', 'degas', 'rafts');
  const ahead = ordered('rafts', 'settler', 'mats', 'degas');
  const cost = (parameters: Record<string, number> = {}): number => harvest(behind, parameters) - harvest(ahead, parameters);
  const usual = cost();

  it('bears well behind the solids stages, and costs twenty points or more ahead of them', () => {
    expect(harvest(behind)).toBeGreaterThan(75);
    expect(usual).toBeGreaterThan(20);
  });

  it.each([
    ['roots that do not breathe', { 'kinetics.rootRespiration': 0 }, 0.75],
    ['roots that catch nothing', { 'kinetics.rootCoarse': 0, 'kinetics.rootFine': 0, 'kinetics.rootSuperfine': 0 }, 0.6],
    ['no rot', { 'kinetics.rotGrowth': 0, 'kinetics.rotSeed': 0 }, 0.95],
    ['water that moves at the roots', { 'kinetics.rootStill': 1 }, 0.75],
  ] as const)('costs less with %s: the cause that is taught is the cause', (_, parameters, most) => {
    expect(cost(parameters)).toBeLessThan(most * usual);
  });

  it('costs less with air in the bed, and in cool water', () => {
    const aired = (one: Plan): Plan => ({
      ...one,
      loop: one.loop.map((stage) => (stage.id === 'rafts' ? { ...stage, air_L_min: 20 } : stage)),
    });
    expect(harvest(aired(behind)) - harvest(aired(ahead))).toBeLessThan(0.8 * usual);
    const cool = (one: Plan): Plan => ({ ...one, climate: { ...one.climate, water_C: 23 } });
    expect(harvest(cool(behind)) - harvest(cool(ahead))).toBeLessThan(0.8 * usual);
  });
});
