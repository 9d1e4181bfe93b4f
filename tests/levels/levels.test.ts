// Every level is played on the real model: the reference earns three marks, each mistake shows itself, an idle player does not pass.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { minutesOf } from '../../src/lessons/minutes';
import { playLesson } from '../../src/lessons/playLesson';
import { readLesson } from '../../src/lessons/readLesson';
import { problemText } from '../../src/words/problemWords';
import { runSeason } from '../../src/season/season';
import { playedText } from '../../src/tools/playedText';

const LEVELS = new URL('../../levels/', import.meta.url);
const names = readdirSync(LEVELS).filter((name) => /^\d\d-.*\.json$/.test(name));

test('there is a first level', () => {
  expect(names.filter((name) => name.startsWith('00-'))).toHaveLength(1);
});

describe.each(names)('%s', (name) => {
  const read = readLesson(readFileSync(new URL(name, LEVELS), 'utf8'));

  test('is a sound lesson', () => {
    expect('problems' in read ? read.problems.map(problemText) : []).toEqual([]);
  });

  test('says the minutes that its steps, questions and runs come to', () => {
    expect('problems' in read ? null : read.lesson.minutes).toBe('problems' in read ? undefined : minutesOf(read.lesson));
  });

  test('names the bands of its demonstrations by their own limits', () => {
    const named = ('problems' in read ? [] : read.lesson.demonstrations).flatMap((shown) =>
      shown.choices.flatMap(({ text, atLeast, below }) =>
        (text.match(/\d+(\.\d+)?/g) ?? []).map((number): [string, boolean] => [text, [atLeast, below].includes(Number(number))]),
      ),
    );
    expect(named.filter(([, fits]) => !fits)).toEqual([]);
  });

  test('shows what it teaches', { timeout: 300_000 }, () => {
    if ('problems' in read) throw new Error('the lesson cannot be read');
    const played = playLesson(read.lesson, (plan) => runSeason(plan));
    expect(
      played.every((one) => one.passes),
      playedText(played),
    ).toBe(true);
  });
});
