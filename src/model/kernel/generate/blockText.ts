// Writes how a cell's part of W is gathered from the kept derivatives: diagonals of what is solved alone, and the dense block.
import { FAST, FLOWING } from '../../components';
import { constants, fileOf, imported, indented, opening, signature, within } from './lines';
import { byWhere, conditionOf, row, termOf } from './kernelPlan';
import type { KernelPlan, Loss } from './kernelPlan';
import { Recurring } from './sums';
import type { Sum, Term } from './sums';

const lossTerms = (losses: readonly Loss[]): Term[] =>
  losses.map(({ sign, coefficient, derivative }) => ({ sign, coefficient, factor: derivative }));

/** What stands on the diagonals of what is solved alone: what water carries off, and every kept sink. */
function diagonalLines(plan: KernelPlan): string[] {
  return plan.diagonals.flatMap(({ component, losses, diagonal }) => {
    const target = `own[oo + ${diagonal}]`;
    const base: Term[] = component < FLOWING ? [{ sign: 1, coefficient: '', factor: 'outflow' }] : [];
    const named = plan.lones
      .filter((lone) => lone.diagonal === diagonal)
      .map((lone) => row(lone.component))
      .join(', ');
    const always = losses.filter(({ process }) => plan.definitions[process].moves || conditionOf(plan.definitions[process]) === '');
    const others = losses.filter((loss) => !always.includes(loss));
    const conditions = [...new Set(others.map(({ process }) => conditionOf(plan.definitions[process])))];
    const text = new Recurring([], []);
    return [
      `// ${named}`,
      text.set({ target, terms: [...base, ...lossTerms(always)] }),
      ...conditions.map((condition) => {
        const here = others.filter(({ process }) => conditionOf(plan.definitions[process]) === condition);
        return `if (${condition}) ${text.add({ target, terms: lossTerms(here) })}`;
      }),
    ];
  });
}

/** Local names of the shares of what follows, and the columns of what is followed with those of its followers. */
interface Followed {
  lines: string[];
  names: ReadonlyMap<string, string>;
}

function followersOf(plan: KernelPlan, process: number): number[] {
  const { id } = plan.definitions[process];
  return plan.definitions.flatMap(({ follows }, p) => (follows?.includes(id) ? [p] : []));
}

const shareOf = (plan: KernelPlan, process: number): string => `${plan.definitions[process].id}_share`;

/** The whole column of each process that others follow, in the rows of the block. */
function followedColumns(plan: KernelPlan, processes: readonly number[]): Followed {
  const names = new Map<string, string>();
  const lines: string[] = [];
  const known = new Map<string, string>();
  const define = (name: string, terms: readonly Term[]): string => {
    const text = new Recurring([], []).value(terms);
    if (/^-?\w+$/.test(text)) return text;
    const found = known.get(text);
    if (found !== undefined) return found;
    known.set(text, name);
    lines.push(`const ${name} = ${text};`);
    return name;
  };
  const followers = [...new Set(processes.flatMap((p) => followersOf(plan, p)))];
  lines.push(...constants(followers.map((follower) => `${shareOf(plan, follower)} = g[go + KEPT.${shareOf(plan, follower)}]`)));
  for (const process of processes) {
    const behind = followersOf(plan, process);
    if (behind.length === 0) continue;
    const together = processes.filter((other) => followersOf(plan, other).join() === behind.join()).length > 1;
    for (let component = 0; component < FAST; component++) {
      const own = termOf(plan, process, component, '1').map((term): Term =>
        term.coefficient === '' ? term : { ...term, coefficient: '', factor: term.coefficient },
      );
      const followed = behind.flatMap((p) => termOf(plan, p, component, shareOf(plan, p)));
      if (followed.length === 0 && own.length === 0) continue;
      const key = `${process} ${component}`;
      if (followed.length === 0) {
        names.set(key, '');
        continue;
      }
      const shared: Term[] = together
        ? [{ sign: 1, coefficient: '', factor: define(`${plan.definitions[behind[0]].id}_${row(component)}`, followed) }]
        : followed;
      names.set(key, define(`${plan.definitions[process].id}_${row(component)}`, [...own, ...shared]));
    }
  }
  return { lines, names };
}

/** The sums of one column of the block: what every row answers to one component. */
function columnSums(plan: KernelPlan, processes: readonly number[], column: number, names: ReadonlyMap<string, string>): Sum[] {
  return plan.block
    .filter((entry) => entry % FAST === column)
    .map((entry): Sum => {
      const component = (entry - column) / FAST;
      const terms = processes.flatMap((p): Term[] => {
        const factor = `${plan.definitions[p].id}`;
        const name = names.get(`${p} ${component}`);
        const opposite = plan.definitions.findIndex(({ opposes }) => opposes === plan.definitions[p].id);
        const own: Term[] = name
          ? [{ sign: name.startsWith('-') ? -1 : 1, coefficient: name.replace(/^-/, ''), factor }]
          : termOf(plan, p, component, factor);
        return [...own, ...(opposite < 0 ? [] : termOf(plan, opposite, component, factor, -1))];
      });
      return { target: `w[wo + ${plan.block.indexOf(entry)}]`, terms };
    });
}

function blockLines(plan: KernelPlan): string[] {
  const groups = byWhere(plan, ({ fast }) => fast !== undefined);
  const everywhere = groups.find(({ where }) => where === 'everywhere')?.processes ?? [];
  const { lines, names } = followedColumns(plan, everywhere);
  const rest = groups.filter(({ where }) => where !== 'everywhere');
  const columnOf = (processes: readonly number[], column: number, add: boolean): string[] => {
    const own = processes.filter((p) => plan.definitions[p].fast?.includes(column));
    const sums = columnSums(plan, own, column, names).filter(({ terms }) => !add || terms.length > 0);
    if (sums.length === 0) return [];
    const recurring = new Recurring(
      sums,
      own.map((p) => plan.definitions[p].id),
    );
    return [
      `// answers to ${row(column)}`,
      '{',
      ...indented([
        ...constants(own.map((p) => `${plan.definitions[p].id} = g[go + KEPT.${plan.definitions[p].id}_${row(column)}]`)),
        ...recurring.lines,
        ...sums.map((sum) => (add ? recurring.add(sum) : recurring.set(sum))),
      ]),
      '}',
    ];
  };
  for (const { processes } of rest)
    for (const p of processes)
      if (followersOf(plan, p).length > 0) throw new Error(`process ${plan.definitions[p].id} is followed and must run everywhere`);
  const columns = Array.from({ length: FAST }, (_, column) => column);
  return [
    '// What is followed, with what follows it.',
    ...lines,
    ...columns.flatMap((column) => columnOf(everywhere, column, false)),
    ...rest.flatMap(({ where, condition, processes }) => [
      `// --- ${where}`,
      ...within(
        condition,
        columns.flatMap((column) => columnOf(processes, column, true)),
      ),
    ]),
  ];
}

export function blockText(plan: KernelPlan): string {
  return fileOf([
    ...opening("A cell's part of W, gathered from the kept derivatives: whole columns times derivatives."),
    ...imported(['Cell'], '../cell', true),
    ...imported(['KEPT', 'TABLE'], '../processes/catalogue'),
    '',
    '/**',
    ' * Writes what stands on the diagonals of components solved alone to `own` from `oo`, entries of the dense block to `w` from `wo`.',
    ' * @param v 1/volume @param outflow 1/d that water carries off',
    " * @param m the matrix's table @param g kept derivatives, the cell's from `go`",
    ' */',
    ...signature('gatherCell', ['cell: Cell', 'v', 'outflow', 'm[]', 'g[]', 'go', 'own[]', 'oo', 'w[]', 'wo'], 'void'),
    ...indented([...diagonalLines(plan), ...blockLines(plan)]),
    '}',
  ]);
}
