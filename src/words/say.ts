// Looks words up by key in the chosen language and fills in their values. The keys are those of the English catalogue.
import { english } from './english';
import { listText, numberText, pluralText, textOf } from './language';
import type { Plural, WordKey } from './language';

export type { WordKey } from './language';
/** A value of a text: a number is written as the language writes it, a list as names in a row; a text stands as it is. */
export type Value = string | number | readonly string[];
export type Values = Readonly<Record<string, Value>>;

/** The names that an English text has places for. */
type PlacesIn<T> = T extends `${string}{${infer Name}}${infer Rest}` ? Name | PlacesIn<Rest> : never;
type Places<T> = T extends string ? PlacesIn<T> : { [Form in keyof T]: PlacesIn<T[Form]> }[keyof T];
type IsUnion<K, All = K> = K extends All ? ([All] extends [K] ? false : true) : never;
/** What must be given with a key: a value for each place, and the count that chooses a plural. A key made at run time takes any. */
type Given<K extends WordKey> =
  IsUnion<K> extends true
    ? [values?: Values]
    : (typeof english)[K] extends Plural
      ? [values: Values & Record<Places<(typeof english)[K]>, Value> & { n: number }]
      : [Places<(typeof english)[K]>] extends [never]
        ? [values?: Values]
        : [values: Values & Record<Places<(typeof english)[K]>, Value>];

/** The decimals of a plain number among the values: as many as it has, up to so many. */
const MOST_DECIMALS = 6;

function valueText(value: Value): string {
  if (typeof value === 'string') return value;
  if (typeof value !== 'number') return listText(value);
  const decimals =
    Number.isInteger(value) || !Number.isFinite(value) ? 0 : (String(Number(value.toFixed(MOST_DECIMALS))).split('.')[1]?.length ?? 0);
  return numberText(value, decimals);
}

function fill(text: string, values: Values): string {
  return text.replace(/\{(\w+)\}/g, (whole, name: string) => (Object.hasOwn(values, name) ? valueText(values[name]) : whole));
}

function sayWith(key: WordKey, values: Values): string {
  const text = textOf(key);
  return fill(typeof text === 'string' ? text : pluralText(text, Number(values['n'])), values);
}

/** The words of a key, with {names} replaced by values. */
export function say<K extends WordKey>(key: K, ...[values]: Given<K>): string {
  return sayWith(key, values ?? {});
}

/** Whether the catalogue knows a key that came from outside this folder. */
export function isWord(key: string): key is WordKey {
  return Object.hasOwn(english, key);
}

/** The words of a key made at run time (a stage kind, a caution), or those of the fallback when there are none. */
export function sayOr(key: string, fallback: WordKey, values: Values = {}): string {
  return sayWith(isWord(key) ? key : fallback, values);
}
