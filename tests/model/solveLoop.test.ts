// The solver down the loop against one large dense system put together here from the table, the kept derivatives and the links.
import { describe, expect, it } from 'vitest';
import { backSubstitute, factorise } from '../numerics/dense';
import { stream } from '../../src/numerics/streams';
import { CF, ELEMENTS, FLOWING, P, STATES } from '../../src/model/components';
import { contentOf } from '../../src/model/ledger';
import { yieldOf } from '../../src/model/network/matrix';
import { DERIVATIVES, PROCESSES } from '../../src/model/kernel/sizes';
import { DEFINITIONS } from '../../src/model/processes/definitions';
import type { Season } from '../../src/season/season';
import { addCell, derivativesIn, runningIn } from './plainKernel';
import { livedLoop, randomState } from './tinyLoop';

const rig = {
  inflow: {
    pH: 7.4,
    alkalinity_meq_L: 2,
    TAN_mgN_L: 2,
    O2_mg_L: 6,
    NO3_mgN_L: 20,
    SO4_mgS_L: 10,
    PO4_mgP_L: 2,
    solidsCoarse_mg_L: 20,
    solidsFine_mg_L: 6,
  },
  flow_m3_d: 20,
};

/**
 * W as a dense matrix: Σ process column × kept derivative, the moves of solids, and what the links carry. Below the cells stands one
 * row for each: the phosphorus that full films take once phosphorus is solved, which no sink of this step meets.
 */
function denseW(season: Season): Float64Array {
  const { data, matrix } = season.runtime;
  const late = data.cells.length * STATES;
  const n = late + data.cells.length;
  const W = new Float64Array(n * n);
  data.cells.forEach((cell, c) => addCell(W, n, matrix, derivativesIn(cell, data.g, c * DERIVATIVES), c * STATES, late + c));
  for (const { from, to, flow, shear, superfine } of data.links) {
    if (from < 0) continue;
    const rate = flow / data.cells[from].volume;
    for (let i = 0; i < FLOWING; i++) {
      W[(from * STATES + i) * n + from * STATES + i] -= rate;
      if (i === P) W[(late + from) * n + late + from] -= rate;
      if (to < 0) continue;
      const broken = i >= CF && i < CF + 3 ? shear : 0;
      W[(to * STATES + i) * n + from * STATES + i] += rate * (1 - broken);
      if (i === P) W[(to * STATES + P) * n + late + from] += rate;
      if (broken > 0) {
        W[(to * STATES + i + 3) * n + from * STATES + i] += rate * broken * (1 - superfine);
        W[(to * STATES + i + 6) * n + from * STATES + i] += rate * broken * superfine;
      }
    }
  }
  return W;
}

function prepared(season: Season, seed: string, d: number): { rhs: Float64Array; u: Float64Array } {
  const { system } = season.runtime;
  const y = randomState(season, seed);
  const draw = stream(seed, 'rhs');
  system.slope(0.4, y, new Float64Array(y.length), 0);
  expect(system.factor(d)).toBe(true);
  const rhs = Float64Array.from(y, (mass) => (draw() - 0.5) * (0.01 + mass) * d);
  const u = new Float64Array(y.length);
  system.solve(rhs.slice(), u, 0);
  return { rhs, u };
}

describe('the solver down the loop', () => {
  it.each([1, 50, 2000])('solves a chain of stages exactly (d = %f per day)', (d) => {
    const season = livedLoop({
      rig,
      loop: livedLoop().plan.loop.filter(({ kind }) => kind !== 'returnPump' && kind !== 'sump'),
      fish: [],
      actions: [],
      side: [],
    });
    const n = season.state.y.length + season.runtime.data.cells.length;
    for (const seed of ['chain-1', 'chain-2']) {
      const { rhs, u } = prepared(season, seed, d);
      const matrix = denseW(season).map((value) => -value);
      for (let i = 0; i < n; i++) matrix[i * n + i] += d;
      expect(factorise(matrix, 0, n)).toBe(true);
      const exact = new Float64Array(n);
      exact.set(rhs);
      backSubstitute(matrix, 0, n, exact, 0);
      for (let c = 0; c < season.runtime.data.cells.length; c++) exact[c * STATES + P] += exact[u.length + c];
      exact
        .subarray(0, u.length)
        .forEach((value, i) => expect(Math.abs(u[i] - value), `row ${i}`).toBeLessThan(1e-9 * (Math.abs(value) + 1)));
    }
  });

  it('in a loop it solves every cell but the one the water returns to; there it keeps what must be kept', () => {
    const season = livedLoop();
    const { content, matrix, data } = season.runtime;
    for (const d of [5, 300, 5000])
      for (const seed of ['ring-1', 'ring-2', 'ring-3']) {
        const { rhs, u } = prepared(season, seed, d);
        ELEMENTS.forEach((element, e) => {
          let open = 0;
          let size = 0;
          for (let i = 0; i < u.length; i++) {
            open += content[i % STATES][e] * (d * u[i] - rhs[i]);
            size += Math.abs(content[i % STATES][e]) * (Math.abs(d * u[i]) + Math.abs(rhs[i]));
          }
          for (let c = 0; c < data.cells.length; c++) {
            const running = new Float64Array(PROCESSES);
            for (const p of runningIn(data.cells[c])) if (!DEFINITIONS[p].fromOutside) running[p] = data.delta[c * PROCESSES + p];
            open += contentOf(content, yieldOf(matrix, running, 0).fill(0, 0, STATES), e);
          }
          if (size > 0) expect(Math.abs(open) / size, `${element} at d = ${d}`).toBeLessThan(1e-12);
        });
      }
  });
});
