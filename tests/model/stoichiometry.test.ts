// The table of processes: every process closes in every element and in charge, and says by itself what is known of it.
// Ratios: water-chemistry handbooks' equations worked out from atomic weights; with growth after Gujer & Jenkins 1974 (4.33 g O2/g N)
// and Ebeling, Timmons & Bisogni 2006, Aquaculture 257:346 (4.18 g O2, 7.05 g CaCO3 per g N).
import { describe, expect, it } from 'vitest';
import { ALK, ATOM, CH4, ELEMENTS, IC, N2, NO2, NO3, O2, PO, PS, S2, SO4, SS, TAN } from '../../src/model/components';
import { contentTable } from '../../src/model/content';
import { closeColumn, residuals } from '../../src/model/continuity';
import { valuesWith } from '../../src/catalogue/values';
import { ID, PROCESS_NAMES } from '../../src/model/processes/catalogue';
import type { ProcessName } from '../../src/model/processes/catalogue';
import { DEFINITIONS, closedColumns } from '../../src/model/processes/definitions';

const values = valuesWith();
const content = contentTable(values);
const columns = closedColumns(values, content);
const charge = ELEMENTS.indexOf('charge');

/** Coefficient of a component in a process. */
function part(process: ProcessName, component: number): number {
  const { rows, coefficients } = columns[ID[process]];
  const at = rows.indexOf(component);
  return at < 0 ? 0 : coefficients[at];
}

describe('every process', () => {
  it.each(PROCESS_NAMES.map((name) => [name]))('%s closes in all it claims to conserve', (name) => {
    const { rows, coefficients } = columns[ID[name]];
    const open = residuals(
      Array.from(rows, (row, i) => [row, coefficients[i]] as const),
      content,
    );
    const outside = DEFINITIONS[ID[name]].fromOutside === true;
    ELEMENTS.forEach((element, e) => {
      if (!outside || e === charge) expect(Math.abs(open[e]), element).toBeLessThan(1e-12);
    });
  });

  it('still closes when yields and contents are other than recorded', () => {
    const other = valuesWith({
      'kinetics.aobYield': 0.15,
      'kinetics.hetYield': 0.67,
      'matter.feedN': 0.058,
      'matter.filmN': 0.12,
      'tilapia.gain': 0.7,
      'matter.leafN': 0.05,
    });
    const table = contentTable(other);
    closedColumns(other, table).forEach(({ rows, coefficients }, p) => {
      if (DEFINITIONS[p].fromOutside) return;
      for (const open of residuals(
        Array.from(rows, (row, i) => [row, coefficients[i]] as const),
        table,
      ))
        expect(Math.abs(open)).toBeLessThan(1e-12);
    });
  });
});

describe('a process that cannot close says which and why', () => {
  it('an unknown that nothing determines is named', () => {
    expect(() => closeColumn('rusting', { fixed: new Map([[SS, -1]]), unknowns: [O2, IC, CH4, PO, SS] }, content)).toThrow(
      /process rusting: \w+ is not determined/,
    );
  });

  it('an element without an unknown to take it up is named', () => {
    expect(() => closeColumn('burning', { fixed: new Map([[SS, -1]]), unknowns: [O2] }, content)).toThrow(
      'process burning: C does not close',
    );
  });
});

describe('what the processes take and give', () => {
  it('oxidising a gram of ammonia nitrogen with growth takes 4.2–4.6 g of oxygen over both steps', () => {
    const perTAN = -part('nitritation', O2) / -part('nitritation', TAN);
    const nitrite = part('nitritation', NO2) / -part('nitritation', TAN);
    const both = perTAN + (nitrite * -part('nitriteOxidation', O2)) / -part('nitriteOxidation', NO2);
    expect(both).toBeGreaterThan(4.15);
    expect(both).toBeLessThan(4.6);
  });

  it('nitrification costs about two equivalents of alkalinity per mole (6.3–7.2 g CaCO3 per g N)', () => {
    const equivalents = -(part('nitritation', ALK) / -part('nitritation', TAN)) * ATOM.N;
    expect(equivalents).toBeGreaterThan(1.9);
    expect(equivalents).toBeLessThan(2.02);
    expect(Math.abs(part('nitriteOxidation', ALK)) * ATOM.N).toBeLessThan(0.06);
  });

  it('denitrifying gives back one equivalent per mole and 2.86 g of oxygen demand per gram of nitrogen', () => {
    expect((part('sludgeAnoxic', ALK) / -part('sludgeAnoxic', NO3)) * ATOM.N).toBeCloseTo(1, 9);
    expect(-part('sludgeAnoxic', PO) / -part('sludgeAnoxic', NO3)).toBeCloseTo(2.86, 2);
    expect(part('sludgeAnoxic', N2)).toBeCloseTo(-part('sludgeAnoxic', NO3), 12);
  });

  it('a growing denitrifier takes more organics than it burns: COD need is 2.86/(1 − Y)', () => {
    const need = 1 / -part('heterotrophsAnoxic', NO3);
    expect(need).toBeGreaterThan(2.86 / (1 - 0.4));
    expect(need).toBeLessThan(2.86 / (1 - 0.67));
  });

  it('sulfide to sulfate takes 2 g of oxygen per gram of sulfur and two equivalents per mole', () => {
    expect(part('sulfideOxidation', O2) / part('sulfideOxidation', S2)).toBeCloseTo(2, 2);
    expect((part('sulfideOxidation', ALK) / -part('sulfideOxidation', S2)) * ATOM.S).toBeCloseTo(-2, 9);
    expect(part('sulfideOxidation', SO4)).toBeCloseTo(1, 12);
  });

  it('reducing a gram of sulfate sulfur takes 2 g of COD and gives two equivalents per mole', () => {
    expect(part('sludgeSulfate', PO) / part('sludgeSulfate', SO4)).toBeCloseTo(2, 2);
    expect((part('sludgeSulfate', ALK) / -part('sludgeSulfate', SO4)) * ATOM.S).toBeCloseTo(2, 9);
    expect(part('sludgeSulfate', PS)).toBeCloseTo(-part('sludgeSulfate', SO4), 12);
  });

  it('a gram of COD becomes a quarter of a gram of methane', () => {
    // methane is kept as COD: 16.04 g of it burn 64 g of oxygen
    expect((part('sludgeMethane', CH4) / -part('sludgeMethane', PO)) * (16.043 / (4 * ATOM.O))).toBeCloseTo(0.2507, 3);
  });

  it('heterotrophs take 1 − Y of what they eat as oxygen, and breathe it out as carbon', () => {
    expect(part('heterotrophsAerobic', O2)).toBeCloseTo(-(1 - values.kinetics.hetYield), 9);
    expect(part('heterotrophsAerobic', IC)).toBeGreaterThan(0);
  });

  it('a gram of lime gives 26.99 meq and of potassium bicarbonate 9.99 meq', () => {
    expect(part('doseCalciumHydroxide', ALK) * 1000).toBeCloseTo(26.99, 1);
    expect(part('dosePotassiumBicarbonate', ALK) * 1000).toBeCloseTo(9.99, 1);
    expect(part('doseCalciumHydroxide', IC)).toBe(0);
    expect(part('dosePotassiumBicarbonate', IC) / part('dosePotassiumBicarbonate', ALK)).toBeCloseTo(1, 3);
  });

  it('roots that take nitrate raise alkalinity, roots that take ammonium lower it', () => {
    expect(part('uptakeNitrate', ALK)).toBeGreaterThan(0);
    expect(part('uptakeAmmonium', ALK)).toBeLessThan(0);
  });

  it('ammonia that leaves as gas takes its alkalinity with it, one equivalent per mole', () => {
    expect(part('ammoniaTransfer', ALK) * ATOM.N).toBeCloseTo(-1, 9);
  });
});
