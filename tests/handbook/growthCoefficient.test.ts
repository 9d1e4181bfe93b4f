// Thermal growth coefficient, 100 (W2^⅓ − W1^⅓)/(°C·d) (Iwama & Tautz 1981). A feed maker's page: 10 g to 350 g at 11 °C in 200 d is 0.222;
// trout farms 0.13–0.20: published. Nile tilapia 79 to 814 g in 24 weeks at 28 °C, 0.107 (Rakocy et al. 2004; start mass from memory):
// derived.
import { describe, expect, it } from 'vitest';
import { apart } from './answers';
import { growthCoefficient, grownTo } from './fishCases';

describe('growth over months, fed to satiation in good water', () => {
  it('is 0.222 in the worked example', () => {
    expect(Math.abs(growthCoefficient(10, 350, 200 * 11) - 0.222)).toBeLessThan(0.0005);
  });

  it.each([11, 14])('of trout at %i °C is what farms see, 0.13–0.20', (T_C) => {
    const coefficient = growthCoefficient(10, grownTo({ species: 'rainbowTrout', from_g: 10, T_C, days: 200 }), 200 * T_C);
    expect(coefficient).toBeGreaterThan(0.13);
    expect(coefficient).toBeLessThan(0.2);
  });

  it('of Nile tilapia is 0.107, within 15 %', () => {
    const coefficient = growthCoefficient(79, grownTo({ species: 'tilapia', from_g: 79, T_C: 28, days: 168 }), 168 * 28);
    expect(apart(growthCoefficient(79, 813.8, 168 * 28), 0.107)).toBeLessThan(0.005);
    expect(apart(coefficient, 0.107)).toBeLessThan(0.15);
  });
});
