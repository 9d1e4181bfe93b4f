// Writes the solving of one cell's (d I − W) u = rhs: what is solved alone, stage by stage, the dense block, what its solution gives on.
import { FAST, FLOWING, LASTING, O2, STATES } from '../../components';
import { carriedPlace, factorPlan, key, restingPlace } from './factorPlan';
import { constants, fileOf, imported, indented, opening, packed, signature, within } from './lines';
import { byWhere, drivenBy, idOf, isFast, lastOf, moveRate, row, termOf } from './kernelPlan';
import type { KernelPlan, Lone } from './kernelPlan';
import { Recurring, isEmpty } from './sums';
import type { Sum, Term } from './sums';

const solved = (component: number): string => `u_${row(component)}`;

/** Adds what processes do to the right-hand sides of the rows that are solved later, and to the solution of what is solved already. */
function handOn(
  terms: (component: number) => Term[],
  done: ReadonlySet<number>,
  own: ReadonlySet<number>,
  taken: readonly string[],
): string[] {
  const sums = Array.from({ length: STATES }, (_, component) => component)
    .filter((component) => !own.has(component))
    .flatMap((component): (Sum & { late: boolean })[] => {
      const all = terms(component);
      if (isEmpty(all)) return [];
      const late = done.has(component);
      // What comes late moves on with the water alone, and meets no sink in this step.
      if (late && !LASTING.includes(component)) throw new Error(`${row(component)} is solved before what gives to it`);
      return [{ target: late ? `u[o + ${row(component)}]` : `rhs[o + ${row(component)}]`, terms: all, late }];
    });
  const recurring = new Recurring(sums, taken);
  return [
    ...recurring.lines,
    ...sums.map((sum) => (sum.late ? `${sum.target} += (${recurring.value(sum.terms)}) * carried;` : recurring.add(sum))),
  ];
}

/** One stage: components solved alone, none of which gives to another. */
function stageLines(plan: KernelPlan, stage: readonly Lone[], done: Set<number>): string[] {
  const lines = constants(
    stage.map(
      ({ component, diagonal }) => `${solved(component)} = u[o + ${row(component)}] = rhs[o + ${row(component)}] * lu[lo + ${diagonal}]`,
    ),
  );
  const own = new Set(stage.map(({ component }) => component));
  const driven = stage.flatMap(({ component }) =>
    drivenBy(plan, component).map(({ process, opposite }) => ({ component, process, opposite })),
  );
  for (const { condition, where } of byWhere(plan, (_, p) => driven.some(({ process }) => process === p))) {
    const here = driven.filter(({ process }) => (plan.definitions[process].where ?? 'everywhere') === where);
    const clearing = [...new Set(here.map(({ process }) => moveRate(plan.definitions[process])).filter((text) => text.includes(' * ')))];
    const body = [
      ...constants([
        ...clearing.map((constant) => `cleared = ${constant}`),
        ...here.map(({ component, process }) => {
          const { id, moves } = plan.definitions[process];
          const derivative = moves
            ? moveRate(plan.definitions[process]).includes(' * ')
              ? 'cleared'
              : moveRate(plan.definitions[process])
            : `g[go + KEPT.${id}_${row(component)}]`;
          return `${id} = ${derivative} * ${solved(component)}`;
        }),
      ]),
      ...packed(
        here.flatMap(({ process, opposite }) => [
          `delta[ro + ID.${idOf(plan, process)}] += ${idOf(plan, process)};`,
          ...(opposite === undefined ? [] : [`delta[ro + ID.${idOf(plan, opposite)}] -= ${idOf(plan, process)};`]),
        ]),
      ),
      ...handOn(
        (component) =>
          here.flatMap(({ component: of, process, opposite }) =>
            of === component
              ? []
              : [
                  ...termOf(plan, process, component, idOf(plan, process)),
                  ...(opposite === undefined ? [] : termOf(plan, opposite, component, idOf(plan, process), -1)),
                ],
          ),
        done,
        new Set(),
        here.map(({ process }) => idOf(plan, process)),
      ),
    ];
    lines.push(`// --- ${where}`, ...within(condition || 'true', body));
  }
  for (const component of own) done.add(component);
  return lines.map((line) => (line === 'if (true) {' ? '{' : line));
}

/** Forward and back substitution. */
function blockLines(plan: KernelPlan): string[] {
  const { steps, changed, places } = factorPlan(plan);
  const lines: string[] = [];
  steps.forEach(({ pivot }, n) => {
    const off = steps
      .slice(0, n)
      .filter(({ below }) => below.includes(pivot))
      .map((step) => ` - lu[lo + ${places.get(`L ${key(pivot, step.pivot)}`)}] * b_${row(step.pivot)}`);
    lines.push(
      `const b_${row(pivot)} = ${pivot === O2 ? `(held ? 0 : rhs[o + ${row(pivot)}])` : `rhs[o + ${row(pivot)}]`}${off.join('')};`,
    );
  });
  for (const { pivot, right } of [...steps].reverse()) {
    const off = right.map((column) =>
      changed.has(key(pivot, column))
        ? ` - lu[lo + ${places.get(`U ${key(pivot, column)}`)}] * ${solved(column)}`
        : ` + w[wo + ${plan.block.indexOf(pivot * FAST + column)}] * ${solved(column)}`,
    );
    const all = off.length === 0 ? `b_${row(pivot)}` : `(b_${row(pivot)}${off.join('')})`;
    lines.push(`const ${solved(pivot)} = u[o + ${row(pivot)}] = ${all} * lu[lo + ${places.get(`D ${pivot}`)}];`);
  }
  return lines;
}

/** What each process of the block does by its solution: to the books, and on to the rows outside the block. */
function spreadLines(plan: KernelPlan, done: ReadonlySet<number>): string[] {
  const block = new Set(Array.from({ length: FAST }, (_, i) => i));
  return byWhere(plan, isFast).flatMap(({ where, condition, processes }) => {
    // What is followed comes before what follows it.
    const sorted = [...processes.filter((p) => !plan.definitions[p].follows), ...processes.filter((p) => plan.definitions[p].follows)];
    const moved = sorted.flatMap((p): string[] => {
      const { id, fast, follows, opposes } = plan.definitions[p];
      const opposed = plan.definitions.some((definition) => definition.opposes === id);
      const own = fast?.map((component) => `g[go + KEPT.${id}_${row(component)}] * ${solved(component)}`).join(' + ');
      const share = follows ? `g[go + KEPT.${id}_share] * ${follows.length > 1 ? `(${follows.join(' + ')})` : follows[0]}` : undefined;
      const against = opposes && plan.definitions.find((definition) => definition.id === opposes)?.fast ? ` - ${opposes}_own` : '';
      const lines = opposed && own ? [`${id}_own = ${own}`] : [];
      const parts = [share, opposed && own ? `${id}_own` : own].filter((part) => part !== undefined).join(' + ');
      return [...lines, `${id} = ${parts || '0'}${against}`];
    });
    return [
      `// --- ${where}: what the block's processes do`,
      ...within(condition || 'true', [
        ...constants(moved),
        ...packed(sorted.map((p) => `delta[ro + ID.${idOf(plan, p)}] += ${idOf(plan, p)};`)),
        ...handOn(
          (component) => sorted.flatMap((p) => termOf(plan, p, component, idOf(plan, p))),
          done,
          block,
          sorted.map((p) => idOf(plan, p)),
        ),
      ]).map((line) => (line === 'if (true) {' ? '{' : line)),
    ];
  });
}

/** The rows that nothing solves alone: water carries them off, or they rest. */
const lastLines = (plan: KernelPlan): string[] =>
  packed(
    lastOf(plan).map(
      (component) => `u[o + ${row(component)}] = rhs[o + ${row(component)}] * ${component < FLOWING ? 'carried' : 'resting'};`,
    ),
  );

export function solveText(plan: KernelPlan): string {
  const done = new Set<number>();
  const before = plan.before.flatMap((stage) => stageLines(plan, stage, done));
  const block = blockLines(plan);
  const spread = spreadLines(plan, done);
  for (let i = 0; i < FAST; i++) done.add(i);
  const after = plan.after.flatMap((stage) => stageLines(plan, stage, done));
  const drawn = plan.block
    .filter((entry) => Math.floor(entry / FAST) === O2 && entry % FAST !== O2)
    .map((entry) => `w[wo + ${plan.block.indexOf(entry)}] * ${solved(entry % FAST)}`);
  const body = [
    `const carried = lu[lo + ${carriedPlace(plan)}], resting = lu[lo + ${restingPlace(plan)}];`,
    '// --- alone before the block: their sinks take from it or give to it',
    ...before,
    '// --- the block',
    ...block,
    ...spread,
    '// --- alone after it',
    ...after,
    '// --- carried off, or at rest',
    ...lastLines(plan),
    `return held ? -(rhs[o + ${row(O2)}] + ${drawn.join(' + ')}) : 0;`,
  ];
  const used = Array.from({ length: STATES }, (_, component) => component).filter((component) =>
    body.some((line) => line.includes(`+ ${row(component)}]`)),
  );
  return fileOf([
    ...opening('Solves (d I − W) u = rhs of one cell.'),
    ...imported(['Cell'], '../cell', true),
    ...imported(used.map(row), '../components'),
    ...imported(['ID', 'KEPT', 'TABLE'], '../processes/catalogue'),
    '',
    '/**',
    " * Solves one cell: right-hand sides (overwritten) and solution begin at `o`. Adds each process's part of W·u to `delta` from `ro`.",
    " * @param v 1/volume @param m the matrix's table @param held whether a rig holds oxygen",
    ' * @returns what that hold adds to balance what is drawn on it, g/d',
    ' */',
    ...signature(
      'solveCell',
      ['cell: Cell', 'v', 'held: boolean', 'm[]', 'g[]', 'go', 'w[]', 'wo', 'lu[]', 'lo', 'rhs[]', 'u[]', 'o', 'delta[]', 'ro'],
      'number',
    ),
    ...indented(body),
    '}',
  ]);
}
