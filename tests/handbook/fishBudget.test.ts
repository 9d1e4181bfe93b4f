// What a kilogram of feed becomes. Montanhini Neto & Ostrensky 2015, Aquac. Res., doi 10.1111/are.12280 (tilapia retain 43 % of protein
// eaten; 65 % of N supplied is let go); Boyd, "Oxygen demand of aquaculture feed", Global Aquaculture Advocate (20–30 % of N retained);
// Timmons & Ebeling, Recirculating Aquaculture, from memory: TAN = feed × protein × 0.092, solids 0.25 (0.2–0.4) kg/kg,
// oxygen 0.25 kg/kg for fish alone up to 1.0 for all; Ali 1999 as quoted by Khater et al.: 175–227 mg/kg/h at 100 g, 26–28 °C.
import { describe, expect, it } from 'vitest';
import { ATOM, CF, CI, CS, FF, FI, FS, FISH, IC, O2, TAN, UF, UI, US } from '../../src/model/components';
import { contentTable } from '../../src/model/content';
import { valuesWith } from '../../src/catalogue/values';
import { fishAt } from '../../src/model/organisms/fish/fishAt';
import { ID } from '../../src/model/processes/catalogue';
import { closedColumns } from '../../src/model/processes/definitions';

const values = valuesWith();
const columns = closedColumns(values, contentTable(values));
const column = (process: 'fishGrowth' | 'fishExpenditure' | 'fishBasal', component: number): number => {
  const at = columns[ID[process]].rows.indexOf(component);
  return at < 0 ? 0 : columns[ID[process]].coefficients[at];
};
const growing = fishAt(values, 'tilapia', 28).growing;
const part = (process: 'eating' | 'fishBasal', component: number): number =>
  process === 'fishBasal'
    ? column(process, component)
    : growing * column('fishGrowth', component) + (1 - growing) * column('fishExpenditure', component);
/** Fish of 100 g eating 2.5 % a day: what basal respiration adds per gram eaten. */
const basal = values.fish.tilapia.basal / 0.025;
const perFeed = (component: number): number => part('eating', component) + basal * part('fishBasal', component);

describe('a kilogram of feed eaten', () => {
  it('takes 0.4–0.9 kg of oxygen', () => {
    expect(-perFeed(O2)).toBeGreaterThan(0.4);
    expect(-perFeed(O2)).toBeLessThan(0.9);
  });

  it('gives 0.8–1.1 mol of carbon dioxide for each of oxygen', () => {
    const quotient = perFeed(IC) / (-perFeed(O2) / (2 * ATOM.O));
    expect(quotient).toBeGreaterThan(0.8);
    expect(quotient).toBeLessThan(1.1);
  });

  it('leaves 20–45 % of its nitrogen in the fish', () => {
    const retained = (perFeed(FISH) * values.matter.fishN) / values.matter.feedN;
    expect(retained).toBeGreaterThan(0.2);
    expect(retained).toBeLessThan(0.45);
  });

  it('gives the ammonia of the rule feed × protein × 0.092, within 35 %', () => {
    const rule = (values.matter.feedN / 0.16) * 0.092;
    expect(perFeed(TAN) / rule).toBeGreaterThan(0.65);
    expect(perFeed(TAN) / rule).toBeLessThan(1.35);
  });

  it('gives 0.2–0.4 kg of dry solids', () => {
    const dry =
      [CF, CS, FF, FS, UF, US].reduce((sum, row) => sum + part('eating', row) * values.matter.organicDry, 0)
      + [CI, FI, UI].reduce((sum, row) => sum + part('eating', row) * values.matter.inertDry, 0);
    expect(dry).toBeGreaterThan(0.2);
    expect(dry).toBeLessThan(0.4);
  });
});
