// Texts of a lesson may be given in several languages, { "en": "…", "de": "…" }; here one of them is chosen. Imports nothing, since the
// page reads its cards by it.

/** A text in several languages, by their tags (BCP 47). */
export type Texts = Readonly<Record<string, string>>;
export type LessonText = string | Texts;

/** A text that was read in several languages, told apart from other objects of a lesson. */
export class ManyTexts {
  constructor(readonly texts: Texts) {}
}

/** What is read where no language is asked for, and where a text has none of the language that is. */
export const USUAL_LANGUAGE = 'en';
const languageOf = (tag: string): string => tag.toLowerCase().split('-')[0];

/**
 * The text in a language: by its very tag, else of the same language elsewhere ("pt-BR" for "pt"), else in English, else the first there
 * is.
 */
export function textIn(text: LessonText, tag: string): string {
  if (typeof text === 'string') return text;
  const given = Object.entries(text);
  const found =
    given.find(([one]) => one.toLowerCase() === tag.toLowerCase())
    ?? given.find(([one]) => languageOf(one) === languageOf(tag))
    ?? given.find(([one]) => languageOf(one) === USUAL_LANGUAGE)
    ?? given.at(0);
  return found?.[1] ?? '';
}

/** A value with one text in the place of each that was given in several languages. */
export type InOneLanguage<T> = T extends ManyTexts
  ? string
  : T extends readonly (infer Entry)[]
    ? InOneLanguage<Entry>[]
    : T extends object
      ? { [Key in keyof T]: InOneLanguage<T[Key]> }
      : T;

function chosenFrom(value: unknown, tag: string): unknown {
  if (value instanceof ManyTexts) return textIn(value.texts, tag);
  if (Array.isArray(value)) return value.map((entry) => chosenFrom(entry, tag));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, entry]) => [key, chosenFrom(entry, tag)]));
}

export const inOneLanguage = <T>(value: T, tag: string): InOneLanguage<T> => chosenFrom(value, tag) as InOneLanguage<T>;

/** A card of the path in a language. */
export function cardIn<C extends { title: LessonText; teaches: LessonText; aim: LessonText }>(
  card: C,
  tag: string,
): C & { title: string; teaches: string; aim: string } {
  return { ...card, title: textIn(card.title, tag), teaches: textIn(card.teaches, tag), aim: textIn(card.aim, tag) };
}
