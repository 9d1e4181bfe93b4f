// Goto E., Both A.J., Albright L.D., Langhans R.W., Leed A.R. 1996, Effect of dissolved oxygen concentration on lettuce growth in floating
// hydroponics, Acta Hort. 440:205–210: no difference in 24 d at 24 °C between 2.1, 4.2, 8.4 and 16.8 mg/L. Published.
// Their oxygen and nitrogen were bubbled through the solution, so that it moved; how fast is not in the abstract: 5 L/min/m² assumed.
// Yoshida S., Kitano M., Eguchi H. 1997: 0.32 mg/L (0.01 mM) cuts leaf and root in 7 d; 3.2 equals 6.4 mg/L. Published.
import { describe, expect, it } from 'vitest';
import { lettuceGrown } from './plantCases';

const grown = (O2_mg_L: number, days: number): ReturnType<typeof lettuceGrown> => lettuceGrown({ O2_mg_L, days, air_L_min: 15 });

describe('oxygen at the roots of lettuce', () => {
  const ample = grown(8.4, 24).leaf;

  it('lets lettuce grow', () => {
    expect(ample).toBeGreaterThan(50);
  });

  it.each([2.1, 4.2, 16.8])('makes no difference at %f mg/L in 24 days: within 5 % of growth at 8.4', (O2) => {
    expect(Math.abs(grown(O2, 24).leaf / ample - 1)).toBeLessThan(0.05);
  });

  it('cuts growth within a week at 0.32 mg/L, and not at 3.2', () => {
    expect(grown(0.32, 7).leaf).toBeLessThan(0.75 * grown(6.4, 7).leaf);
    expect(Math.abs(grown(3.2, 7).leaf / grown(6.4, 7).leaf - 1)).toBeLessThan(0.02);
  });

  it('browns roots below 1 mg/L', () => {
    expect(grown(0.32, 24).root).toBeLessThan(0.5);
    expect(grown(4.2, 24).root).toBeGreaterThan(0.95);
  });
});
