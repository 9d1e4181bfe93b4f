// Calcite: Plummer & Busenberg 1982, Geochim. Cosmochim. Acta 46:1011–1040: log Ksp −8.48 at 25 °C; less soluble in warm water.
import { describe, expect, it } from 'vitest';
import { calciteKsp, calciteSaturation } from '../../../src/model/equilibrium/calcite';
import { CONDITIONAL_LENGTH, foldActivities } from '../../../src/model/equilibrium/conditional';
import { debyeHuckelA } from '../../../src/model/equilibrium/activity';
import { thermodynamicConstants } from '../../../src/model/equilibrium/constants';
import { exp10, log10 } from '../../../src/numerics/elementary';

const constants = new Float64Array(CONDITIONAL_LENGTH);
foldActivities(thermodynamicConstants(25), debyeHuckelA(25), 0.005, constants, 0);
const at = (pH: number, calcium = 1, carbon = 2): number => calciteSaturation(25, calcium, carbon, exp10(3 - pH), constants, 0);

describe('limestone', () => {
  it('has the published solubility product', () => {
    expect(log10(calciteKsp(25))).toBeCloseTo(-8.48, 2);
    expect(calciteKsp(10)).toBeGreaterThan(calciteKsp(30));
  });

  it('dissolves in sour water and not in hard water of pH 8.3', () => {
    expect(at(6.5)).toBeLessThan(0.1);
    expect(at(8.3)).toBeGreaterThan(1);
  });

  it('is nearer to saturation the more calcium and carbonate there are', () => {
    expect(at(7.5, 2)).toBeCloseTo(2 * at(7.5, 1), 12);
    expect(at(8)).toBeGreaterThan(8 * at(7));
  });
});
