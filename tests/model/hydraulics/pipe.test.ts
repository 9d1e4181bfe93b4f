// Pipes and lips: what a flow costs in head.
import { describe, expect, it } from 'vitest';
import {
  density_kg_m3,
  frictionFactor,
  headLoss_m,
  headOverLip_m,
  pipeVolume_m3,
  reynolds,
  usualLink,
  viscosity_Pa_s,
} from '../../../src/model/hydraulics/pipe';
import { RECORDED } from '../../../src/catalogue/values';

const { hydraulics: h } = RECORDED;

/**
 * °C, g/cm³, cP: International Critical Tables 1928–1929, as reprinted in the Encyclopedia of Environmental Science and Engineering,
 * appendix table 2.
 */
const TABLE: [number, number, number][] = [
  [5, 0.99999, 1.5188],
  [10, 0.99973, 1.3097],
  [15, 0.99913, 1.1447],
  [20, 0.99823, 1.0087],
  [25, 0.99707, 0.8949],
  [30, 0.99568, 0.8004],
  [35, 0.99406, 0.7208],
];
const pipe = { length_m: 5, diameter_m: 0.025, fittings: 0 };

describe('water itself', () => {
  it.each(TABLE)('at %f °C is as dense as the table says within 0.01 %% and as viscous within 1.5 %%', (T_C, density, viscosity) => {
    expect(Math.abs(density_kg_m3(T_C) / (1000 * density) - 1)).toBeLessThan(1e-4);
    expect(Math.abs(viscosity_Pa_s(T_C) / (0.001 * viscosity) - 1)).toBeLessThan(0.015);
  });
});

describe('friction', () => {
  it('is 64/Re in slow flow, whatever the pipe', () => {
    expect(frictionFactor(1000, 0, h)).toBeCloseTo(0.064, 12);
    expect(frictionFactor(1000, 0.01, h)).toBe(frictionFactor(1000, 0, h));
  });

  it('near Re 100 000 in a smooth pipe is within 2 % of 0.0180, the value of the Moody chart', () => {
    expect(Math.abs(frictionFactor(1e5, 0, h) / 0.018 - 1)).toBeLessThan(0.02);
  });

  it('has no step where laminar flow ends or turbulent flow begins', () => {
    for (const Re of [2000, 4000])
      expect(Math.abs(frictionFactor(Re * (1 + 1e-9), 1e-4, h) / frictionFactor(Re * (1 - 1e-9), 1e-4, h) - 1)).toBeLessThan(1e-6);
  });

  it('is greater in a rough pipe', () => {
    expect(frictionFactor(1e5, 0.01, h)).toBeGreaterThan(1.5 * frictionFactor(1e5, 0, h));
  });
});

describe('head lost in a pipe', () => {
  it('is nothing without flow, and with flow the wrong way', () => {
    expect(headLoss_m(0, pipe, 20, h)).toBe(0);
    expect(headLoss_m(-3, pipe, 20, h)).toBe(0);
  });

  it('rises with every bit more flow, through laminar, mixed and turbulent flow', () => {
    let before = 0;
    let least = Infinity;
    let most = 0;
    for (let flow = 0.1; flow < 60; flow *= 1.01) {
      const loss = headLoss_m(flow, { ...pipe, fittings: 2 }, 20, h);
      expect(loss).toBeGreaterThan(before);
      before = loss;
      least = Math.min(least, reynolds(flow, pipe.diameter_m, 20));
      most = Math.max(most, reynolds(flow, pipe.diameter_m, 20));
    }
    expect(least).toBeLessThan(500);
    expect(most).toBeGreaterThan(30000);
  });

  it('falls to less than a twentieth when the pipe is made twice as wide', () => {
    expect(headLoss_m(48, { ...pipe, diameter_m: 0.05 }, 20, h)).toBeLessThan(headLoss_m(48, pipe, 20, h) / 20);
  });

  it('doubles with length where there are no fittings', () => {
    expect(headLoss_m(48, { ...pipe, length_m: 10 }, 20, h) / headLoss_m(48, pipe, 20, h)).toBeCloseTo(2, 10);
  });

  it('of a fitting of one velocity head at 1 m/s is 5.1 cm', () => {
    const flow = (Math.PI / 4) * 0.025 * 0.025 * 86400;
    expect(headLoss_m(flow, { ...pipe, fittings: 1 }, 20, h) - headLoss_m(flow, pipe, 20, h)).toBeCloseTo(0.05099, 4);
  });

  it('is greater in cold water, which is thicker', () => {
    expect(headLoss_m(48, pipe, 8, h)).toBeGreaterThan(1.03 * headLoss_m(48, pipe, 30, h));
  });
});

describe('the rest of a link', () => {
  it('a cubic metre an hour stands about 7 mm over the rim of a 75 mm standpipe, and more over a narrower one', () => {
    expect(headOverLip_m(24, Math.PI * 0.075, h)).toBeGreaterThan(0.006);
    expect(headOverLip_m(24, Math.PI * 0.075, h)).toBeLessThan(0.009);
    expect(headOverLip_m(24, Math.PI * 0.04, h)).toBeGreaterThan(headOverLip_m(24, Math.PI * 0.075, h));
    expect(headOverLip_m(0, 0.2, h)).toBe(0);
  });

  it('ten metres of 32 mm pipe hold 8 litres', () => {
    expect(pipeVolume_m3({ length_m: 10, diameter_m: 0.032, fittings: 0 })).toBeCloseTo(0.00804, 5);
  });

  it('the usual link carries a cubic metre an hour within a centimetre of fall, and ten times as much does not fit into 5 cm', () => {
    expect(headLoss_m(24, usualLink(h), 20, h)).toBeLessThan(0.01);
    expect(headLoss_m(10 * 24, usualLink(h), 20, h)).toBeGreaterThan(0.05);
  });
});
