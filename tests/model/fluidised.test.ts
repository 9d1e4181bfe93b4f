// A lifted bed weighs the same at any speed, and stands the higher the faster water comes.
import { describe, expect, it } from 'vitest';
import { expansion, headOfBed, liftsFrom } from '../../src/model/solids/fluidised';

const M_D_PER_CM_S = 864;
/** quartz sand of 0.3 mm at 20 °C */
const sand = { terminal_m_d: 4 * M_D_PER_CM_S, exponent: 3.5, restVoids: 0.45, density: 2.65 };

describe('a bed of sand that water flows up through', () => {
  it('rests below the speed that lifts it, and expands by more with every more of it', () => {
    const lift = liftsFrom(sand);
    expect(expansion(sand, 0.9 * lift)).toBe(0);
    const steps = [1.1, 1.5, 2, 3, 4].map((times) => expansion(sand, times * lift));
    for (let i = 1; i < steps.length; i += 1) expect(steps[i]).toBeGreaterThan(steps[i - 1]);
  });

  it('expands by a fifth to its own height at the speeds that such filters run at', () => {
    expect(expansion(sand, 0.5 * M_D_PER_CM_S)).toBeGreaterThan(0.15);
    expect(expansion(sand, 1.2 * M_D_PER_CM_S)).toBeLessThan(1);
  });

  it('costs nine tenths of a metre of head for each metre at rest once it is lifted, and no more for more flow', () => {
    const lift = liftsFrom(sand);
    expect(headOfBed(sand, 1, lift)).toBeCloseTo(0.9075, 6);
    expect(headOfBed(sand, 1, 3 * lift)).toBe(headOfBed(sand, 1, lift));
    expect(headOfBed(sand, 1, lift / 2)).toBeCloseTo(headOfBed(sand, 1, lift) / 2, 12);
  });
});
