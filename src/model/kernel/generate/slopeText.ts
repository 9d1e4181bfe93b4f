// Writes what all processes of a cell do to its slope, and the books of what each has done.
import { STATES } from '../../components';
import { constants, fileOf, imported, indented, opening, packed, signature, within } from './lines';
import { byWhere, idOf, moveRate, row, termOf } from './kernelPlan';
import type { KernelPlan } from './kernelPlan';
import { Recurring } from './sums';
import type { Sum } from './sums';

/** Reads (or, for moves, works out) the rates of some processes. */
function rateLines(plan: KernelPlan, processes: readonly number[]): string[] {
  const clearing = [...new Set(processes.map((p) => moveRate(plan.definitions[p])).filter((text) => text.includes(' * ')))];
  const nameOf = (constant: string): string => (clearing.includes(constant) ? 'cleared' : constant);
  if (clearing.length > 1) throw new Error('moves under one condition must go at one constant');
  return [
    ...constants([
      ...clearing.map((constant) => `cleared = ${constant}`),
      ...processes.map((p) => {
        const { id, moves } = plan.definitions[p];
        return moves
          ? `${id} = r[ro + ID.${id}] = ${nameOf(moveRate(plan.definitions[p]))} * y[o + ${row(moves.of)}]`
          : `${id} = r[ro + ID.${id}]`;
      }),
    ]),
  ];
}

/** What some rates add to every row. */
export const rowSums = (plan: KernelPlan, processes: readonly number[], target: (component: number) => string): Sum[] =>
  Array.from({ length: STATES }, (_, component): Sum => ({
    target: target(component),
    terms: processes.flatMap((p) => termOf(plan, p, component, idOf(plan, p))),
  })).filter(({ terms }) => terms.length > 0);

export function slopeText(plan: KernelPlan): string {
  const body = byWhere(plan, () => true).flatMap(({ where, condition, processes }) => {
    const sums = rowSums(plan, processes, (component) => `out[o + ${row(component)}]`);
    const recurring = new Recurring(
      sums,
      processes.map((p) => idOf(plan, p)),
    );
    return [
      `// --- ${where}`,
      ...within(condition, [...rateLines(plan, processes), ...recurring.lines, ...packed(sums.map((sum) => recurring.add(sum)))]),
    ];
  });
  const used = Array.from({ length: STATES }, (_, component) => component).filter((component) =>
    body.some((line) => new RegExp(`\\+ ${row(component)}\\]`).test(line)),
  );
  return fileOf([
    ...opening('What all processes of a cell do to its slope: each rate times its whole column.'),
    ...imported(['Cell'], '../cell', true),
    ...imported(used.map(row), '../components'),
    ...imported(['ID', 'TABLE'], '../processes/catalogue'),
    '',
    '/**',
    ' * Adds all rates of a cell to its slope, and works out those of the moves of solids.',
    " * @param v 1/volume @param m the matrix's table; state and slope begin at `o`, rates at `ro`",
    ' */',
    ...signature('applyColumns', ['cell: Cell', 'v', 'm[]', 'y[]', 'r[]', 'ro', 'out[]', 'o'], 'void'),
    ...indented(body),
    '}',
  ]);
}

/** Ranges of processes under one condition, since those stand together. */
export function booksText(plan: KernelPlan): string {
  return fileOf([
    ...opening('The books of what each process of a cell has done: its extents.'),
    ...imported(['Cell'], '../cell', true),
    ...imported(['addThreeStretch'], '../../numerics/vectors'),
    '',
    "/** Adds `half` × (rates of both stages + corrections) to the extents of what can run; the cell's begin at `o`. */",
    ...signature('addExtents', ['cell: Cell', 'extents[]', 'r0[]', 'r1[]', 'delta[]', 'half', 'o'], 'void'),
    ...indented(
      byWhere(plan, () => true).map(({ condition, processes }) => {
        const range = `o + ${processes[0]}, o + ${processes[0] + processes.length}`;
        return `${condition ? `if (${condition}) ` : ''}addThreeStretch(extents, r0, r1, delta, half, ${range});`;
      }),
    ),
    '}',
  ]);
}
