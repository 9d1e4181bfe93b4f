// Hernandez E., Giacomelli G., Lewis M., An L. 2017, Evaluation of season, cultivar, and aeration on biomass production of greenhouse
// hydroponic lettuce, Acta Hort. 1170:619–626: 43 lettuces a square metre on rafts over 45 cm of water, 4–6 weeks, 150–250 g heads; air
// stones and circulation at 3–6 mg/L of oxygen give larger heads than still water at 1–2 mg/L, in every season. Published (abstract).
// Clear solution; air of 10 L/min/m² and water of 24 °C are assumptions.
import { describe, expect, it } from 'vitest';
import { lettuceGrown } from './plantCases';

const DAYS = 35;
const rafts = (O2_mg_L: number, air_L_min: number): { leaf: number; root: number } =>
  lettuceGrown({ O2_mg_L, days: DAYS, plants_m2: 43, T_C: 24, air_L_min });

describe('lettuce on rafts', () => {
  const aired = [3, 4.5, 6].map((O2) => rafts(O2, 30));
  const still = [1, 1.5, 2].map((O2) => rafts(O2, 0));

  it('makes heads of 150–250 g with air, as in the trial, within a third', () => {
    // 5 % dry matter
    for (const { leaf } of aired) {
      expect(leaf / 0.05 / 43).toBeGreaterThan(150 / 1.33);
      expect(leaf / 0.05 / 43).toBeLessThan(250 * 1.33);
    }
  });

  it('grows lighter in still water at 1–2 mg/L than with air at 3–6, whichever two are compared', () => {
    expect(Math.max(...still.map(({ leaf }) => leaf))).toBeLessThan(0.95 * Math.min(...aired.map(({ leaf }) => leaf)));
  });

  it('differs by the roots alone', () => {
    for (const { root } of aired) expect(root).toBeGreaterThan(0.9);
    for (const { root } of still) expect(root).toBeLessThan(0.8);
  });
});
