// What a gram of each base brings. Worked out from formula weights (IUPAC abridged); the neutralising values agree with SRAC and Boyd
// tables (Ca(OH)2 135 %, CaCO3 100 %, from memory): derived. A copy of SRAC 4502 that has 53 g of baking soda raise 3785 L by 10 mg/L does
// not: 63.5 g.
import { describe, expect, it } from 'vitest';
import { ALK, CA, IC, K, NA } from '../../src/model/components';
import { contentTable } from '../../src/model/content';
import { valuesWith } from '../../src/catalogue/values';
import { ID, PROCESS_NAMES } from '../../src/model/processes/catalogue';
import { closedColumns } from '../../src/model/processes/definitions';
import { BASES, DOSE_OF } from '../../src/model/processes/dosing';
import type { Base } from '../../src/model/processes/dosing';
import { apart } from './answers';

/** base → g/mol, eq/mol, meq/g, g of alkalinity as CaCO3 per g, mol inorganic carbon per mol, its metal and g of it per mol */
const TABLE: Record<Base, [number, number, number, number, number, number, number]> = {
  'Ca(OH)2': [74.093, 2, 26.99, 1.3508, 0, CA, 40.078],
  KOH: [56.105, 1, 17.82, 0.892, 0, K, 39.098],
  CaCO3: [100.087, 2, 19.98, 1.0, 1, CA, 40.078],
  K2CO3: [138.205, 2, 14.47, 0.7242, 1, K, 78.196],
  NaHCO3: [84.007, 1, 11.9, 0.5957, 1, NA, 22.99],
  KHCO3: [100.115, 1, 9.99, 0.4999, 1, K, 39.098],
};
/** g CaCO3 per eq */
const CACO3_PER_EQ = 50.043;

const values = valuesWith();
const columns = closedColumns(values, contentTable(values));
const brought = (base: Base, component: number): number => {
  const { rows, coefficients } = columns[ID[DOSE_OF[base]]];
  const at = rows.indexOf(component);
  return at < 0 ? 0 : coefficients[at];
};

describe('bases', () => {
  it('are all here that can be dosed', () => {
    expect(Object.keys(TABLE).sort()).toEqual([...BASES].sort());
    expect(PROCESS_NAMES.filter((name) => name.startsWith('dose')).sort()).toEqual(Object.values(DOSE_OF).sort());
  });

  it.each(BASES)('%s brings the alkalinity of its formula, within 0.05 %%', (base) => {
    const [molar, eq, meqPerGram, asCaCO3] = TABLE[base];
    const found = brought(base, ALK);
    expect(apart(found, eq / molar)).toBeLessThan(5e-4);
    expect(Math.abs(1000 * found - meqPerGram)).toBeLessThanOrEqual(0.0051);
    expect(apart(found * CACO3_PER_EQ, asCaCO3)).toBeLessThan(5e-4);
  });

  it.each(BASES)('%s brings the inorganic carbon and the metal of its formula', (base) => {
    const [molar, , , , carbon, metal, perMole] = TABLE[base];
    expect(Math.abs(brought(base, IC) * molar - carbon)).toBeLessThan(5e-4);
    expect(apart(brought(base, metal) * molar, perMole)).toBeLessThan(5e-4);
  });

  it('63.5 g of baking soda, not 53, raise 3785 L by 10 mg/L', () => {
    const rise = (g: number): number => (g * brought('NaHCO3', ALK) * CACO3_PER_EQ * 1000) / 3785;
    expect(Math.abs(rise(63.5) - 10)).toBeLessThan(0.05);
    expect(rise(53)).toBeLessThan(8.5);
  });
});
