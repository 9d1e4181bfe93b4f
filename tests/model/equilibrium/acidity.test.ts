// Acidity from alkalinity: the solver always answers, and its answer is the water it was asked about.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CONDITIONAL_LENGTH, conditionalConstants } from '../../../src/model/equilibrium/conditional';
import { carbonDioxideSlopes, carbonOf, solveH } from '../../../src/model/equilibrium/solve';
import type { Totals } from '../../../src/model/equilibrium/speciation';
import { alkalinityOfH, bufferIntensity, carbonDioxideFraction } from '../../../src/model/equilibrium/speciation';

const total = (max: number) => fc.oneof(fc.constant(0), fc.double({ min: 0, max, noNaN: true }));
const waters = fc.record({
  T_C: fc.double({ min: 0, max: 40, noNaN: true }),
  I: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 0.5, noNaN: true })),
  totals: fc.record({ carbon: total(50), ammonia: total(50), sulfide: total(20), phosphate: total(20) }),
  pH: fc.double({ min: 1, max: 13, noNaN: true }),
});

function constants(T_C: number, I: number): Float64Array {
  const k = new Float64Array(CONDITIONAL_LENGTH);
  conditionalConstants(T_C, I, k, 0);
  return k;
}

const ofPH = (pH: number): number => 1000 * 10 ** -pH;
const pond: Totals = { carbon: 2, ammonia: 0.2, sulfide: 0.02, phosphate: 0.3 };

describe('alkalinity and acidity', () => {
  it('are two sides of one water: alkalinity from a pH leads back to that pH', () => {
    fc.assert(
      fc.property(waters, ({ T_C, I, totals, pH }) => {
        const k = constants(T_C, I);
        const h = solveH(alkalinityOfH(ofPH(pH), totals, k, 0), totals, k, 0);
        expect(Math.abs(Math.log(h / ofPH(pH)))).toBeLessThan(1e-6);
      }),
      { numRuns: 1000 },
    );
  });

  it('carbon from alkalinity and pH leads back to that pH', () => {
    fc.assert(
      fc.property(waters, ({ T_C, I, totals, pH }) => {
        const k = constants(T_C, I);
        const alkalinity = alkalinityOfH(ofPH(pH), totals, k, 0);
        fc.pre(totals.carbon > 1e-3 && pH > 4);
        expect(Math.abs(carbonOf(alkalinity, ofPH(pH), totals, k, 0) / totals.carbon - 1)).toBeLessThan(1e-6);
      }),
    );
  });

  it('any finite alkalinity has an answer, from any start, however far away', () => {
    const alkalinities = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    const starts = fc.oneof(fc.double(), fc.double({ min: 1e-16, max: 1e4 }));
    fc.assert(
      fc.property(waters, alkalinities, starts, ({ T_C, I, totals }, alkalinity, start) => {
        const k = constants(T_C, I);
        const h = solveH(alkalinity, totals, k, 0, start);
        const held = totals.carbon + totals.ammonia + totals.sulfide + totals.phosphate;
        expect(h).toBeGreaterThan(0);
        expect(Math.abs(alkalinityOfH(h, totals, k, 0) - alkalinity)).toBeLessThan(1e-9 * (Math.abs(alkalinity) + held + 1e-3));
      }),
      { numRuns: 1000 },
    );
  });

  it('where the search starts does not matter', () => {
    const k = constants(24, 0.01);
    const answers = [1e-9, 1e-4, 1].map((start) => solveH(1.6, pond, k, 0, start));
    for (const h of answers) expect(Math.abs(h / answers[0] - 1)).toBeLessThan(1e-12);
  });

  it('a total that rounding has pushed below zero counts as none', () => {
    const k = constants(24, 0.01);
    expect(solveH(1, { ...pond, sulfide: -1e-9 }, k, 0)).toBe(solveH(1, { ...pond, sulfide: 0 }, k, 0));
  });

  it('nonsense is passed on, not hidden', () => {
    expect(solveH(NaN, pond, constants(24, 0), 0)).toBeNaN();
  });
});

describe('slopes against finite differences', () => {
  it('buffer intensity is how much alkalinity a change of acidity takes', () => {
    fc.assert(
      fc.property(waters, ({ T_C, I, totals, pH }) => {
        const k = constants(T_C, I);
        const d = 1e-5;
        const h = ofPH(pH);
        const slope = (alkalinityOfH(h * Math.exp(d), totals, k, 0) - alkalinityOfH(h * Math.exp(-d), totals, k, 0)) / (2 * d);
        const size = totals.carbon + totals.ammonia + totals.sulfide + totals.phosphate + h + k[2] / h;
        expect(Math.abs(bufferIntensity(h, totals, k, 0) + slope)).toBeLessThan(1e-8 * size);
        expect(bufferIntensity(h, totals, k, 0)).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });

  it.each([0.5, 1.5, 2.1])('free carbon dioxide follows carbon and alkalinity (%f meq/L)', (alkalinity) => {
    const k = constants(24, 0.01);
    const free = (carbon: number, alk: number): number => {
      const totals = { ...pond, carbon };
      return carbon * carbonDioxideFraction(solveH(alk, totals, k, 0), k, 0);
    };
    const out = new Float64Array(3);
    carbonDioxideSlopes(solveH(alkalinity, pond, k, 0), pond, k, 0, out, 1);
    const d = 1e-5;
    expect(out[1]).toBeCloseTo((free(2 + d, alkalinity) - free(2 - d, alkalinity)) / (2 * d), 6);
    expect(out[2]).toBeCloseTo((free(2, alkalinity + d) - free(2, alkalinity - d)) / (2 * d), 6);
  });
});
