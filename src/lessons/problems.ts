// Turns what the schemas found wrong into problems a teacher can act on: where, what stands there, what was expected.
import type { z } from 'zod';
import type { Problem } from './lesson';

/** More than this in one go helps nobody. */
export const PROBLEMS_MAX = 40;
export const WHOLE_FILE = '(whole file)';
const SHOWN_LENGTH = 60;

/** Takes down one problem: where, what was found there, what was expected. */
export type Report = (path: string, got: unknown, expected: string) => void;

type Key = PropertyKey;

/** `loop[2].volume_m3`; keys that are not plain names are quoted. */
export function pathText(path: readonly Key[]): string {
  if (path.length === 0) return WHOLE_FILE;
  return path.map((key, index) => {
    if (typeof key === 'number') return `[${key}]`;
    const name = String(key);
    if (!/^[A-Za-z_][A-Za-z0-9_]*$/.test(name)) return `[${shorten(JSON.stringify(name))}]`;
    return index === 0 ? name : `.${name}`;
  }).join('');
}

function shorten(text: string): string {
  return text.length > SHOWN_LENGTH ? `${text.slice(0, SHOWN_LENGTH)}…` : text;
}

/** Says what a value is in few words; long ones are cut, nested ones only counted. */
export function describe(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return shorten(JSON.stringify(value));
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) {
    const keys = Object.keys(value);
    return keys.length === 0 ? 'an empty object' : shorten(`an object with keys ${keys.slice(0, 12).join(', ')}`);
  }
  return String(value);
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
  const depth = (branch: readonly Issue[]): number => branch.reduce((deepest, issue) => Math.max(deepest, issue.path.length + (issue.code === 'unrecognized_keys' ? 1 : 0)), 0);
  const best = branches.reduce<readonly Issue[]>((chosen, branch) => (depth(branch) > depth(chosen) ? branch : chosen), []);
  return depth(best) > 0 ? best : [];
}

function fromIssue(issue: Issue, root: unknown, base: readonly Key[]): Problem[] {
  const path = [...base, ...issue.path];
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({ path: pathText([...path, key]), got: describe(valueAt(root, [...path, key])), expected: issue.message }));
  }
  if (issue.code === 'invalid_union') {
    const branch = meantBranch(issue.errors);
    if (branch.length > 0) return branch.flatMap((inner) => fromIssue(inner, root, path));
  }
  return [{ path: pathText(path), got: describe(valueAt(root, path)), expected: issue.message }];
}

/** Every problem once, in the order found, at most PROBLEMS_MAX. */
export function problemsOf(error: z.ZodError, root: unknown): Problem[] {
  return error.issues.flatMap((issue) => fromIssue(issue, root, [])).slice(0, PROBLEMS_MAX);
}

/** One line for a terminal or a list. */
export function problemText(problem: Problem): string {
  return `${problem.path}: got ${problem.got}; expected ${problem.expected}`;
}
