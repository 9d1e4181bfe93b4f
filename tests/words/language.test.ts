// Numbers, lists, plurals and dates follow the chosen language; the made-up language marks every text and keeps its values.
import { afterEach, describe, expect, it } from 'vitest';
import { english } from '../../src/words/english';
import { chooseLanguage, dateText, ENGLISH, listText } from '../../src/words/language';
import type { Catalogue } from '../../src/words/language';
import { CLOSES, OPENS, pseudoLanguage, pseudoText } from '../../src/words/pseudo';
import { say } from '../../src/words/say';
import { figure } from '../../src/words/units';

const spoken = (tag: string, words: Partial<Catalogue> = {}): void => chooseLanguage({ tag, words: { ...english, ...words } });

afterEach(() => chooseLanguage(ENGLISH));

describe('a count in a sentence', () => {
  it('takes the form that fits it', () => {
    expect([1, 2, 12345].map((n) => say('goals.changed', { n }))).toEqual(['1 change made', '2 changes made', '12,345 changes made']);
  });

  it('takes the forms of the language, however many it has', () => {
    spoken('pl', { 'goals.changed': { one: '{n} zmiana', few: '{n} zmiany', many: '{n} zmian', other: '{n} zmiany' } });
    expect([1, 3, 5, 22, 25].map((n) => say('goals.changed', { n }))).toEqual(['1 zmiana', '3 zmiany', '5 zmian', '22 zmiany', '25 zmian']);
  });
});

describe('lists, numbers and dates', () => {
  it('are written as the language writes them', () => {
    expect([listText(['a', 'b', 'c']), listText(['a', 'b', 'c'], 'all'), listText(['a', 'b'], 'any')]).toEqual([
      'a, b, c',
      'a, b, and c',
      'a or b',
    ]);
    expect(dateText('2026-11-30')).toBe('Nov 30, 2026');
    spoken('de');
    expect([listText(['a', 'b', 'c'], 'all'), listText(['a', 'b'], 'any')]).toEqual(['a, b und c', 'a oder b']);
    expect(dateText('2026-11-30')).toBe('30. Nov. 2026');
    expect([figure(-1234.5, 1), figure(12345, 0), say('trouble.more', { n: 12345 })]).toEqual(['−1234,5', '12.345', 'and 12.345 more']);
  });

  it('a list among the values of a text stands as names in a row', () => {
    expect(say('paper.key.notUsed', { stages: ['Sump', 'Tower'] })).toBe('Left over in the reference: Sump, Tower.');
  });
});

describe('the made-up language', () => {
  it('marks every text at both ends, makes it longer, and keeps the places for values', () => {
    for (const text of Object.values(pseudoLanguage(ENGLISH).words).flatMap((one) =>
      typeof one === 'string' ? [one] : Object.values(one),
    )) {
      expect(text.startsWith(OPENS) && text.endsWith(CLOSES), text).toBe(true);
    }
    const text = english['season.trace'];
    expect(pseudoText(text).match(/\{\w+\}/g)).toEqual(text.match(/\{\w+\}/g));
    expect(pseudoText('Run the season').length).toBeGreaterThan(1.35 * 'Run the season'.length);
  });

  it('says numbers and units as the language that it is made of', () => {
    chooseLanguage(pseudoLanguage(ENGLISH));
    expect(say('season.of', { days: 60 })).toMatch(/^⟦.*60.*⟧$/);
    expect(figure(1.5, 1)).toBe('1.5');
  });
});
