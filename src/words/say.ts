// Looks words up by key and fills in their values. The keys are those of the English catalogue.
import { english } from './english';

export type WordKey = keyof typeof english;
export type Values = Readonly<Record<string, string | number>>;

const catalogue: Readonly<Record<string, string>> = english;

function fill(text: string, values: Values): string {
  return text.replace(/\{(\w+)\}/g, (whole, name: string) => (name in values ? String(values[name]) : whole));
}

/** The words of a key, with {names} replaced by values. */
export function say(key: WordKey, values: Values = {}): string {
  return fill(english[key], values);
}

/** Whether the catalogue knows a key that came from outside this folder. */
export function isWord(key: string): key is WordKey {
  return Object.hasOwn(catalogue, key);
}

/** The words of a key made at run time (a stage kind, a caution), or those of the fallback when there are none. */
export function sayOr(key: string, fallback: WordKey, values: Values = {}): string {
  return say(isWord(key) ? key : fallback, values);
}
