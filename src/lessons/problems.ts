// Turns what the schemas found wrong into problems a teacher can act on: where, what stands there, what was expected.
import type { z } from 'zod';
import type { Expected, Found, Problem } from './problem';

/** More than this in one go helps nobody. */
export const PROBLEMS_MAX = 40;
/** The path of the whole file. */
export const WHOLE_FILE = '';
const SHOWN_LENGTH = 60;
/** Of an object's keys less is shown: they stand in a sentence. */
const SHOWN_KEYS_LENGTH = 40;
const MOST_KEYS = 12;

/** Takes down one problem: where, what stands there (described unless `found` tells it), what was expected. */
export type Report = (path: string, got: unknown, expected: Expected, found?: Found) => void;

type Key = PropertyKey;

/** `loop[2].volume_m3`; keys that are not plain names are quoted. */
export function pathText(path: readonly Key[]): string {
  if (path.length === 0) return WHOLE_FILE;
  return path
    .map((key, index) => {
      if (typeof key === 'number') return `[${key}]`;
      const name = String(key);
      if (!/^[A-Za-z_][A-Za-z0-9_]*$/.test(name)) return `[${shorten(JSON.stringify(name))}]`;
      return index === 0 ? name : `.${name}`;
    })
    .join('');
}

function shorten(text: string, length = SHOWN_LENGTH): string {
  return text.length > length ? `${text.slice(0, length)}…` : text;
}

/** What a value is: short ones as they stand, long ones cut, nested ones only counted. */
export function describe(value: unknown): Found {
  if (value === undefined) return { code: 'nothing' };
  if (Array.isArray(value)) return value.length === 0 ? { code: 'emptyList' } : { code: 'list', n: value.length };
  if (typeof value === 'object' && value !== null) {
    const keys = Object.keys(value);
    return keys.length === 0
      ? { code: 'emptyObject' }
      : { code: 'object', keys: shorten(keys.slice(0, MOST_KEYS).join(', '), SHOWN_KEYS_LENGTH) };
  }
  return { code: 'value', text: typeof value === 'string' ? shorten(JSON.stringify(value)) : String(value) };
}

function valueAt(root: unknown, path: readonly Key[]): unknown {
  let value: unknown = root;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<Key, unknown>)[key];
  }
  return value;
}

type Issue = z.core.$ZodIssue;

/** Of a union's branches, the one whose problems lie deepest is the one the writer meant. */
function meantBranch(branches: readonly (readonly Issue[])[]): readonly Issue[] {
  const depth = (branch: readonly Issue[]): number =>
    branch.reduce(
      (deepest, issue) =>
        Math.max(deepest, issue.path.length + (issue.code === 'unrecognized_keys' || issue.code === 'invalid_key' ? 1 : 0)),
      0,
    );
  const best = branches.reduce<readonly Issue[]>((chosen, branch) => (depth(branch) > depth(chosen) ? branch : chosen), []);
  return depth(best) > 0 ? best : [];
}

/** The code that a schema's block wrote as its error. */
function expectedBy(message: string): Expected {
  try {
    const read = JSON.parse(message) as unknown;
    if (typeof read === 'object' && read !== null && 'code' in read) return read as Expected;
  } catch {
    // no code of ours
  }
  return { code: 'other', text: message };
}

function fromIssue(issue: Issue, root: unknown, base: readonly Key[]): Problem[] {
  const path = [...base, ...issue.path];
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      path: pathText([...path, key]),
      got: describe(valueAt(root, [...path, key])),
      expected: expectedBy(issue.message),
    }));
  }
  if (issue.code === 'invalid_union') {
    const branch = meantBranch(issue.errors);
    if (branch.length > 0) return branch.flatMap((inner) => fromIssue(inner, root, path));
  }
  const message = issue.code === 'invalid_key' ? (issue.issues.at(0)?.message ?? issue.message) : issue.message;
  return [{ path: pathText(path), got: describe(valueAt(root, path)), expected: expectedBy(message) }];
}

/** Every problem once, in the order found, at most PROBLEMS_MAX. */
export function problemsOf(error: z.ZodError, root: unknown): Problem[] {
  return error.issues.flatMap((issue) => fromIssue(issue, root, [])).slice(0, PROBLEMS_MAX);
}
