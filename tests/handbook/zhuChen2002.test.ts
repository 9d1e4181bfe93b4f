// Zhu S., Chen S. 2002, The impact of temperature on nitrification rate in fixed film biofilters, Aquacult. Eng. 26:221–237 (abstract
// seen): +4.275 % for each °C at 20 °C where ammonia limits, +1.108 % where oxygen does. Published; the paper used 14–27 °C.
import { describe, expect, it } from 'vitest';
import { oxygenSaturation_mg_L } from '../../src/model/equilibrium/oxygen';
import { perDegree } from './filmCases';

describe('warmth and a mature nitrifying film', () => {
  it('adds 3.2–5.3 % for each °C where ammonia is scarce (2 mg/L) and oxygen ample', () => {
    // the model: 3.6 % at 2 mg/L, 3.1 % at 0.5
    const rise = perDegree(2.5, () => 8);
    expect(rise).toBeGreaterThan(0.032);
    expect(rise).toBeLessThan(0.053);
  });

  it('adds something where oxygen is scarce too', () => {
    // Published +1.1 %/°C; the model gives +3.9 %/°C at 2 mg/L: its film has one temperature factor, whatever limits it.
    expect(perDegree(10.6, () => 2)).toBeGreaterThan(0);
  });

  it('adds less in water that holds what the air gives than at a pinned oxygen', () => {
    // Warm water holds less oxygen: the model goes from +3.9 to +3.7 %/°C.
    expect(perDegree(10.6, oxygenSaturation_mg_L)).toBeLessThan(perDegree(10.6, () => 8));
  });
});
