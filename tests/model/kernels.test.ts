// The generated kernels against what they were written from: they are not stale, and whatever parameter is moved, they do what plain
// sums over the columns say: slope, W·u, books.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { COMPONENTS } from '../../src/model/componentList';
import { FLOWING, NAMES, P, STATES } from '../../src/model/components';
import { contentTable } from '../../src/model/content';
import { addExtents } from '../../src/model/kernel/addExtents';
import { applyColumns } from '../../src/model/kernel/applyColumns';
import { factorCell } from '../../src/model/kernel/factorCell';
import { gatherCell } from '../../src/model/kernel/gatherCell';
import { componentsText } from '../../src/model/kernel/generate/componentsText';
import { kernelTexts } from '../../src/model/kernel/generate/kernelTexts';
import { BLOCK, COEFFICIENTS, DERIVATIVES, DIAGONALS, FACTORS, PROCESSES, TABLE_OF } from '../../src/model/kernel/sizes';
import { solveCell } from '../../src/model/kernel/solveCell';
import { layMatrix } from '../../src/model/network/matrix';
import type { Matrix } from '../../src/model/network/matrix';
import { GROUPS, valuesWith } from '../../src/catalogue/values';
import { ID, PROCESS_NAMES } from '../../src/model/processes/catalogue';
import { DEFINITIONS, closedColumns } from '../../src/model/processes/definitions';
import { stream } from '../../src/numerics/streams';
import { backSubstitute, factorise } from '../numerics/dense';
import { addCell, derivativesIn, everythingIn, moveRate, runningIn, slopeOf } from './plainKernel';
import { livedLoop } from './tinyLoop';

const { cells } = livedLoop().runtime.assembly;
const everything = everythingIn(cells[0]);
/** A cell of each kind as it is forced in a loop, and one in which everything runs. */
const kinds = [...cells, everything];

const drawn = (seed: string, length: number, size = 1): Float64Array => {
  const draw = stream(seed, 'kernels');
  return Float64Array.from({ length }, () => size * (draw() - 0.5));
};
const matrixWith = (parameters: Readonly<Record<string, number>>): Matrix => {
  const values = valuesWith(parameters);
  return layMatrix(closedColumns(values, contentTable(values)));
};
/** Every parameter record that a run may replace, whatever its range, at a value that nothing was recorded at. */
const overrides = Object.entries(GROUPS).flatMap(([group, parameters]) =>
  Object.entries(parameters)
    .filter(([, record]) => !('fixed' in record))
    .map(([name, { value }]) => [`${group}.${name}`, value === 0 ? 0.0173 : 1.237 * value] as const),
);

/** Agreement to rounding against the size of what is summed. */
function expectClose(given: Float64Array, expected: Float64Array, size: number, what: (i: number) => string): void {
  given.forEach((value, i) => {
    if (!(Math.abs(value - expected[i]) <= 1e-12 * (size + Math.abs(expected[i]))))
      throw new Error(`${what(i)}: ${value} against ${expected[i]}`);
  });
}

function checkSlope(matrix: Matrix, cell: typeof everything, seed: string): void {
  const y = drawn(`${seed} y`, STATES, 40).map(Math.abs);
  const running = new Set(runningIn(cell));
  // What cannot run has nothing among the rates.
  const rates = drawn(`${seed} r`, PROCESSES, 3).map((rate, p) => (running.has(p) ? rate : 0));
  const out = new Float64Array(STATES);
  applyColumns(cell, 1 / cell.volume, matrix.table, y, rates, 0, out, 0);
  DEFINITIONS.forEach((definition, p) => {
    if (running.has(p) && definition.moves) expect(rates[p]).toBeCloseTo(moveRate(cell, definition) * y[definition.moves.of], 9);
  });
  expectClose(out, slopeOf(matrix, rates), 10, (row) => `${seed}: slope of ${NAMES[row]}`);
}

function checkSolve(matrix: Matrix, cell: typeof everything, seed: string, d = 30, outflow = 7): void {
  const g = drawn(`${seed} g`, DERIVATIVES, 2).map(Math.abs);
  const [own, w, lu] = [new Float64Array(DIAGONALS), new Float64Array(BLOCK), new Float64Array(FACTORS)];
  gatherCell(cell, 1 / cell.volume, outflow, matrix.table, g, 0, own, 0, w, 0);
  expect(factorCell(cell, outflow, d, false, own, 0, w, 0, lu, 0)).toBe(true);
  const rhs = drawn(`${seed} rhs`, STATES, 20);
  const [u, delta] = [new Float64Array(STATES), new Float64Array(PROCESSES)];
  expect(solveCell(cell, 1 / cell.volume, false, matrix.table, g, 0, w, 0, lu, 0, rhs.slice(), u, 0, delta, 0)).toBe(0);
  const derivatives = derivativesIn(cell, g, 0);
  const n = STATES + 1;
  const W = new Float64Array(n * n);
  addCell(W, n, matrix, derivatives, 0, STATES);
  const system = W.map((value) => -value);
  for (let i = 0; i < n; i++) system[i * n + i] += d + (i < FLOWING || i === STATES ? outflow : 0);
  expect(factorise(system, 0, n)).toBe(true);
  const exact = new Float64Array(n);
  exact.set(rhs);
  backSubstitute(system, 0, n, exact, 0);
  const moved = Float64Array.from(derivatives, (to) => to.reduce((sum, derivative, row) => sum + derivative * exact[row], 0));
  exact[P] += exact[STATES];
  expectClose(u, exact.subarray(0, STATES), 1, (row) => `${seed}: solution of ${NAMES[row]}`);
  expectClose(delta, moved, 1, (p) => `${seed}: W·u of ${PROCESS_NAMES[p]}`);
}

describe('the generated files', () => {
  const files = Object.entries({ 'components.ts': componentsText(), ...kernelTexts() });

  it.each(files)('%s is what `npm run kernels` writes', (path, text) => {
    expect(readFileSync(new URL(`../../src/model/${path}`, import.meta.url), 'utf8')).toBe(text);
  });

  it("read from a season's table what depends on parameters, and only that", () => {
    expect(TABLE_OF.length).toBeGreaterThan(50);
    expect(TABLE_OF.length).toBeLessThan(COEFFICIENTS / 2);
  });

  it('say where every component and process stands', () => {
    expect(NAMES).toEqual(COMPONENTS.map(({ name }) => name));
    DEFINITIONS.forEach(({ id }, p) => expect(ID[id]).toBe(p));
    expect(DEFINITIONS.length).toBe(PROCESSES);
  });
});

describe('the kernels', () => {
  it('do to the slope what the columns say, in every kind of cell', () => {
    const matrix = matrixWith({});
    kinds.forEach((cell, i) => checkSlope(matrix, cell, `kind ${i} ${cell.kind}`));
  });

  it('solve a cell as the columns times the kept derivatives say, in every kind of cell', () => {
    const matrix = matrixWith({});
    kinds.forEach((cell, i) => {
      for (const d of [3, 200]) checkSolve(matrix, cell, `kind ${i} ${cell.kind} d ${d}`, d);
    });
  });

  it(`do so under an override of every parameter (${overrides.length} of them)`, () => {
    expect(overrides.length).toBeGreaterThan(200);
    // What columns are closed from. Who moves none of it is all the same to the kernels: they see a season's numbers through its matrix.
    const closedFrom = (parameters: Readonly<Record<string, number>>): string => {
      const values = valuesWith(parameters);
      return JSON.stringify([contentTable(values), DEFINITIONS.map(({ fixed }) => fixed(values))]);
    };
    const recorded = closedFrom({});
    let moved = 0;
    for (const [path, value] of overrides) {
      if (closedFrom({ [path]: value }) === recorded) continue;
      const matrix = matrixWith({ [path]: value });
      moved++;
      checkSlope(matrix, everything, path);
      checkSolve(matrix, everything, path);
    }
    expect(moved).toBeGreaterThan(40);
  });

  it('do so with all parameters moved at once', () => {
    const draw = stream('kernels', 'all');
    for (let i = 0; i < 5; i++) {
      const matrix = matrixWith(Object.fromEntries(overrides.map(([path, value]) => [path, value * (0.8 + 0.3 * draw())])));
      checkSlope(matrix, everything, `all ${i}`);
      checkSolve(matrix, everything, `all ${i}`);
    }
  });

  it('leave the slope alone where nothing runs', () => {
    const out = new Float64Array(STATES);
    applyColumns(everything, 1, matrixWith({}).table, new Float64Array(STATES), new Float64Array(PROCESSES), 0, out, 0);
    expect(out.every((change) => change === 0)).toBe(true);
  });

  it('book what can run, and nothing else', () => {
    for (const cell of kinds) {
      const one = new Float64Array(PROCESSES).fill(1);
      const extents = new Float64Array(PROCESSES);
      addExtents(cell, extents, one, one, one, 0.5, 0);
      const running = new Set(runningIn(cell));
      extents.forEach((extent, p) => expect(extent, PROCESS_NAMES[p]).toBe(running.has(p) ? 1.5 : 0));
    }
  });
});
