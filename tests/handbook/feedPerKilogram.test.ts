// What a kilogram of feed eaten turns into over three weeks in a tank, basal life and all, for each kind of fish. Oxygen 0.5–0.9 kg/kg is
// what continuity gives; published are 0.25 for the fish alone and 0.4–0.5 for a whole loop (Timmons & Ebeling, from memory) against 1.25
// when all of the feed is burnt (Boyd, Global Aquaculture Advocate). TAN: feed × protein × 0.092, 29.4 g at 32 % protein (same, from
// memory). Solids 0.25 (0.2–0.4). Retained: N 20–45 % (20–30 Boyd; 43 Montanhini Neto & Ostrensky 2015), P 34 % (the same; 54 % in catfish,
// Strauch 2018).
import { describe, expect, it } from 'vitest';
import { ATOM, FISH, IC, O2, P, SOLIDS, SS, TAN } from '../../src/model/components';
import { contentTable, dryMass } from '../../src/model/content';
import { SPECIES } from '../../src/catalogue/kinds';
import { valuesWith } from '../../src/catalogue/values';
import type { SpeciesKind } from '../../src/season/plan';
import { perKilogram } from './feedCases';

const values = valuesWith();
const content = contentTable(values);
const solids = SOLIDS.flat();
const NITROGEN = 1,
  PHOSPHORUS = 2;

describe.each(Object.keys(SPECIES) as SpeciesKind[])('a kilogram of feed eaten by %s', (species) => {
  const gives = perKilogram(species);

  it('takes 0.5–0.9 kg of oxygen, more than fish alone are said to and less than burning it all', () => {
    expect(-gives(O2)).toBeGreaterThan(500);
    expect(-gives(O2)).toBeLessThan(900);
  });

  it('gives off 1.1–1.4 kg of carbon dioxide for each kilogram of oxygen taken', () => {
    const ratio = (gives(IC) * (ATOM.C + 2 * ATOM.O)) / -gives(O2);
    expect(ratio).toBeGreaterThan(1.1);
    expect(ratio).toBeLessThan(1.45);
  });

  it('gives off ammonia within 35 % of the rule, 29.4 g at 32 % protein', () => {
    const protein = values.matter.feedN / 0.16;
    expect(Math.abs(0.32 * 0.092 * 1000 - 29.4)).toBeLessThan(0.05);
    expect(Math.abs(gives(TAN) / (1000 * protein * 0.092) - 1)).toBeLessThan(0.35);
  });

  it('gives 0.2–0.4 kg of dry solids', () => {
    const dry = dryMass(values);
    const kg = solids.reduce((sum, row) => sum + gives(row) * dry[row], 0) / 1000;
    expect(kg).toBeGreaterThan(0.2);
    expect(kg).toBeLessThan(0.4);
  });

  it('leaves 20–45 % of its nitrogen in the fish', () => {
    const share = (gives(FISH) * values.matter.fishN) / (1000 * values.matter.feedN);
    expect(share).toBeGreaterThan(0.2);
    expect(share).toBeLessThan(0.45);
  });

  it('leaves 30–60 % of its phosphorus in the fish; more of the rest goes with the solids than dissolves', () => {
    const retained = (gives(FISH) * values.matter.fishP) / (1000 * values.matter.feedP);
    const withSolids = solids.reduce((sum, row) => sum + gives(row) * content[row][PHOSPHORUS], 0);
    expect(retained).toBeGreaterThan(0.3);
    expect(retained).toBeLessThan(0.6);
    expect(withSolids).toBeGreaterThan(gives(P));
  });

  it('is all accounted for in nitrogen and phosphorus', () => {
    const wholes: [number, number][] = [
      [NITROGEN, values.matter.feedN],
      [PHOSPHORUS, values.matter.feedP],
    ];
    for (const [element, fed] of wholes) {
      const out = [TAN, P, SS, FISH, ...solids].reduce((sum, row) => sum + gives(row) * content[row][element], 0);
      expect(Math.abs(out / (1000 * fed) - 1)).toBeLessThan(1e-9);
    }
  });
});
