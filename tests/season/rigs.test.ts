// Bench experiments: stages run once through under pinned conditions, as a publication would.
import { describe, expect, it } from 'vitest';
import { runSeason } from '../../src/season/season';
import { course } from './courses';
import { keptPlan } from './plans';

describe('a media tank fed with ammonia and held at 27.2 °C, pH 7.5 and 8 mg/L oxygen', () => {
  const plan = keptPlan('nitrification-rig');
  const t = runSeason({ ...plan, days: 60 });

  it('holds what is pinned', () => {
    for (const value of course(t, 'media', 'pH')) expect(value).toBeCloseTo(7.5, 5);
    for (const value of course(t, 'media', 'O2_mg_L')) expect(value).toBeCloseTo(8, 4);
    for (const value of course(t, 'media', 'T_C')) expect(value).toBeCloseTo(27.2, 4);
  });

  it('comes to rest', () => {
    const tan = course(t, 'media', 'TAN_mgN_L');
    expect(Math.abs((tan.at(-1) ?? 0) / tan[tan.length - 48] - 1)).toBeLessThan(0.005);
  });

  it('gives out less ammonia than it takes in, and as much more nitrate', () => {
    const tan = course(t, 'media', 'TAN_mgN_L').at(-1) ?? NaN;
    const oxidised = (course(t, 'media', 'NO2_mgN_L').at(-1) ?? NaN) + (course(t, 'media', 'NO3_mgN_L').at(-1) ?? NaN);
    expect(tan).toBeLessThan(0.8 * 2);
    expect(oxidised / (2 - tan)).toBeGreaterThan(0.9);
    expect(oxidised / (2 - tan)).toBeLessThan(1.1);
  });

  it('closes its books', () => {
    for (const { element, closure } of t.summary.ledger) expect(Math.abs(closure), element).toBeLessThan(1e-9);
  });
});

describe('a radial-flow settler fed with fresh fish solids', () => {
  const t = runSeason(keptPlan('settler-rig'));

  it('keeps nearly all the coarse and lets most of the finest past', () => {
    const coarse = course(t, 'settler', 'solidsCoarse_mg_L').at(-1) ?? NaN;
    const fine = course(t, 'settler', 'solidsFine_mg_L').at(-1) ?? NaN;
    expect(coarse / 20).toBeLessThan(0.1);
    expect(fine / 9).toBeGreaterThan(0.3);
  });

  it('closes its books', () => {
    for (const { element, closure } of t.summary.ledger) expect(Math.abs(closure), element).toBeLessThan(1e-9);
  });
});
