// Anderson T.S. et al. 2017, Horticulturae 3:41: hydroponic lettuce at pH 7.0 against 5.8 weighs 26 % less fresh and 18 % less dry.
// Published.
import { describe, expect, it } from 'vitest';
import { lettuceGrown } from './plantCases';

describe('lettuce at pH 7.0', () => {
  const loss = (pH: number, days: number): number =>
    1 - lettuceGrown({ pH, days, T_C: 22 }).leaf / lettuceGrown({ pH: 5.8, days, T_C: 22 }).leaf;

  it('weighs less than at 5.8: by 18 % dry, within 12 points', () => {
    // The model: 16 % after 24 days, 14 % after 35.
    expect(Math.abs(loss(7, 35) - 0.18)).toBeLessThan(0.12);
    expect(Math.abs(loss(7, 24) - 0.18)).toBeLessThan(0.12);
  });

  it('loses more than at 6.5', () => {
    expect(loss(7, 24)).toBeGreaterThan(loss(6.5, 24) + 0.05);
  });
});
