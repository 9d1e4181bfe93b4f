// The pump: less water the higher it lifts, nothing past its shut-off head, and the power that takes.
import { describe, expect, it } from 'vitest';
import { largestWhere } from '../../../src/model/hydraulics/edge';
import { headLoss_m } from '../../../src/model/hydraulics/pipe';
import {
  curveFor,
  drawsAir,
  electricalPower_W,
  hydraulicPower_W,
  leastWater_m3,
  operatingFlow_m3_d,
  pumpHead_m,
} from '../../../src/model/hydraulics/pump';
import { RECORDED } from '../../../src/catalogue/values';

const { hydraulics: h } = RECORDED;

const curve = { maxHead_m: 2.5, maxFlow_m3_h: 2 };
const riser = { length_m: 4, diameter_m: 0.032, fittings: 4 };
const loss = (flow: number): number => headLoss_m(flow, riser, 24, h);
const clogged = (flow: number): number => headLoss_m(flow, { ...riser, diameter_m: 0.02 }, 24, h);

describe('the pump', () => {
  it('gives less water the higher it lifts', () => {
    const flows = [0, 0.5, 1, 1.5, 2, 2.4].map((lift) => operatingFlow_m3_d(curve, lift, loss));
    flows.slice(1).forEach((flow, i) => {
      expect(flow).toBeLessThan(flows[i]);
    });
    expect(flows[5]).toBeGreaterThan(0);
  });

  it('gives none where the lift is its shut-off head or more', () => {
    expect(operatingFlow_m3_d(curve, 2.5, loss)).toBe(0);
    expect(operatingFlow_m3_d(curve, 9, loss)).toBe(0);
  });

  it('stands where its head meets lift and losses', () => {
    const flow = operatingFlow_m3_d(curve, 1.2, loss);
    expect(pumpHead_m(curve, flow)).toBeCloseTo(1.2 + loss(flow), 9);
  });

  it('never gives more than its full flow, even downhill', () => {
    expect(operatingFlow_m3_d(curve, -1, () => 0)).toBe(48);
  });

  it('gives less through a clogged pipe', () => {
    expect(operatingFlow_m3_d(curve, 1, clogged)).toBeLessThan(0.9 * operatingFlow_m3_d(curve, 1, loss));
  });

  it('with no flow to give, gives none', () => {
    expect(operatingFlow_m3_d({ maxHead_m: 2, maxFlow_m3_h: 0 }, 1, loss)).toBe(0);
  });
});

describe('a pump chosen for a flow', () => {
  it.each([
    [1, 1.5],
    [0.2, 0.3],
    [4, 2],
    [1, 0],
  ])('gives %f m³/h at the lift of %f m it was chosen for', (flow, lift) => {
    expect(operatingFlow_m3_d(curveFor(flow, lift, loss, h), lift, loss) / 24).toBeCloseTo(flow, 9);
  });

  it('gives less when the sump sinks by 20 cm, and less when its pipe clogs, but does not stop', () => {
    const chosen = curveFor(1, 1.5, loss, h);
    for (const flow of [operatingFlow_m3_d(chosen, 1.7, loss), operatingFlow_m3_d(chosen, 1.5, clogged)]) {
      expect(flow / 24).toBeLessThan(0.95);
      expect(flow / 24).toBeGreaterThan(0.5);
    }
  });

  it('chosen for no flow gives none', () => {
    expect(operatingFlow_m3_d(curveFor(0, 1.5, loss, h), 1.5, loss)).toBe(0);
  });
});

describe('power', () => {
  it('a cubic metre an hour lifted one metre takes 2.7 W', () => {
    expect(hydraulicPower_W(24, 1, 20, h)).toBeCloseTo(2.719, 3);
  });

  it('from the mains, an hour’s cubic metre at 1.5 m takes some 12 W, as small pumps do', () => {
    expect(Math.abs(electricalPower_W(24, 1.5, 24, h) / 12 - 1)).toBeLessThan(0.05);
  });

  it('is none without flow or without lift', () => {
    expect(electricalPower_W(0, 2, 20, h)).toBe(0);
    expect(electricalPower_W(24, -1, 20, h)).toBe(0);
  });
});

describe('a dry pump', () => {
  it('draws air when less than the least share of its tank is left', () => {
    expect(drawsAir(0.059, 0.4, h)).toBe(true);
    expect(drawsAir(0.061, 0.4, h)).toBe(false);
    expect(leastWater_m3(0.4, h)).toBeCloseTo(0.06, 12);
  });
});

describe('the edge of what holds', () => {
  it('is found, at both ends too', () => {
    expect(largestWhere(10, (x) => 2 - x * x)).toBeCloseTo(Math.SQRT2, 8);
    expect(largestWhere(10, () => 1)).toBe(10);
    expect(largestWhere(10, () => -1)).toBe(0);
  });
  it('is found at a jump, at a kink and where the margin is all but flat, from the side that holds', () => {
    for (const edge of [1e-6, 0.3, 7.7, 9.999999]) {
      for (const margin of [
        (x: number) => (x <= edge ? 1 : -1e6),
        (x: number) => (x <= edge ? edge - x : 1e9 * (edge - x)),
        (x: number) => (edge - x) ** 7,
      ]) {
        const found = largestWhere(10, margin);
        expect(margin(found)).toBeGreaterThanOrEqual(0);
        expect(Math.abs(found - edge)).toBeLessThan(1e-8);
      }
    }
  });
  it('is found for a pump in a dozen tries', () => {
    let tries = 0;
    largestWhere(40, (flow) => {
      tries++;
      return 2 * (1 - (flow / 40) ** 2) - 0.9 - 0.001 * flow ** 1.8;
    });
    expect(tries).toBeLessThanOrEqual(12);
  });
});
