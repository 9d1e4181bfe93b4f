// The commercial raft system of the University of the Virgin Islands, 2002–2006. Rakocy et al., EcoSymposium paper and slides (volumes,
// flow, retention, removal by the rafts); Rakocy et al. 2004, ISTA-6: last 20 harvests of Nile tilapia 61.5 kg/m³ of 813.8 g, 98.3 % alive,
// FCR 1.7, 4.16 t/yr: published. Mean water TAN 2.2, NO2-N 0.7, NO3-N 42 mg/L, DO 6–7, solids under 10 mg/L in the rafts: reviews, from
// memory, little trusted.
import { describe, expect, it } from 'vitest';
import { designOf } from '../../src/season/design';
import { keptPlan } from '../season/plans';
import { apart } from './answers';
import { RECORDED } from '../../src/catalogue/values';
import { liveRafts, PUBLISHED_FEED } from './raftSystem';

describe('its water', () => {
  const design = designOf(keptPlan('commercial-raft'), RECORDED);
  const minutes = (id: string): number => design.stages.find((stage) => stage.id === id)?.retention_min ?? NaN;

  it.each([
    ['fish', 1.37 * 60],
    ['clarifiers', 20],
    ['rafts', 2.98 * 60],
  ])('stays in the %s for %f minutes, within 2 %%', (id, published) => {
    expect(apart(minutes(id), published)).toBeLessThan(0.02);
  });

  it('is 110.9 m³ in all, within 2 %, and runs downhill to its sump', () => {
    expect(apart(design.totalVolume_m3, 110.9)).toBeLessThan(0.02);
    expect(design.problems).toEqual([]);
  });
});

// 17.4 kg a day: the feed of the published basil trial (81.4 g/m²/d, Acta Hort.), and what an FCR of 1.7 makes of the gain without the
// fingerlings stocked; with them it would be 19.4. Air is not published in L/min: with 500 to a tank in place of 700 a sixth of the fish
// die after meals. The model's roots (what they catch and drop, and how much of it hurts them) are calibrated on this system, so that it
// can stand at all.
describe('four staggered tanks of Nile tilapia over 24 weeks, at 17.4 kg of feed a day', () => {
  const lived = liveRafts(0.9, 170);

  it('yield 61.5 kg/m³ of 814 g, within 15 %', () => {
    expect(apart(lived.kg_m3, 61.5)).toBeLessThan(0.15);
    expect(apart(lived.mass_g, 813.8)).toBeLessThan(0.15);
  });

  it('live on, 98.3 % of them, within 3 points', () => {
    expect(Math.abs(lived.survival - 0.983)).toBeLessThan(0.03);
  });

  it('take 1.7 kg of feed for a kilogram, within 15 %', () => {
    expect(apart(lived.FCR, 1.7)).toBeLessThan(0.15);
  });

  it('find oxygen near the 6–7 mg/L, and the pH near 7', () => {
    expect(lived.mean('fish', 'O2_mg_L')).toBeGreaterThan(5);
    expect(Math.abs(lived.mean('fish', 'pH') - 7.1)).toBeLessThan(0.3);
  });

  it('find ammonia near 2.2 and nitrite near 0.7 mg/L, within a factor of two', () => {
    expect(Math.abs(Math.log2(lived.mean('fish', 'TAN_mgN_L') / 2.2))).toBeLessThan(1);
    expect(Math.abs(Math.log2(lived.mean('fish', 'NO2_mgN_L') / 0.7))).toBeLessThan(1);
  });

  it('find nitrate near 42 mg/L, within a factor of two', () => {
    // The model 80: what burns deep in the clumps of the mats and on the roots is calibrated on it. Mats cleaned every third day would
    // leave 93, and a roof over the system, without rain, 108.
    expect(Math.abs(Math.log2(lived.mean('fish', 'NO3_mgN_L') / 42))).toBeLessThan(1);
  });

  it('find all that dissolves two to three times as concentrated, calcium six times', () => {
    // Reviews, from memory: phosphorus 8.2, potassium 45, magnesium 6.5, calcium 12 mg/L; the model 18, 112, 14, 71. Magnesium, which no
    // gas takes and plants hardly, tells that the water of that system was renewed about twice as fast as the 1.5 % a day and the rain do;
    // or its feed held less.
    for (const [variable, said, most] of [
      ['PO4_mgP_L', 8.2, 3],
      ['K_mg_L', 45, 3],
      ['Mg_mg_L', 6.5, 3],
      ['Ca_mg_L', 12, 7],
    ] as const) {
      expect(lived.mean('fish', variable) / said, variable).toBeGreaterThan(1);
      expect(lived.mean('fish', variable) / said, variable).toBeLessThan(most);
    }
  });

  it('lose a third of the nitrogen fed as gas, though no stage is there for it', () => {
    // No figure is published for this system. To hold nitrate at 42 mg/L near half would have to go: what leaves with water and crop is
    // known.
    expect(lived.denitrified).toBeGreaterThan(0.28);
    expect(lived.denitrified).toBeLessThan(0.4);
  });

  it('keep the water of the rafts under 10 mg/L of solids', () => {
    expect(lived.mean('rafts', 'solidsFine_mg_L') + lived.mean('rafts', 'solidsCoarse_mg_L')).toBeLessThan(10);
  });

  it('have more ammonia and nitrogen taken by the rafts than the 0.56 and 0.83 g/m²/d of a lighter trial', () => {
    // Measured with romaine at a load not stated; the model 1.2 and 1.6 g/m²/d.
    expect(lived.removed.ammonia).toBeGreaterThan(0.56);
    expect(lived.removed.nitrogen).toBeGreaterThan(0.83);
    expect(lived.removed.nitrogen).toBeLessThan(3 * 0.83);
  });

  it('have some of their phosphorus taken by the rafts', () => {
    // Published 0.17 g/m²/d, with romaine; the model 0.096.
    expect(lived.removed.phosphorus).toBeGreaterThan(0.06);
  });

  it('draw 1.5 % of the water new each day, within a fifth', () => {
    expect(apart(lived.drawn, 0.015)).toBeLessThan(0.2);
  });

  it('bear two thirds of the basil that is said', () => {
    // Published 25 kg/m² a year; the model near 18: solids on the roots cost it, and nothing is short in the leaves.
    expect(lived.crop_kg_m2_yr).toBeGreaterThan(0.6 * 25);
    expect(lived.crop_kg_m2_yr).toBeLessThan(1.15 * 25);
    expect(Math.min(...lived.stores)).toBeGreaterThan(0.8);
  });
});

describe('the same at 19.4 kg a day', () => {
  it('holds its ammonia within a factor of two of 2.2 mg/L', () => {
    const lived = liveRafts(1, 63);
    expect(apart(lived.feed, PUBLISHED_FEED)).toBeLessThan(0.05);
    expect(Math.abs(Math.log2(lived.mean('fish', 'TAN_mgN_L') / 2.2))).toBeLessThan(1);
  });
});
