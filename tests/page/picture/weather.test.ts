// Weather in the picture: what the sky of each day looks like, worked out once and looked up in each frame.
import { describe, expect, it } from 'vitest';
import type { House } from '../../../src/page/picture/scene/backdrop';
import { drifted } from '../../../src/page/picture/weather/clouds';
import { coverOf, daylight, rainOf } from '../../../src/page/picture/weather/daylight';
import { CLOSED_SKY, LightOfDay, MOMENTS, MOMENTS_PER_h, NOON, OPAQUE, OPAQUE_WASH } from '../../../src/page/picture/weather/lightOfDay';
import { roofAt } from '../../../src/page/picture/weather/rain';

describe('the light of a day', () => {
  it.each([0, 9, CLOSED_SKY])('is at every moment that of its hour, under %i steps of clouds', (covered) => {
    const day = new LightOfDay(14, covered);
    for (let i = 0; i < MOMENTS; i += 1) {
      const { alpha, colour } = daylight({
        hour: i / MOMENTS_PER_h,
        dayLength_h: 14,
        cover: covered / CLOSED_SKY,
        sun: 0,
        colour: 0,
        alpha: 0,
      });
      expect(Math.abs(day.wash[i] / OPAQUE_WASH - alpha)).toBeLessThan(1 / OPAQUE_WASH);
      expect(day.colour[i]).toBe(colour);
    }
  });

  it('has the sun up at noon, the moon up at midnight, and neither hides the other', () => {
    const day = new LightOfDay(12, 0);
    const noon = 12 * MOMENTS_PER_h;
    expect([day.height[noon], day.sun[noon], day.moon[noon]]).toEqual([NOON, OPAQUE, 0]);
    expect([day.height[0], day.sun[0], day.moon[0]]).toEqual([0, 0, OPAQUE]);
    for (let i = 0; i < MOMENTS; i += 1) expect(Math.min(day.sun[i], day.moon[i])).toBe(0);
  });

  it('never has the sun up where a day has no light', () => {
    const day = new LightOfDay(0, 0);
    expect([Math.max(...day.sun), Math.max(...day.height)]).toEqual([0, 0]);
    expect(Math.min(...day.moon)).toBe(OPAQUE);
  });

  it('lets less of the sun be seen the more clouds there are', () => {
    const noon = 12 * MOMENTS_PER_h;
    const seen = [0, 6, 12, CLOSED_SKY].map((covered) => new LightOfDay(12, covered).sun[noon]);
    expect([...seen].sort((a, b) => b - a)).toEqual(seen);
    expect(seen.at(-1)).toBeGreaterThan(0);
    expect(new Set(seen).size).toBe(4);
  });
});

describe('rain', () => {
  it('falls only on days darker than usual, under a sky with clouds, and harder the darker they are', () => {
    expect([1.2, 1, 0.8].map(rainOf)).toEqual([0, 0, 0]);
    expect(rainOf(0.7)).toBeGreaterThan(0);
    expect(rainOf(0.5)).toBeGreaterThan(rainOf(0.7));
    expect(rainOf(0.1)).toBe(1);
    for (let light = 0; light < 1.3; light += 0.01) if (rainOf(light) > 0) expect(coverOf(light)).toBeGreaterThan(0.5);
  });

  it('ends on the roof: at the eaves on both sides, at the ridge in the middle', () => {
    const house: House = { left: 10, right: 1010, eave: -300, ridge: -400 };
    expect([10.001, 510, 1009.999].map((x) => Math.round(roofAt(house, x)))).toEqual([-300, -400, -300]);
    expect(roofAt(house, 260)).toBeCloseTo(-350, 6);
    expect([0, 1020].map((x) => roofAt(house, x))).toEqual([0, 0]);
  });
});

describe('clouds', () => {
  it('drift to the right and come round again, whole beyond either edge', () => {
    expect(drifted(100, 7, 1000)).toBe(107);
    expect(drifted(990, 20, 1000)).toBe(10);
    for (let steps = 0; steps < 5000; steps += 37) {
      expect(drifted(400, steps, 1000)).toBeGreaterThanOrEqual(0);
      expect(drifted(400, steps, 1000)).toBeLessThan(1000);
    }
  });
});
