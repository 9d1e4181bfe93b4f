// The small building blocks of every schema: bounded numbers, names and strict objects, each saying what it expects.
// The error text of each block is the "expected" of the problem a person reads.
import { z } from 'zod';

/** Names of stages, lessons and mistakes stand in column headings and paths, so they stay short and plain. */
const ID = /^[a-z][A-Za-z0-9-]{0,23}$/;
const ID_WORDS = 'a name of 1 to 24 letters, digits or hyphens that begins with a small letter';

/** A finite number from min to max (both allowed); unit is only for the message. */
export function numberFrom(min: number, max: number, unit: string) {
  const error = `a number from ${min} to ${max}${unit === '' ? '' : ` ${unit}`}`;
  return z.number({ error }).min(min, { error }).max(max, { error });
}

/** A whole number from min to max (both allowed). */
export function wholeFrom(min: number, max: number, unit: string) {
  const error = `a whole number from ${min} to ${max}${unit === '' ? '' : ` ${unit}`}`;
  return z.number({ error }).int({ error }).min(min, { error }).max(max, { error });
}

export function idField() {
  return z.string({ error: ID_WORDS }).regex(ID, { error: ID_WORDS });
}

export function textField(min: number, max: number) {
  const error = min === 0 ? `a text of at most ${max} characters` : `a text of ${min} to ${max} characters`;
  return z.string({ error }).min(min, { error }).max(max, { error });
}

export function oneOf<const T extends readonly [string, ...string[]]>(values: T) {
  return z.enum(values, { error: `one of ${values.join(', ')}` });
}

export function exactly<const T extends string>(value: T) {
  return z.literal(value, { error: `"${value}"` });
}

/** Editors find the JSON Schema by this key; readers pass it over. */
export function editorHint() {
  return textField(0, 200).optional();
}

export function yesNo() {
  return z.boolean({ error: 'true or false' });
}

/** A list of min to max entries. */
export function listOf<T extends z.ZodType>(entry: T, min: number, max: number, what: string) {
  const error = `a list of ${min} to ${max} ${what}`;
  return z.array(entry, { error }).min(min, { error }).max(max, { error });
}

/** An object with these keys and no others. */
export function strict<T extends z.ZodRawShape>(shape: T) {
  const keys = Object.keys(shape).join(', ');
  return z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? `no such key here; the keys are ${keys}` : `an object with keys ${keys}`),
  });
}

/** The expected text where a kind or deed is missing, unknown, or belongs to a later version. */
export function choiceError(field: string, known: readonly string[], later: readonly string[]) {
  return (issue: { input?: unknown }): string => {
    const { input } = issue;
    const isObject = typeof input === 'object' && input !== null && !Array.isArray(input);
    if (!isObject) return `an object with a "${field}"`;
    const found = (input as Record<string, unknown>)[field];
    const list = `one of ${known.join(', ')}`;
    return typeof found === 'string' && later.includes(found) ? `${list} ("${found}" is not in this version)` : list;
  };
}

/** The names a catalogue is kept under, as a choice. */
export const namesOf = <Name extends string>(catalogue: Readonly<Record<Name, unknown>>): [Name, ...Name[]] => Object.keys(catalogue) as [Name, ...Name[]];
