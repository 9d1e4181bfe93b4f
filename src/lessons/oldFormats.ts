// Files of the first format: names that have changed since are given their present ones before the schemas look, and told.
import type { Problem } from './problem';

/** A name that a file used, and what it is called now. */
export interface Renamed {
  was: string;
  is: string;
}

/** What a person must know of a file of an older format: which it was, and which of its names were changed, each once. */
export interface OldFile {
  format: string;
  renamed: Renamed[];
}

const PLAN_1 = 'loopwright.plan/1';
const PLAN_2 = 'loopwright.plan/2';
const LESSON_1 = 'loopwright.lesson/1';
const LESSON_2 = 'loopwright.lesson/2';

type Names = ReadonlyMap<string, string>;

export const OLD_KINDS: Names = new Map([
  ['filmChannel', 'nftChannel'],
  ['coneSettler', 'conicalClarifier'],
  ['screenFilter', 'drumFilter'],
  ['movingBed', 'movingBedBiofilter'],
]);
export const OLD_DEEDS: Names = new Map([
  ['slug', 'singleDose'],
  ['cut', 'harvest'],
]);
export const OLD_VARIABLES: Names = new Map([['opportunists', 'freeBacteria']]);
export const OLD_PROCESSES: Names = new Map([
  ['opportunistGrowth', 'freeBacteriaGrowth'],
  ['opportunistDecay', 'freeBacteriaDecay'],
  ['opportunistKill', 'freeBacteriaKill'],
]);
export const OLD_KEYS: Names = new Map([['moments', 'turningPoints']]);

/** The lists whose members hold a name under a key. */
const KINDS_IN = new Set(['loop', 'side', 'shelf']);
const DEEDS_IN = new Set(['actions']);
const KEYS_IN = new Set(['demonstrations']);

/** Deeper than any place where a file may hold a name; what lies deeper is left as it is. */
const DEPTH_MAX = 16;

/** The names that the value of a key may be, in a member of a list of that name. */
function namesUnder(key: string, list: string): Names | undefined {
  if (key === 'kind') return KINDS_IN.has(list) ? OLD_KINDS : undefined;
  if (key === 'do') return DEEDS_IN.has(list) ? OLD_DEEDS : undefined;
  if (key === 'variable') return OLD_VARIABLES;
  return key === 'process' ? OLD_PROCESSES : undefined;
}

/** @param list the key of the list that holds the value, or '' */
function withNewNames(value: unknown, list: string, depth: number, found: Map<string, string>): unknown {
  if (depth > DEPTH_MAX || typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((member: unknown) => withNewNames(member, list, depth + 1, found));
  // fromEntries, since a plain assignment would take a key called __proto__ for the object's prototype
  return Object.fromEntries(
    Object.entries(value).map(([key, held]: [string, unknown]): [string, unknown] => {
      const newKey = KEYS_IN.has(list) ? OLD_KEYS.get(key) : undefined;
      if (newKey !== undefined && !Object.hasOwn(value, newKey)) {
        found.set(key, newKey);
        return [newKey, held];
      }
      if (typeof held !== 'string') return [key, withNewNames(held, Array.isArray(held) ? key : '', depth + 1, found)];
      const name = namesUnder(key, list)?.get(held);
      if (name === undefined) return [key, held];
      found.set(held, name);
      return [key, name];
    }),
  );
}

const formatOf = (value: unknown): unknown => (typeof value === 'object' && value !== null && 'format' in value ? value.format : undefined);

function told(format: string, found: ReadonlyMap<string, string>): OldFile {
  return { format, renamed: [...found].map(([was, is]) => ({ was, is })) };
}

/** A plan of the first format as one of the present; every other value as it is. */
export function planOfToday(value: unknown): { value: unknown; old?: OldFile } {
  if (formatOf(value) !== PLAN_1) return { value };
  const found = new Map<string, string>();
  const renamed = withNewNames(value, '', 0, found);
  return { value: { ...(renamed as object), format: PLAN_2 }, old: told(PLAN_1, found) };
}

/** The same of a lesson, and of the plan in it. */
export function lessonOfToday(value: unknown): { value: unknown; old?: OldFile } {
  const isOld = formatOf(value) === LESSON_1;
  const found = new Map<string, string>();
  const lesson = isOld ? { ...(withNewNames(value, '', 0, found) as object), format: LESSON_2 } : value;
  if (typeof lesson !== 'object' || lesson === null || !('plan' in lesson))
    return isOld ? { value: lesson, old: told(LESSON_1, found) } : { value };
  const plan = planOfToday(lesson.plan);
  if (plan.old === undefined) return isOld ? { value: lesson, old: told(LESSON_1, found) } : { value };
  for (const { was, is } of plan.old.renamed) found.set(was, is);
  return { value: { ...lesson, plan: plan.value }, old: told(isOld ? LESSON_1 : PLAN_1, found) };
}

/** Problems with their paths as the old file has them. */
export function asWritten(problems: Problem[], old: OldFile | undefined): Problem[] {
  const keys = old?.renamed.filter(({ was }) => OLD_KEYS.has(was)) ?? [];
  if (keys.length === 0) return problems;
  return problems.map((problem) => ({
    ...problem,
    path: keys.reduce((path, { was, is }) => path.replace(`.${is}`, `.${was}`), problem.path),
  }));
}
