// The loop's warmth: how it lags the air, cools by evaporation, and what light, heater and pump do.
import { describe, expect, it } from 'vitest';
import { lag_d, temperatureAfter, warmthAfter } from '../../../src/model/heat/loopHeat';
import { evaporation_kg_m2_d, shortwave_W_m2 } from '../../../src/model/heat/losses';
import { heaterPower, poolAfter } from '../../../src/model/heat/thermostat';
import { RECORDED } from '../../../src/catalogue/values';

const { heat } = RECORDED;

/** A loop as the picture shows it: fish tank, settler, filter, degassing, 3 m² bed, sump; rafts and lids cover the rest. */
const loop = { volume_m3: 2.74, open_m2: 2.2, wall_m2: 15 };
const dryAirless = { ...heat, evaporativeLoss: 0 };
const calm = { capacity_J_K: 1e7, gain_W: 2000, loss_W_K: 100 };

describe('the lag behind the air', () => {
  it('of a few bare cubic metres is one to two days', () => {
    for (const volume_m3 of [2.74, 4]) {
      expect(lag_d(24, { ...loop, volume_m3 }, heat)).toBeGreaterThan(1);
      expect(lag_d(24, { ...loop, volume_m3 }, heat)).toBeLessThan(2);
    }
  });

  it('is longer for more water behind the same walls, and for less open water', () => {
    expect(lag_d(24, { ...loop, volume_m3: 6 }, heat)).toBeGreaterThan(2 * lag_d(24, loop, heat));
    expect(lag_d(24, { ...loop, open_m2: 1 }, heat)).toBeGreaterThan(1.1 * lag_d(24, loop, heat));
  });

  it('after one lag 63 % of the difference is gone, where nothing evaporates', () => {
    const hours = 24 * lag_d(20, loop, dryAirless);
    expect(temperatureAfter(30, 20, hours, loop, dryAirless)).toBeCloseTo(20 + 10 * Math.exp(-1), 1);
  });

  it('damps a night of 8 °C cold to less than 3 °C', () => {
    expect(temperatureAfter(24, 16, 10, loop, heat)).toBeGreaterThan(21);
    expect(temperatureAfter(24, 16, 10, loop, heat)).toBeLessThan(23);
  });
});

describe('any length of step', () => {
  it('ends where many short ones end', () => {
    let short = 12;
    for (let i = 0; i < 480; i++) short = temperatureAfter(short, 26, 0.1, loop, heat);
    expect(temperatureAfter(12, 26, 48, loop, heat)).toBeCloseTo(short, 1);
  });

  it('settles instead of running away, also in a bucket over a year', () => {
    const bucket = { volume_m3: 0.01, open_m2: 0.1, wall_m2: 0.3 };
    expect(temperatureAfter(40, 5, 8760, bucket, heat)).toBeLessThan(5);
    expect(temperatureAfter(40, 5, 8760, bucket, heat)).toBeGreaterThan(2);
  });

  it('of no length changes nothing', () => {
    expect(warmthAfter(21, 10, 0, loop, heat)).toEqual({ T_C: 21, heater_Wh: 0, evaporated_kg: 0 });
  });
});

describe('evaporation', () => {
  it('takes 1 to 6 litres a day from a square metre under glass', () => {
    expect(evaporation_kg_m2_d(25, 25, heat)).toBeGreaterThan(1);
    expect(evaporation_kg_m2_d(25, 25, heat)).toBeLessThan(6);
  });

  it('cools water left alone below the air, by half a degree to two', () => {
    const left = temperatureAfter(25, 25, 2000, loop, heat);
    expect(left).toBeLessThan(24.5);
    expect(left).toBeGreaterThan(23);
  });

  it('is less in damp air, and turns to dew on cold water', () => {
    expect(evaporation_kg_m2_d(25, 25, { ...heat, humidity: 0.95 })).toBeLessThan(0.5 * evaporation_kg_m2_d(25, 25, heat));
    expect(evaporation_kg_m2_d(10, 30, heat)).toBeLessThan(0);
  });

  it('of a day is what the loop loses, within 3 % where its warmth hardly changes', () => {
    const { evaporated_kg } = warmthAfter(24.1, 25, 24, loop, heat);
    expect(Math.abs(evaporated_kg / (2.2 * evaporation_kg_m2_d(24.1, 25, heat)) - 1)).toBeLessThan(0.03);
  });
});

describe('light and pump', () => {
  it('17 mol of light a day are about 90 W/m² over the day', () => {
    expect(shortwave_W_m2(17, heat)).toBeGreaterThan(80);
    expect(shortwave_W_m2(17, heat)).toBeLessThan(105);
  });

  it('warm the loop a little', () => {
    const gained =
      temperatureAfter(24, 24, 48, { ...loop, shortwave_W_m2: shortwave_W_m2(17, heat) }, heat) - temperatureAfter(24, 24, 48, loop, heat);
    expect(gained).toBeGreaterThan(0.1);
    expect(gained).toBeLessThan(1);
    const pumped = temperatureAfter(24, 24, 48, { ...loop, pump_W: 12 }, heat) - temperatureAfter(24, 24, 48, loop, heat);
    expect(pumped).toBeGreaterThan(0.02);
    expect(pumped).toBeLessThan(0.2);
  });
});

describe('the heater', () => {
  it('gives all its power to cold water, half at its target, none to warm water', () => {
    expect(heaterPower(20, 26, 800, heat.heaterBand)).toBe(800);
    expect(heaterPower(26, 26, 800, heat.heaterBand)).toBe(400);
    expect(heaterPower(27, 26, 800, heat.heaterBand)).toBe(0);
  });

  it('strong enough, holds the loop within half a degree of its target through a cold week', () => {
    expect(Math.abs(temperatureAfter(20, 10, 168, { ...loop, heaters: [{ target_C: 26, max_W: 4000 }] }, heat) - 26)).toBeLessThan(0.5);
  });

  it('too weak, falls short of its target but helps', () => {
    const weak = temperatureAfter(26, 10, 168, { ...loop, heaters: [{ target_C: 26, max_W: 500 }] }, heat);
    expect(weak).toBeLessThan(20);
    expect(weak).toBeGreaterThan(temperatureAfter(26, 10, 168, loop, heat) + 3);
  });

  it('never cools, and uses nothing where the water is warm', () => {
    const heater = { target_C: 20, max_W: 2000 };
    expect(temperatureAfter(28, 28, 24, { ...loop, heaters: [heater] }, heat)).toBe(temperatureAfter(28, 28, 24, loop, heat));
    expect(warmthAfter(28, 28, 24, { ...loop, heaters: [heater] }, heat).heater_Wh).toBeLessThan(1e-6);
  });

  it('running at full power for a day uses a day of it', () => {
    expect(warmthAfter(12, 10, 24, { ...loop, heaters: [{ target_C: 30, max_W: 500 }] }, heat).heater_Wh).toBeCloseTo(12000, 3);
  });
});

describe('a pool with a thermostat', () => {
  const heater = { target_C: 26, max_W: 3000 };

  it('is left at the same warmth by one long stretch as by many short ones, across both edges of the band', () => {
    for (const start of [15, 40]) {
      let T = start;
      for (let i = 0; i < 1000; i++) T = poolAfter(T, 300, calm, [heater], heat.heaterBand).T_C;
      expect(poolAfter(start, 300000, calm, [heater], heat.heaterBand).T_C).toBeCloseTo(T, 9);
    }
  });

  it('of two heaters lets the one with the higher target go on alone', () => {
    const second = { target_C: 22, max_W: 2000 };
    const both = [second, heater];
    let T = 15;
    for (let i = 0; i < 1000; i++) T = poolAfter(T, 300, calm, both, heat.heaterBand).T_C;
    expect(poolAfter(15, 300000, calm, both, heat.heaterBand).T_C).toBeCloseTo(T, 9);
    expect(T).toBeCloseTo(poolAfter(15, 300000, calm, [heater], heat.heaterBand).T_C, 9);
    expect(poolAfter(15, 3000, calm, both, heat.heaterBand).T_C).toBeGreaterThan(poolAfter(15, 3000, calm, [heater], heat.heaterBand).T_C);
  });

  it('comes to rest where loss and heater balance', () => {
    const { T_C } = poolAfter(15, 1e9, calm, [heater], heat.heaterBand);
    expect(heaterPower(T_C, heater.target_C, heater.max_W, heat.heaterBand)).toBeCloseTo(calm.loss_W_K * T_C - calm.gain_W, 6);
  });

  it('keeps its books: heat gained is what came in less what was lost', () => {
    const { T_C, mean_C } = poolAfter(40, 50000, calm, [], heat.heaterBand);
    expect(calm.capacity_J_K * (T_C - 40)).toBeCloseTo((calm.gain_W - calm.loss_W_K * mean_C) * 50000, 3);
  });

  it('starting on an edge of the band moves as just beside it', () => {
    for (const edge of [25.5, 26.5])
      expect(poolAfter(edge, 20000, calm, [heater], heat.heaterBand).T_C).toBeCloseTo(
        poolAfter(edge + 1e-9, 20000, calm, [heater], heat.heaterBand).T_C,
        6,
      );
  });
});
