// The derivatives that the solver keeps, against differences of the rates themselves, in loops of every kind of stage.
import { describe, expect, it } from 'vitest';
import { ALK, BA, BH, BN, IC, NAMES, NO2, NO3, O2, SS, STATES, TAN } from '../../src/model/components';
import { ratesIn } from '../../src/model/kernel/rates';
import { DERIVATIVES } from '../../src/model/kernel/sizes';
import { enterCell, makeWorkspace } from '../../src/model/network/slope';
import { ID, PROCESSES } from '../../src/model/processes/catalogue';
import type { ProcessName } from '../../src/model/processes/catalogue';
import type { Definition } from '../../src/model/processes/definition';
import { DEFINITIONS } from '../../src/model/processes/definitions';
import { keptPlace, keptRows, runningIn } from './plainKernel';
import { livedLoop, randomState } from './tinyLoop';

/**
 * Derivatives that leave out a second way in which the rate answers: the pH that moves with the component (nitrification, H2S, NH3),
 * the oxygen that heterotrophs leave the film (nitrifiers, denitrification). They are exact where that way is shut; where it
 * is open they keep their sign and are at most three times too large. The method's order does not hang on them.
 */
const NEAR: ReadonlySet<ProcessName> = new Set([
  'nitritation',
  'nitriteOxidation',
  'heterotrophsAnoxic',
  'hydrogenSulfideTransfer',
  'ammoniaTransfer',
]);
const FACTOR = 3;
/**
 * Those that also answer by the pH to what they keep a derivative to (phosphorus buffers), and the more so the less that derivative counts:
 * they are held to it at a pinned pH.
 */
const PINNED: ReadonlySet<ProcessName> = new Set(['sloughAmmoniaOxidisers', 'sloughNitriteOxidisers', 'sloughHeterotrophs']);
/** Reactants that run out: their derivative is taken for steeper than it is where little is left, up to the chord down to nothing. */
const STEEPER: Readonly<Partial<Record<ProcessName, readonly number[]>>> = {
  heterotrophsAerobic: [SS, O2, TAN],
  heterotrophsAnoxic: [SS, NO3, TAN],
  sulfideOxidation: [O2],
};
/**
 * Oxygen's transfer keeps what the fish take of it, carbon's what nitrifiers build of it: columns that touch one component alone can bear
 * it (gas.ts).
 */
const KEEPS_FOR: Readonly<Partial<Record<ProcessName, readonly ProcessName[]>>> = {
  oxygenTransfer: ['fishGrowth', 'fishExpenditure', 'fishBasal'],
};
/** What follows others answers through them to the dense block: see the claim of its own below. */
const rowsOf = (definition: Definition): number[] =>
  definition.follows ? keptRows({ ...definition, fast: undefined }) : keptRows(definition);

describe('kept derivatives', () => {
  const season = livedLoop();
  const { data, assembly } = season.runtime;
  const w = makeWorkspace(data);
  // A lamp, since this loop has none.
  assembly.cells[0].kill = 5;
  /** Rates of one cell at a state, iterated so that the pH has settled. */
  function ratesAt(cell: number, y: Float64Array): Float64Array {
    for (let i = 0; i < 4; i++) enterCell(w, data, cell, y, 0);
    w.light = 1.3;
    ratesIn([w], data);
    return data.r0.slice(cell * PROCESSES, (cell + 1) * PROCESSES);
  }

  const kept = DEFINITIONS.filter((definition) => rowsOf(definition).length > 0);

  const coefficientOf = (id: ProcessName, row: number): number => {
    const { rows, coefficients } = data.matrix.columns[ID[id]];
    return coefficients[rows.indexOf(row)] ?? 0;
  };

  /** Compares every kept derivative of a process in every cell where it runs, over random states. */
  function compare(
    id: ProcessName,
    prepare: (y: Float64Array, offset: number) => void,
    check: (given: number, difference: number, noise: number, where: string, steepest: number) => void,
  ): void {
    const p = ID[id];
    const rows = rowsOf(DEFINITIONS[p]);
    let compared = 0;
    for (const seed of ['a', 'b', 'c', 'd', 'e'])
      for (const cell of assembly.cells) {
        if (!runningIn(cell).includes(p)) continue;
        const y = randomState(season, seed);
        prepare(y, cell.index * STATES);
        ratesAt(cell.index, y);
        const given = rows.map((row) => data.g[cell.index * DERIVATIVES + keptPlace(id, row)]);
        rows.forEach((row, k) => {
          const at = cell.index * STATES + row;
          const step = 1e-4 * y[at];
          const [more, less] = [y.slice(), y.slice()];
          more[at] += step;
          less[at] -= step;
          const rateAt = (state: Float64Array): number => {
            const rates = ratesAt(cell.index, state);
            return (KEEPS_FOR[id] ?? []).reduce((sum, other) => sum + coefficientOf(other, row) * rates[ID[other]], rates[p]);
          };
          const [high, low] = [rateAt(more), rateAt(less)];
          check(
            given[k],
            (high - low) / (2 * step),
            ((Math.abs(high) + Math.abs(low)) * 1e-7) / step + 1e-12,
            `${id} to ${NAMES[row]} in ${cell.kind}`,
            STEEPER[id]?.includes(row) ? Math.max(0, (high + low) / (2 * y[at])) : 0,
          );
          compared++;
        });
      }
    expect(compared, 'the process ran in no cell').toBeGreaterThan(0);
  }

  it.each(kept.map(({ id }) => [id]))('of %s agree with differences of its rate', (id) => {
    const near = NEAR.has(id);
    data.holdH = near || PINNED.has(id) ? 3e-5 : 0;
    compare(
      id,
      (y, o) => {
        if (near) y[o + BH] *= id === 'heterotrophsAnoxic' ? 1 : 1e-9;
        if (id === 'heterotrophsAnoxic') y[o + O2] = 0;
        // exact where there is more carbon dioxide than the air holds, and nobody who builds of it
        if (id === 'carbonDioxideTransfer') [y[o + IC], y[o + BA], y[o + BN]] = [3 * Math.max(y[o + IC], y[o + ALK]), 0, 0];
      },
      (given, difference, noise, where, steepest) => {
        const told = `${where}: ${given} against ${difference}`;
        if (steepest === 0) expect(Math.abs(given - difference), told).toBeLessThan(0.005 * Math.abs(difference) + noise);
        else {
          expect(given, told).toBeGreaterThan(0.995 * difference - noise);
          expect(given, `${told}, at most ${steepest}`).toBeLessThan(Math.max(1.005 * steepest, 1.005 * difference) + noise);
        }
      },
    );
    data.holdH = 0;
  });

  it.each([...NEAR].map((id) => [id]))('of %s keep their sign and their size where pH and the film answer too', (id) => {
    compare(
      id,
      () => undefined,
      (given, difference, noise, where, steepest) => {
        if (Math.abs(difference) < 10 * noise) return;
        expect(given / difference, `${where}: ${given} against ${difference}`).toBeGreaterThan(0);
        expect(given / difference, `${where}: ${given} against ${difference}`).toBeLessThan(FACTOR * Math.max(1, steepest / difference));
      },
    );
  });

  it('stripping of carbon dioxide feels the pH it changes itself', () => {
    expect(DEFINITIONS[ID.carbonDioxideTransfer].fast).toEqual([IC, ALK]);
  });

  it('stripping of carbon dioxide below saturation is taken for steeper, never for flatter, than where it stands', () => {
    let steeper = 0;
    let compared = 0;
    compare(
      'carbonDioxideTransfer',
      (y, o) => {
        [y[o + IC], y[o + BA], y[o + BN]] = [0.9 * y[o + ALK], 0, 0];
      },
      (given, difference, noise, where) => {
        compared++;
        if (Math.abs(given) > 1.2 * Math.abs(difference)) steeper++;
        expect(Math.abs(given), where).toBeGreaterThan(0.995 * Math.abs(difference) - noise);
      },
    );
    expect(steeper).toBeGreaterThan(compared / 4);
  });

  it('what dissolves instead of leaving as solids answers to phosphorus the other way', () => {
    for (const { id, opposes } of DEFINITIONS) {
      if (!opposes) continue;
      const at = DEFINITIONS[ID[opposes]].alone ?? -1;
      data.holdH = 3e-5;
      for (const cell of assembly.cells) {
        const y = randomState(season, 'opposed');
        ratesAt(cell.index, y);
        const given = -data.g[cell.index * DERIVATIVES + keptPlace(opposes, at)];
        const step = 1e-4 * y[cell.index * STATES + at];
        const [high, low] = [step, -step].map(
          (change) =>
            ratesAt(
              cell.index,
              y.map((mass, i) => (i === cell.index * STATES + at ? mass + change : mass)),
            )[ID[id]],
        );
        expect(Math.abs((high - low) / (2 * step) - given)).toBeLessThan(0.005 * Math.abs(given) + (1e-7 * (high + low)) / step + 1e-12);
      }
      data.holdH = 0;
    }
  });

  it.each([
    ['AmmoniaOxidisers', ['nitritation']],
    ['NitriteOxidisers', ['nitriteOxidation']],
    ['Heterotrophs', ['heterotrophsAerobic', 'heterotrophsAnoxic']],
  ] as const)('what full films of %s let go follows their growth, and oxygen', (guild, growths) => {
    data.holdH = 3e-5;
    // A nitrifying film's room shifts a little with what limits it, unless it is as warm as where it was measured: that way is left out.
    const { kinetics } = data;
    data.kinetics = { ...kinetics, oxygenRoom: 1 };
    let followed = 0;
    for (const seed of ['a', 'b', 'c'])
      for (const cell of assembly.cells)
        for (const row of [O2, TAN, NO2, NO3, SS]) {
          const y = randomState(season, seed);
          ratesAt(cell.index, y);
          const keptAt = (name: ProcessName, to: number | 'share'): number => data.g[cell.index * DERIVATIVES + keptPlace(name, to)];
          const shares = [keptAt(`slough${guild}`, 'share'), keptAt(`lysis${guild}`, 'share')];
          const byOxygen = row === O2 ? [keptAt(`slough${guild}`, O2), -keptAt(`slough${guild}`, O2)] : [0, 0];
          const at = cell.index * STATES + row;
          const step = 1e-4 * y[at];
          const around = [y[at] + step, y[at] - step].map((mass) => {
            const moved = y.slice();
            moved[at] = mass;
            return ratesAt(cell.index, moved);
          });
          const answer = (name: ProcessName): number => (around[0][ID[name]] - around[1][ID[name]]) / (2 * step);
          const growth = growths.reduce((sum, name) => sum + answer(name), 0);
          for (const [k, name] of ([`slough${guild}`, `lysis${guild}`] as const).entries()) {
            const noise = (1e-7 * (Math.abs(around[0][ID[name]]) + Math.abs(around[1][ID[name]]))) / step + 1e-12;
            expect(Math.abs(answer(name) - shares[k] * growth - byOxygen[k]), `${name} to ${NAMES[row]} in ${cell.kind}`).toBeLessThan(
              0.005 * Math.abs(answer(name)) + noise,
            );
            if (Math.abs(answer(name)) > 100 * noise) followed++;
          }
        }
    data.holdH = 0;
    data.kinetics = kinetics;
    expect(followed).toBeGreaterThan(10);
  });
});
