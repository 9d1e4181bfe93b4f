// Sander R. 2015, Compilation of Henry's law constants for water as solvent, Atmos. Chem. Phys. 15:4399–4981. H2S, CH4, O2
// published; CO2, NH3, N2 from memory. Oxygen and carbon dioxide here follow Benson & Krause 1984 and Plummer & Busenberg
// 1982; the compilation prints two digits.
import { describe, expect, it } from 'vitest';
import type { Gas } from '../../src/model/equilibrium/henry';
import { gasOverWater, solubility_mol_m3_atm } from '../../src/model/equilibrium/henry';
import { apart } from './answers';

/** gas, mol/m³/Pa at 25 °C as printed, gas over water at 25 °C */
const TABLE: [Gas, number, number][] = [
  ['O2', 1.3e-5, 31],
  ['CO2', 3.3e-4, 1.2],
  ['H2S', 1.0e-3, 0.4],
  ['CH4', 1.4e-5, 29],
  ['NH3', 5.9e-1, 6.8e-4],
  ['N2', 6.4e-6, 63],
];

describe('solubility of gases at 25 °C', () => {
  it.each(TABLE)('%s: %f mol/m³/Pa and %f in air over water, within 4 % (half the last digit)', (gas, henry, ratio) => {
    expect(apart(solubility_mol_m3_atm(gas, 25) / 101325, henry)).toBeLessThan(0.04);
    expect(apart(gasOverWater(gas, 25), ratio)).toBeLessThan(0.04);
  });

  it('a gas stage can strip 0.93 of G/L at 15 °C and 1.20 at 25 °C of carbon dioxide', () => {
    expect(gasOverWater('CO2', 15)).toBeCloseTo(0.93, 2);
    expect(gasOverWater('CO2', 25)).toBeCloseTo(1.2, 2);
  });
});
