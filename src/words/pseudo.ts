// A language that nobody speaks, made from another by a function: every text is longer, accented and marked at both ends, its values are
// kept. What shows unmarked on the page comes from no catalogue; what does not fit has no room for other languages.
import type { Catalogue, Language, Text } from './language';

export const OPENS = '⟦';
export const CLOSES = '⟧';
/** How much longer a text becomes, as a share: about what German is to English. */
const LONGER = 0.4;
/** Letters that stand in for plain ones, as wide as they are. */
const ACCENTED: Readonly<Record<string, string>> = {
  a: 'á',
  c: 'ç',
  e: 'é',
  g: 'ğ',
  i: 'í',
  n: 'ñ',
  o: 'ö',
  s: 'š',
  u: 'ü',
  y: 'ý',
  z: 'ž',
  A: 'Å',
  C: 'Ç',
  E: 'É',
  I: 'Í',
  N: 'Ñ',
  O: 'Ö',
  S: 'Š',
  U: 'Ü',
  Y: 'Ý',
  Z: 'Ž',
};
const PADDING = ['lö', 'rém', 'ípsüm', 'dölör', 'sít', 'ámét'];

/** Words that fill so many characters, in lengths that break like words do. */
function padding(length: number): string {
  let made = '';
  for (let at = 0; made.length < length; at += 1) made += ` ${PADDING[at % PADDING.length]}`;
  return made;
}

/** One text in the made-up language. Places for values, {like this}, stay as they are. */
export function pseudoText(text: string): string {
  const accented = text.replace(/\{\w+\}|./gsu, (sign) => ACCENTED[sign] ?? sign);
  const letters = text.replace(/\{\w+\}/g, '').length;
  return `${OPENS}${accented}${padding(Math.round(LONGER * letters))}${CLOSES}`;
}

const pseudo = (text: Text): Text =>
  typeof text === 'string'
    ? pseudoText(text)
    : { ...text, ...Object.fromEntries(Object.entries(text).map(([form, one]) => [form, pseudoText(one)])) };

/** The made-up language of another: numbers and dates are written as there. */
export function pseudoLanguage({ tag, words }: Language): Language {
  return { tag, words: Object.fromEntries(Object.entries(words).map(([key, text]) => [key, pseudo(text)])) as Catalogue };
}
