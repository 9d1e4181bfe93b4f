// Graber A., Junge R. 2009, Desalination 246:147: tomato fruit took 0.43 N, 0.07 P and 0.4 K g/m²/d from fish water over three months and
// more (0.52, 0.11, 0.8 hydroponic); 69 % of the nitrogen taken off ended in fruit. Published; light taken as 20 mol/m²/d, a summer under
// glass.
import { describe, expect, it } from 'vitest';
import { uptake } from './plantCases';

describe('tomato in bearing', () => {
  // At 17 mol/m²/d nitrogen falls just short of half: 0.30 against 0.62 g/m²/d.
  const taken = uptake({ kind: 'tomato', plants_m2: 4, days: 150, pH: 6.5, O2_mg_L: 7, T_C: 23, light_mol_m2_d: 20 }, 60);
  const IN_FRUIT = 0.69;

  it.each([
    ['N', taken.N, 0.43 / IN_FRUIT],
    ['P', taken.P, 0.07 / IN_FRUIT],
    ['K', taken.K, 0.4 / IN_FRUIT],
  ])('takes up %s as the whole plant did, %f against %f g/m²/d, within a factor of two', (_name, ours, published) => {
    expect(Math.abs(Math.log2(ours / published))).toBeLessThan(1);
  });

  it('takes up P and K beside N in proportions between those of fish water and of nutrient solution', () => {
    expect(taken.P / taken.N).toBeGreaterThan(0.07 / 0.43);
    expect(taken.P / taken.N).toBeLessThan(0.11 / 0.52);
    expect(taken.K / taken.N).toBeGreaterThan(0.4 / 0.43);
    expect(taken.K / taken.N).toBeLessThan(0.8 / 0.52);
  });
});
