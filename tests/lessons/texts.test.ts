// Texts of a lesson may be given in several languages; each is held to its limits, and one is chosen.
import { describe, expect, test } from 'vitest';
import { cardOf } from '../../src/lessons/card';
import { readLesson } from '../../src/lessons/readLesson';
import { cardIn, textIn } from '../../src/lessons/texts';
import { problemText } from '../../src/words/problemWords';
import { changed, soundLesson } from './plans';
import type { Json } from './plans';

const TITLES = { en: 'First loop', de: 'Der erste Kreislauf', 'pt-BR': 'O primeiro circuito' };

function manyLanguages(): Json {
  const titled = changed(soundLesson(), ['title'], TITLES);
  return changed(changed(titled, ['brief', 0], { en: 'Place the parts.', de: 'Setze die Teile.' }), ['mistakes', 0, 'title'], {
    de: 'ohne Feinfilter',
  });
}

function lessonIn(value: Json, language?: string) {
  const read = readLesson(JSON.stringify(value), language);
  if ('problems' in read) throw new Error(read.problems.map(problemText).join('\n'));
  return read.lesson;
}

const problemsOf = (value: Json): string[] => {
  const read = readLesson(JSON.stringify(value));
  return 'problems' in read ? read.problems.map(problemText) : [];
};

describe('a text in several languages', () => {
  test.each([
    ['de', 'Der erste Kreislauf'],
    ['de-AT', 'Der erste Kreislauf'],
    ['pt', 'O primeiro circuito'],
    ['PT-br', 'O primeiro circuito'],
    ['en', 'First loop'],
    ['fr', 'First loop'],
  ])('asked for in %s reads "%s"', (tag, text) => {
    expect(textIn(TITLES, tag)).toBe(text);
  });

  test('without English falls back to the first there is', () => {
    expect(textIn({ de: 'eins', nl: 'een' }, 'fr')).toBe('eins');
  });
});

describe('a lesson in several languages', () => {
  test('is read in the one that is asked for, text by text; texts of one language stay as they are', () => {
    const german = lessonIn(manyLanguages(), 'de');
    expect([german.title, german.brief[0], german.mistakes[0].title]).toEqual([
      'Der erste Kreislauf',
      'Setze die Teile.',
      'ohne Feinfilter',
    ]);
    const plain = lessonIn(manyLanguages());
    expect([plain.title, plain.brief[0], plain.mistakes[0].title]).toEqual(['First loop', 'Place the parts.', 'ohne Feinfilter']);
    expect(plain.brief[1]).toBe(lessonIn(soundLesson(), 'de').brief[1]);
  });

  test('holds each language to the limits of the text', () => {
    expect(problemsOf(changed(soundLesson(), ['title'], { en: 'Fine', de: 'x'.repeat(81) }))).toEqual([
      expect.stringMatching(/^title\.de: got "x+…; expected a text of 1 to 80 characters$/),
    ]);
    expect(problemsOf(changed(soundLesson(), ['title'], {}))).toEqual([
      'title: got an empty object; expected a text of 1 to 80 characters, or one for each language: { "en": "…", "de": "…" }',
    ]);
    expect(problemsOf(changed(soundLesson(), ['title'], { german: 'x' }))).toEqual([
      expect.stringContaining('expected a language tag, such as en, de or pt-BR'),
    ]);
    expect(problemsOf(changed(soundLesson(), ['title'], 7))).toEqual([
      expect.stringContaining('title: got 7; expected a text of 1 to 80 characters'),
    ]);
  });

  test('shows its card in that language', () => {
    const card = cardOf('07-a.json', JSON.stringify(manyLanguages()));
    expect(cardIn(card, 'de').title).toBe('Der erste Kreislauf');
    expect(cardIn(card, 'fr').title).toBe('First loop');
  });
});
