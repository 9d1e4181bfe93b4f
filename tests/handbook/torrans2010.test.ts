// Torrans E.L. 2010 (USDA ARS abstract): channel catfish in ponds eat less where the night's lowest oxygen falls under 3.0 mg/L; at a
// lowest of 1.7 mg/L they eat 45 % less. Published. Here oxygen is steady, day and night; fed in a night's want the model's catfish would
// not remember it.
import { describe, expect, it } from 'vitest';
import { eatenAt } from './fishCases';

describe('oxygen and the appetite of channel catfish', () => {
  const eaten = (O2_mg_L: number): number => eatenAt('channelCatfish', O2_mg_L);
  const full = eaten(8);

  it('is to the full in good water', () => {
    expect(full).toBeGreaterThan(50);
  });

  it.each([3, 4])('is untouched at %i mg/L, within 3 in a hundred', (O2) => {
    expect(eaten(O2) / full).toBeGreaterThan(0.97);
  });

  it('falls all the way below 3 mg/L', () => {
    const falling = [3, 2.5, 2, 1.7, 1.2].map(eaten);
    expect([...falling].sort((a, b) => b - a)).toEqual(falling);
    expect(falling[1]).toBeLessThan(falling[0]);
  });

  it('is down by 45 % at 1.7 mg/L, within 5 points', () => {
    // The model: 48 %.
    expect(Math.abs(1 - eaten(1.7) / full - 0.45)).toBeLessThan(0.05);
  });
});
