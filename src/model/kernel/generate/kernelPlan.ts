// What the texts of the kernels are written from: processes and coefficients, which components are solved alone and in which order,
// the entries of the dense block, and where all of it stands.
import { FAST, FLOWING, LASTING, NAMES, STATES } from '../../components';
import type { Definition } from '../../processes/definition';
import { DEFINITIONS, whereOf } from '../../processes/definitions';
import { WHERE } from '../../processes/where';
import type { Where } from '../../processes/where';
import { findCoefficients } from './coefficients';
import type { Coefficient, Coefficients } from './coefficients';
import type { Term } from './sums';

/** What one process loses of a component that is solved alone: text of its kept derivative, and its coefficient there. */
export interface Loss {
  process: number;
  coefficient: string;
  derivative: string;
  sign: 1 | -1;
}
/** A component solved alone: the process sinks that stand on its diagonal. */
export interface Lone {
  component: number;
  losses: readonly Loss[];
  diagonal: number;
}

export interface KernelPlan {
  definitions: readonly Definition[];
  coefficients: Coefficients;
  /** kept derivatives by name, in order: `process_COMPONENT`, `process_share` */
  kept: readonly string[];
  lones: readonly Lone[];
  /** lone components in stages, those before the dense block and those after it; within a stage none gives to another */
  before: readonly (readonly Lone[])[];
  after: readonly (readonly Lone[])[];
  /** distinct diagonals of lone components: the first of them, whose losses it is */
  diagonals: readonly Lone[];
  /** entries of the dense block that may differ from nothing, as row × FAST + column, in order */
  block: readonly number[];
}

export const row = (component: number): string => NAMES[component];
export const idOf = (plan: KernelPlan, process: number): string => plan.definitions[process].id;
export const placeOf = (plan: KernelPlan, id: string): number => plan.definitions.findIndex((definition) => definition.id === id);
export const conditionOf = (definition: Definition): string => WHERE[whereOf(definition)];
const coefficientText = ({ text }: Coefficient): string => (/^[A-Za-z]/.test(text) ? `m[TABLE.${text}]` : text);

/** ± coefficient of a process in a row × a factor; nothing where the process does not touch the row. */
export function termOf(plan: KernelPlan, process: number, component: number, factor: string, sign: 1 | -1 = 1): Term[] {
  const coefficient = plan.coefficients.of[process].get(component);
  return coefficient ? [{ sign: (coefficient.sign * sign) as 1 | -1, coefficient: coefficientText(coefficient), factor }] : [];
}

/** Whether a process has derivatives in the dense block, its own or of what it follows. */
export const isFast = ({ fast, follows, opposes }: Definition): boolean =>
  fast !== undefined || follows !== undefined || opposes !== undefined;
/** Whether a process has a kept derivative of any kind, so that the solver moves it. */
export const isKept = (definition: Definition): boolean =>
  isFast(definition) || definition.alone !== undefined || definition.moves?.kept === true;
export const aloneOf = ({ alone, moves }: Definition): number | undefined => alone ?? (moves?.kept ? moves.of : undefined);

/** The processes of each condition, in order. */
export function byWhere(
  plan: KernelPlan,
  chosen: (definition: Definition, process: number) => boolean,
): { where: Where; condition: string; processes: number[] }[] {
  return (Object.keys(WHERE) as Where[])
    .map((where) => ({
      where,
      condition: WHERE[where],
      processes: plan.definitions.flatMap((definition, p) => (whereOf(definition) === where && chosen(definition, p) ? [p] : [])),
    }))
    .filter(({ processes }) => processes.length > 0);
}

export const moveRate = ({ moves }: Definition): string => (moves ? `cell.${moves.at}${moves.clears ? ' * v' : ''}` : '');

const keptNames = (definitions: readonly Definition[]): string[] =>
  definitions.flatMap(({ id, alone, fast, follows }) => [
    ...(alone === undefined ? [] : [`${id}_${row(alone)}`]),
    ...(fast ?? []).map((component) => `${id}_${row(component)}`),
    ...(follows ? [`${id}_share`] : []),
  ]);

/** Every process that moves when a component outside the block is solved, with its opposite. */
export function drivenBy(plan: Pick<KernelPlan, 'definitions'>, component: number): { process: number; opposite: number | undefined }[] {
  return plan.definitions.flatMap((definition, process) => {
    if (aloneOf(definition) !== component) return [];
    const opposite = plan.definitions.findIndex(({ opposes }) => opposes === definition.id);
    return [{ process, opposite: opposite < 0 ? undefined : opposite }];
  });
}

function findLones(plan: Pick<KernelPlan, 'definitions' | 'coefficients'>): Lone[] {
  const { definitions, coefficients } = plan;
  const all = [...new Set(definitions.map(aloneOf))].filter((component) => component !== undefined).sort((a, b) => a - b);
  const signatures: string[] = [];
  return all.map((component): Lone => {
    const losses = definitions.flatMap((definition, process): Loss[] => {
      if (aloneOf(definition) !== component) return [];
      const coefficient = coefficients.of[process].get(component);
      if (!coefficient) throw new Error(`process ${definition.id} keeps a derivative to ${row(component)}, of which it takes nothing`);
      const derivative = definition.moves ? moveRate(definition) : `g[go + KEPT.${definition.id}_${row(component)}]`;
      return [{ process, coefficient: coefficientText(coefficient), derivative, sign: coefficient.sign < 0 ? 1 : -1 }];
    });
    const signature = JSON.stringify([
      component < FLOWING,
      losses.map(({ sign, coefficient, derivative }) => [sign, coefficient, derivative]),
    ]);
    if (!signatures.includes(signature)) signatures.push(signature);
    return { component, losses, diagonal: signatures.indexOf(signature) };
  });
}

/** The dense block stands for one node in the order of solving. */
const BLOCK = -1;

/** Who must be solved before whom: what a component gives to when it is solved. */
function gifts(plan: Pick<KernelPlan, 'definitions' | 'coefficients'>, from: number, lone: ReadonlySet<number>): Set<number> {
  const driven =
    from === BLOCK
      ? plan.definitions.flatMap((definition, process) => (isFast(definition) ? [process] : []))
      : drivenBy(plan, from).flatMap(({ process, opposite }) => (opposite === undefined ? [process] : [process, opposite]));
  const rows = driven.flatMap((process) => [...plan.coefficients.of[process].keys()]);
  return new Set(rows.map((to) => (to < FAST ? BLOCK : to)).filter((to) => to !== from && (to === BLOCK || lone.has(to))));
}

/**
 * Sorts lone components into stages round the block. What both gives to the block and takes from it is solved before it, and what it
 * then gets comes late: that moves on with the water alone, so it must be something dissolved that lasts.
 */
function sortLones(plan: Pick<KernelPlan, 'definitions' | 'coefficients'>, lones: readonly Lone[]): Pick<KernelPlan, 'before' | 'after'> {
  const lone = new Set(lones.map(({ component }) => component));
  const gives = new Map([BLOCK, ...lone].map((from) => [from, gifts(plan, from, lone)]));
  const reaches = (from: number, seen = new Set<number>()): boolean => {
    if (seen.has(from)) return false;
    seen.add(from);
    return [...(gives.get(from) ?? [])].some((to) => to === BLOCK || reaches(to, seen));
  };
  const early = lones.filter(({ component }) => reaches(component));
  for (const { component } of early) {
    const late = gives.get(BLOCK)?.has(component) && !LASTING.includes(component);
    if (late) throw new Error(`${row(component)} gives to the dense block and takes from it: it has to be solved in it`);
  }
  const staged = (left: readonly Lone[]): Lone[][] => {
    if (left.length === 0) return [];
    const now = left.filter(({ component }) => !left.some((other) => gives.get(other.component)?.has(component)));
    if (now.length === 0)
      throw new Error(`${left.map(({ component }) => row(component)).join(', ')}: each gives to another, so that none can be solved first`);
    return [now, ...staged(left.filter((one) => !now.includes(one)))];
  };
  return { before: staged(early), after: staged(lones.filter((one) => !early.includes(one))) };
}

/** Rows of the block that a derivative to a column fills: those of the process and of what follows it. */
function blockEntries(plan: Pick<KernelPlan, 'definitions' | 'coefficients'>): number[] {
  const entries = new Set<number>(Array.from({ length: FAST }, (_, i) => i * FAST + i));
  plan.definitions.forEach(({ id, fast }, process) => {
    if (!fast) return;
    const rows = [
      process,
      ...plan.definitions.flatMap(({ follows, opposes }, p) => (opposes === id || follows?.includes(id) ? [p] : [])),
    ].flatMap((p) => [...plan.coefficients.of[p].keys()]);
    for (const component of rows) if (component < FAST) for (const column of fast) entries.add(component * FAST + column);
  });
  return [...entries].sort((a, b) => a - b);
}

export function planKernels(definitions: readonly Definition[] = DEFINITIONS): KernelPlan {
  for (const { id, where, follows, opposes } of definitions)
    for (const other of [...(follows ?? []), ...(opposes ? [opposes] : [])]) {
      const found = definitions.find((definition) => definition.id === other);
      if (!found) throw new Error(`process ${id} follows or opposes ${other}, which is not there`);
      if ((found.where ?? 'everywhere') !== (where ?? 'everywhere'))
        throw new Error(`process ${id} follows or opposes ${other}, which runs elsewhere`);
    }
  const coefficients = findCoefficients(definitions, (process, component) => `${definitions[process].id}_${row(component)}`);
  const lones = findLones({ definitions, coefficients });
  const diagonals = lones.filter(({ diagonal }, i) => lones.findIndex((other) => other.diagonal === diagonal) === i);
  return {
    definitions,
    coefficients,
    kept: keptNames(definitions),
    lones,
    ...sortLones({ definitions, coefficients }, lones),
    diagonals,
    block: blockEntries({ definitions, coefficients }),
  };
}

/** Components outside the block that nothing solves alone: they are solved at the end. */
export const lastOf = (plan: KernelPlan): number[] =>
  Array.from({ length: STATES - FAST }, (_, i) => FAST + i).filter((component) => !plan.lones.some((lone) => lone.component === component));
