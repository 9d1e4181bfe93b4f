// The columns written out for speed against the table they were written from: one process at a time, one derivative at a time.
import { describe, expect, it } from 'vitest';
import { FAST, NAMES, NO2, NO3, O2, SS, STATES, TAN } from '../../src/model/components';
import { applyColumns, isWrittenOut } from '../../src/model/network/columns';
import { placeInBlock } from '../../src/model/network/fastBlock';
import { spreadBlock, writeBlock } from '../../src/model/network/keptColumns';
import { BLOCK } from '../../src/model/network/places';
import { ID, PROCESSES, PROCESS_NAMES, SLOTS } from '../../src/model/processes/catalogue';
import { DEFINITIONS } from '../../src/model/processes/definitions';
import { livedLoop } from './tinyLoop';

const season = livedLoop();
const { matrix, assembly } = season.runtime;
/** A cell in which everything can run. */
const bed = assembly.cells.find((cell) => cell.bed) ?? assembly.cells[0];
const everything = { ...bed, bedThickness: 0.01, stir: 1, sludgeRoom: 1, fish: true };

const written = PROCESS_NAMES.filter((name) => isWrittenOut(ID[name]));
const columnOf = (p: number): Float64Array => matrix.table.slice(p * STATES, (p + 1) * STATES);

describe('the columns written out', () => {
  it('are those of the table', () => {
    matrix.columns.forEach((column, p) => {
      const full = new Float64Array(STATES);
      column.rows.forEach((row, i) => { if (row < STATES) full[row] += column.coefficients[i]; });
      expect(columnOf(p)).toEqual(full);
    });
  });

  it.each(written)('%s does to the slope what its column says', (name) => {
    const rates = new Float64Array(PROCESSES);
    rates[ID[name]] = 2;
    const out = new Float64Array(STATES);
    applyColumns(everything, matrix.table, rates, 0, out, 0);
    out.forEach((change, row) => expect(change, NAMES[row]).toBeCloseTo(2 * columnOf(ID[name])[row], 13));
  });

  it('leave the slope alone where nothing runs', () => {
    const out = new Float64Array(STATES);
    applyColumns(everything, matrix.table, new Float64Array(PROCESSES), 0, out, 0);
    expect(out.every((change) => change === 0)).toBe(true);
  });
});

/** As if nothing but the water carried anything off. */
const inverse = new Float64Array(STATES).fill(0.25);

const kept = written.flatMap((name) => (DEFINITIONS[ID[name]].fast ?? []).map((column, slot) => [name, NAMES[column], column, slot] as const));

describe('the derivatives written out', () => {
  it.each(kept)('of %s to %s fill the block as the table says', (name, _component, column, slot) => {
    const g = new Float64Array(PROCESSES * SLOTS);
    g[ID[name] * SLOTS + slot] = 3;
    const block = new Float64Array(BLOCK);
    writeBlock(everything, matrix.table, g, 0, block, 0);
    const expected = new Float64Array(BLOCK);
    for (let row = 0; row < FAST; row++) {
      const coefficient = columnOf(ID[name])[row];
      if (coefficient !== 0) expected[placeInBlock(row, column)] = 3 * coefficient;
    }
    block.forEach((value, place) => expect(value, `place ${place}`).toBeCloseTo(expected[place], 13));
  });

  it.each(kept)('of %s to %s spread to the rows outside the block', (name, _component, column, slot) => {
    const g = new Float64Array(PROCESSES * SLOTS);
    g[ID[name] * SLOTS + slot] = 3;
    const u = new Float64Array(STATES);
    u[column] = 0.5;
    const rhs = new Float64Array(STATES);
    const delta = new Float64Array(PROCESSES);
    spreadBlock(everything, matrix.table, g, 0, u, rhs, inverse, 0, delta, 0);
    delta.forEach((moved, p) => expect(moved, PROCESS_NAMES[p]).toBe(p === ID[name] ? 1.5 : 0));
    rhs.forEach((change, row) => expect(change, NAMES[row]).toBeCloseTo(row < FAST ? 0 : 1.5 * columnOf(ID[name])[row], 13));
  });

  const films = [
    ['nitritation', 'AmmoniaOxidisers', [TAN, O2]], ['nitriteOxidation', 'NitriteOxidisers', [NO2, O2]],
    ['heterotrophsAerobic', 'Heterotrophs', [SS, O2, TAN]], ['heterotrophsAnoxic', 'Heterotrophs', [SS, NO3, TAN]],
  ] as const;
  const follows = films.flatMap(([growth, guild, columns]) => columns.map((column, slot) => [growth, guild, column, slot] as const));

  it.each(follows)('of %s bring what full films of %s let go (to component %i)', (growth, guild, column, slot) => {
    const g = new Float64Array(PROCESSES * SLOTS);
    g[ID[growth] * SLOTS + slot] = 3;
    g[ID[`slough${guild}`] * SLOTS + 1] = 0.5;
    g[ID[`lysis${guild}`] * SLOTS + 1] = 0.2;
    expectTogether(g, column, { [growth]: 3, [`slough${guild}`]: 1.5, [`lysis${guild}`]: 0.6 });
  });

  it.each(['AmmoniaOxidisers', 'NitriteOxidisers', 'Heterotrophs'] as const)('of what films of %s let go to oxygen turn what dissolves into solids', (guild) => {
    const g = new Float64Array(PROCESSES * SLOTS);
    g[ID[`slough${guild}`] * SLOTS + 2] = 3;
    g[ID[`lysis${guild}`] * SLOTS + 2] = -3;
    expectTogether(g, O2, { [`slough${guild}`]: 3, [`lysis${guild}`]: -3 });
  });

  /** The block's column and what is spread, against the sum of whole columns of the table. */
  function expectTogether(g: Float64Array, column: number, moved: Readonly<Partial<Record<string, number>>>): void {
    const sums = Float64Array.from({ length: STATES }, (_, row) => PROCESS_NAMES.reduce((sum, name) => sum + (moved[name] ?? 0) * columnOf(ID[name])[row], 0));
    const block = new Float64Array(BLOCK);
    writeBlock(everything, matrix.table, g, 0, block, 0);
    for (let row = 0; row < FAST; row++) if (sums[row] !== 0) expect(block[placeInBlock(row, column)], NAMES[row]).toBeCloseTo(sums[row], 12);
    const u = new Float64Array(STATES);
    u[column] = 0.5;
    const [rhs, delta] = [new Float64Array(STATES), new Float64Array(PROCESSES)];
    spreadBlock(everything, matrix.table, g, 0, u, rhs, inverse, 0, delta, 0);
    delta.forEach((extent, p) => expect(extent, PROCESS_NAMES[p]).toBeCloseTo(0.5 * (moved[PROCESS_NAMES[p]] ?? 0), 12));
    rhs.forEach((change, row) => expect(change, NAMES[row]).toBeCloseTo(row < FAST ? 0 : 0.5 * sums[row], 12));
  }

  it('have no room for what would couple back to carbon or alkalinity', () => {
    expect(() => placeInBlock(0, 4)).toThrow('carbon');
    expect(() => placeInBlock(0, 5)).toThrow('alkalinity');
  });
});
