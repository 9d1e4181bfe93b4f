// Writes the files of numbers: ids of processes, places of kept derivatives and of table coefficients, sizes of the work arrays.
import { FAMILIES } from '../../processes/families';
import type { Family } from '../../processes/families';
import { whereOf } from '../../processes/definitions';
import { WHERE } from '../../processes/where';
import { factorPlan } from './factorPlan';
import { broken, fileOf, imported, opening } from './lines';
import { byWhere, idOf } from './kernelPlan';
import type { KernelPlan } from './kernelPlan';

const exported = (names: readonly string[], from = 0): string[] =>
  names.length === 0 ? [] : broken(`export const ${names.map((name, i) => `${name} = ${from + i}`).join(', ')};`);

export function idsText(plan: KernelPlan): string {
  let from = 0;
  return fileOf([
    ...opening('The place of every process among the rates of a cell, by its id, under the condition that it runs on.'),
    ...byWhere(plan, () => true).flatMap(({ where, processes }) => {
      const lines = [
        `// --- ${where}${WHERE[where] ? `: ${WHERE[where]}` : ''}`,
        ...exported(
          processes.map((p) => idOf(plan, p)),
          from,
        ),
      ];
      from += processes.length;
      return lines;
    }),
  ]);
}

export const keptText = (plan: KernelPlan): string =>
  fileOf([
    ...opening('The place of every kept derivative among those of a cell: of a process to a component, or its share of what it follows.'),
    ...plan.definitions.flatMap(({ id }) => {
      const names = plan.kept.filter((name) => name.startsWith(`${id}_`));
      return exported(names, plan.kept.indexOf(names[0]));
    }),
  ]);

export const tableText = (plan: KernelPlan): string =>
  fileOf([
    ...opening('The place of every coefficient that depends on parameters in the table that a season fills; equal ones share one.'),
    ...plan.definitions.flatMap(({ id }, p) => {
      const own = plan.coefficients.table.filter(({ process }) => process === p);
      return own.length === 0
        ? []
        : [
            `// --- ${id}`,
            ...exported(
              own.map(({ name }) => name),
              plan.coefficients.table.indexOf(own[0]),
            ),
          ];
    }),
  ]);

export function sizesText(plan: KernelPlan): string {
  const { numbers } = factorPlan(plan);
  const { block, diagonals } = plan;
  const { of, table } = plan.coefficients;
  const pairs = table.map(({ process, row }) => `[${process}, ${row}]`).join(', ');
  return fileOf([
    ...opening("How much room a cell's numbers take, and which coefficients stand in the table."),
    `export const PROCESSES = ${plan.definitions.length};`,
    `/** Kept derivatives; entries of the dense block; diagonals of what is solved alone; numbers kept of a factorised cell. */`,
    `export const DERIVATIVES = ${plan.kept.length}, BLOCK = ${block.length}, DIAGONALS = ${diagonals.length}, FACTORS = ${numbers};`,
    '',
    '/** Process and component of each coefficient in the table. */',
    ...broken(`export const TABLE_OF: readonly (readonly [process: number, component: number])[] = [${pairs}];`),
    `/** Coefficients in all columns; those that are the same whatever the parameters are written into the kernels. */`,
    `export const COEFFICIENTS = ${of.reduce((sum, rows) => sum + rows.size, 0)};`,
  ]);
}

/** Where processes run, as functions. */
export const whereText = (): string =>
  fileOf([
    ...opening('Whether the processes of each place run in a cell.'),
    ...imported(['Cell'], '../cell', true),
    ...imported(['Where'], '../processes/where', true),
    '',
    'export const RUNS: Readonly<Record<Where, (cell: Cell) => boolean>> = {',
    ...Object.entries(WHERE).map(([where, condition]) => `  ${where}: (${condition ? 'cell' : ''}) => ${condition || 'true'},`),
    '};',
  ]);

/** A function's name; where sources are joined, one that stands there twice carries a number. */
const nameOf = (rates: Family['rates']): string => rates.name.replace(/\$\d+$/, '');

/** The rate functions of the families, each called where any of its processes runs. */
export function ratesText(families: readonly Family[] = FAMILIES): string {
  return fileOf([
    ...opening(
      "All rates of some cells, family by family, not cell by cell: the code of all of them does not fit a processor's nearest",
      'cache, that of one does.',
    ),
    ...families.flatMap(({ file, rates }) => imported([nameOf(rates)], `../processes/${file}`)),
    ...imported(['RateNumbers', 'Workspace'], '../processes/workspace', true),
    '',
    '/** Writes the rates, and at stage 0 the kept derivatives, of the cells that the workspaces are in. */',
    'export function ratesIn(spaces: readonly Workspace[], numbers: RateNumbers): void {',
    '  const n = spaces.length;',
    ...families.flatMap(({ rates, definitions }) => {
      // The moves of solids are the kernel's own.
      const conditions = [...new Set(definitions.filter(({ moves }) => !moves).map((definition) => WHERE[whereOf(definition)]))];
      const alone = conditions.length === 1 ? conditions[0].replaceAll('cell.', 'spaces[c].cell.') : '';
      return [
        `  for (let c = 0; c < n; c++) ${alone ? `if (${alone}) ` : ''}${nameOf(rates)}(spaces[c]${rates.length > 1 ? ', numbers' : ''});`,
      ];
    }),
    '}',
  ]);
}
