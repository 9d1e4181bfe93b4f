// The small building blocks of every schema: bounded numbers, names and strict objects, each saying what it expects.
// A schema's error is a text: ours are the code and values of what was expected (problem.ts), written as JSON and read by problems.ts.
import { z } from 'zod';
import type { Counted, Expected, Listed } from './problem';
import { ManyTexts } from './texts';

/** Names of stages, lessons and mistakes stand in column headings and paths, so they stay short and plain. */
const ID = /^[a-z][A-Za-z0-9-]{0,23}$/;

/** A language, and where it is spoken if that matters: en, pt-BR. */
const LANGUAGE_TAG = /^[a-zA-Z]{2,3}(-[a-zA-Z0-9]{2,8})*$/;

export const errorOf = (expected: Expected): string => JSON.stringify(expected);

/** A finite number from min to max (both allowed); unit is only for the message. */
export function numberFrom(min: number, max: number, unit: string) {
  const range = { from: min, to: max };
  const error = errorOf(unit === '' ? { code: 'number', ...range } : { code: 'numberOf', ...range, unit });
  return z.number({ error }).min(min, { error }).max(max, { error });
}

/** A whole number from min to max (both allowed). */
export function wholeFrom(min: number, max: number, counted: Counted | '') {
  const error = errorOf({ code: counted === '' ? 'whole' : `whole.${counted}`, from: min, to: max });
  return z.number({ error }).int({ error }).min(min, { error }).max(max, { error });
}

export function idField() {
  const error = errorOf({ code: 'name' });
  return z.string({ error }).regex(ID, { error });
}

/** A text that is no prose: a model's number, a seed, the title of a plan. */
export function textField(min: number, max: number) {
  const error = errorOf(min === 0 ? { code: 'textUpTo', to: max } : { code: 'text', from: min, to: max });
  return z.string({ error }).min(min, { error }).max(max, { error });
}

/** A text that learners read: one, or one for each language. */
export function wordsField(min: number, max: number) {
  const error = errorOf(min === 0 ? { code: 'wordsUpTo', to: max } : { code: 'words', from: min, to: max });
  const one = textField(min, max);
  const tag = errorOf({ code: 'languageTag' });
  const many = z
    .record(z.string().regex(LANGUAGE_TAG, { error: tag }), one, { error })
    .refine((texts) => Object.keys(texts).length > 0, { error });
  return z.union([one, many], { error }).transform((text) => (typeof text === 'string' ? text : new ManyTexts(text)));
}

export function oneOf<const T extends readonly [string, ...string[]]>(values: T) {
  return z.enum(values, { error: errorOf({ code: 'oneOf', names: values }) });
}

export function exactly<const T extends string>(value: T) {
  return z.literal(value, { error: errorOf({ code: 'exactly', text: value }) });
}

/** Editors find the JSON Schema by this key; readers pass it over. */
export function editorHint() {
  return textField(0, 200).optional();
}

export function yesNo() {
  return z.boolean({ error: errorOf({ code: 'yesNo' }) });
}

/** A list of min to max entries. */
export function listOf<T extends z.ZodType>(entry: T, min: number, max: number, what: Listed) {
  const error = errorOf({ code: `list.${what}`, from: min, to: max });
  return z.array(entry, { error }).min(min, { error }).max(max, { error });
}

/** An object with these keys and no others. */
export function strict<T extends z.ZodRawShape>(shape: T) {
  const keys = Object.keys(shape);
  return z.strictObject(shape, { error: (issue) => errorOf({ code: issue.code === 'unrecognized_keys' ? 'noSuchKey' : 'object', keys }) });
}

/** What is expected where a kind or deed is missing or unknown. */
export function choiceError(field: string, known: readonly string[]) {
  return (issue: { input?: unknown }): string => {
    const { input } = issue;
    const isObject = typeof input === 'object' && input !== null && !Array.isArray(input);
    return errorOf(isObject ? { code: 'oneOf', names: known } : { code: 'objectWith', key: field });
  };
}

/** The names a catalogue is kept under, as a choice. */
export const namesOf = <Name extends string>(catalogue: Readonly<Record<Name, unknown>>): [Name, ...Name[]] =>
  Object.keys(catalogue) as [Name, ...Name[]];
