// Every sink stops when its own reactant is gone: nothing is breathed, eaten or taken up that is not there.
import { describe, expect, it } from 'vitest';
import { ALK, IC, NAMES, STATES } from '../../src/model/components';
import { ratesIn } from '../../src/model/kernel/rates';
import { enterCell, makeWorkspace } from '../../src/model/network/slope';
import { ID, PROCESSES } from '../../src/model/processes/catalogue';
import { DEFINITIONS } from '../../src/model/processes/definitions';
import { runningIn } from './plainKernel';
import { livedLoop, randomState } from './tinyLoop';

/** Carbon and alkalinity bear the balance of what else reacts: alkalinity may fall below zero, carbon comes back from the air. */
const BALANCE: ReadonlySet<number> = new Set([ALK, IC]);
/** Traces (g per unit of the process) that a process takes from the water without asking; what that clips is booked. */
const TRACE = 0.02;
/** Share of its full rate that is left when a reactant is gone. */
const NEGLIGIBLE = 1e-6;
/** Leaks and steady doses, and an index, take nothing that can run out; moves are first order in what they move. */
const BOUNDLESS = new Set(['rootRelaxation', 'oxygenTransfer', 'carbonDioxideTransfer', 'nitrogenTransfer']);

describe('with a reactant gone', () => {
  const season = livedLoop();
  const { data, assembly, matrix } = season.runtime;
  const w = makeWorkspace(data);
  function rate(cell: number, p: number, y: Float64Array): number {
    enterCell(w, data, cell, y, 0);
    w.light = 1.3;
    ratesIn([w], data);
    return data.r0[cell * PROCESSES + p];
  }

  it.each(DEFINITIONS.filter(({ id, moves }) => !moves && !BOUNDLESS.has(id)).map(({ id }) => [id]))('%s stops', (name) => {
    const p = ID[name];
    const { rows, coefficients } = matrix.columns[p];
    for (const cell of assembly.cells) {
      if (!runningIn(cell).includes(p)) continue;
      const y = randomState(season, `vanishing ${name}`);
      const full = rate(cell.index, p, y);
      rows.forEach((row, i) => {
        if (row >= STATES || BALANCE.has(row) || coefficients[i] >= -TRACE) return;
        const without = y.slice();
        without[cell.index * STATES + row] = 0;
        const left = rate(cell.index, p, without);
        expect(Math.abs(left), `${name} without ${NAMES[row]} in ${cell.kind}: ${left} of ${full}`).toBeLessThanOrEqual(
          NEGLIGIBLE * Math.abs(full) + 1e-12,
        );
      });
    }
  });
});
