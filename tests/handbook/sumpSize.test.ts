// The size of a sump, worked by geometry: water held above the outlets and in the pipes must fit into it, with what the pump needs besides.
// Example of the handbook, flag derived: a flood bed of 4 m², 0.25 m deep, 40 % voids; a tank of 1 m² that stands 3 cm over its lip; 10 L
// in pipes.
import { describe, expect, it } from 'vitest';
import { drainDown_m3, sumpLacks_m3 } from '../../src/model/hydraulics/drainDown';
import { leastWater_m3 } from '../../src/model/hydraulics/pump';
import { RECORDED } from '../../src/catalogue/values';

const { hydraulics: h } = RECORDED;

const bed = { area_m2: 4, above_m: 0.25, voids: 0.4 };
const tank = { area_m2: 1, above_m: 0.03, voids: 1 };
const PIPES = 0.01;

describe('the sump of the example', () => {
  it('must take 0.40 m³ of the bed, 0.03 of the tank and 0.01 of the pipes: 0.44 m³', () => {
    expect(drainDown_m3([bed], 0)).toBeCloseTo(0.4, 12);
    expect(drainDown_m3([tank], 0)).toBeCloseTo(0.03, 12);
    expect(drainDown_m3([bed, tank], PIPES)).toBeCloseTo(0.44, 12);
  });

  it('is too small at 0.44 m³ once the pump’s own need is counted, and large enough at 0.55 m³', () => {
    const falls = drainDown_m3([bed, tank], PIPES);
    expect(sumpLacks_m3(0.44, falls, leastWater_m3(0.44, h))).toBeCloseTo(leastWater_m3(0.44, h), 12);
    expect(sumpLacks_m3(0.55, falls, leastWater_m3(0.55, h))).toBe(0);
  });
});
