// The language chosen for the page: its words, and how it writes numbers, dates, lists and plurals. Everything a person reads follows it.
import { english } from './english';

/**
 * The forms of a sentence that counts something, by the plural categories of a language; `other` always stands. The count is its value `n`.
 */
export type Plural = Readonly<{ other: string } & Partial<Record<Intl.LDMLPluralRule, string>>>;
/** One text of a catalogue. {names} in braces are filled in by say(). */
export type Text = string | Plural;
export type WordKey = keyof typeof english;
export type Catalogue = Readonly<Record<WordKey, Text>>;

/** A language: the tag (BCP 47) by which numbers, dates, lists and plurals are written, and its words. */
export interface Language {
  tag: string;
  words: Catalogue;
}

export const ENGLISH: Language = { tag: 'en', words: english };

let chosen = ENGLISH;
let numbers = new Map<string, Intl.NumberFormat>();
let lists = new Map<string, Intl.ListFormat>();
let plurals: Intl.PluralRules | undefined;

/** Chooses the language from now on. What was said before is not said again. */
export function chooseLanguage(language: Language): void {
  chosen = language;
  numbers = new Map();
  lists = new Map();
  plurals = undefined;
}

export const languageTag = (): string => chosen.tag;

/** The text of a key in the chosen language. */
export const textOf = (key: WordKey): Text => chosen.words[key];

/** Four digits stand together; from five on they are grouped. */
const GROUPED_FROM = 9999.5;

/** A number with so many decimals, with a minus that reads as one. Digits are those of the page whatever the language. */
export function numberText(value: number, decimals: number): string {
  const useGrouping = Math.abs(value) >= GROUPED_FROM;
  const key = `${decimals}${useGrouping ? ' grouped' : ''}`;
  let format = numbers.get(key);
  if (format === undefined) {
    format = new Intl.NumberFormat(chosen.tag, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      useGrouping,
      numberingSystem: 'latn',
    });
    numbers.set(key, format);
  }
  return format.format(value).replace('-', '−');
}

/** How a list is joined: `all` of them ("a, b, and c"), `any` of them ("a, b, or c"), or as bare names in a row ("a, b, c"). */
export type Joining = 'all' | 'any' | 'row';
const LIST_TYPES = { all: 'conjunction', any: 'disjunction', row: 'unit' } as const;

export function listText(items: readonly string[], joining: Joining = 'row'): string {
  let format = lists.get(joining);
  if (format === undefined) {
    format = new Intl.ListFormat(chosen.tag, { type: LIST_TYPES[joining], style: 'long' });
    lists.set(joining, format);
  }
  return format.format(items);
}

/** The form of a text that fits a number of things. */
export function pluralText(text: Plural, count: number): string {
  plurals ??= new Intl.PluralRules(chosen.tag);
  return text[plurals.select(count)] ?? text.other;
}

/** A day of the calendar. @param day as 2026-11-30 */
export function dateText(day: string): string {
  return new Intl.DateTimeFormat(chosen.tag, { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' }).format(
    new Date(`${day}T00:00:00Z`),
  );
}
