// What the page for authors tells is so: its example is a sound lesson that passes, its keys are the lesson's, its messages are the
// check's.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { lessonSchema } from '../../src/lessons/lessonSchema';
import { planSchema } from '../../src/lessons/planSchema';
import { playLesson } from '../../src/lessons/playLesson';
import { readLesson } from '../../src/lessons/readLesson';
import { runSeason } from '../../src/season/season';
import { playedText } from '../../src/tools/playedText';
import { expectedWords } from '../../src/words/problemWords';
import { changed, soundLesson, type Json } from '../lessons/plans';

const PAGE = readFileSync(new URL('../../levels/README.md', import.meta.url), 'utf8');
const blocks = [...PAGE.matchAll(/```json\n([\s\S]*?)```/g)].map(([, text]) => JSON.parse(`{${text}}`) as { [key: string]: Json });
const example = (): { [key: string]: Json } => Object.assign(soundLesson(), ...blocks) as { [key: string]: Json };

describe('the worked example', () => {
  test('has a prediction, a mistake, hints and a demonstration', () => {
    expect(blocks.flatMap((block) => Object.keys(block))).toEqual([
      'id',
      'title',
      'teaches',
      'minutes',
      'predictions',
      'mistakes',
      'hints',
      'demonstrations',
    ]);
  });

  test('is a lesson that passes', { timeout: 120_000 }, () => {
    const read = readLesson(JSON.stringify(example()));
    if ('problems' in read) throw new Error(JSON.stringify(read.problems));
    const played = playLesson(read.lesson, (plan) => runSeason(plan));
    expect(
      played.every((one) => one.passes),
      playedText(played),
    ).toBe(true);
  });
});

describe('the tables', () => {
  const keys = (table: string): string[] => [...table.matchAll(/^\| `(\w+)` \|/gm)].map(([, key]) => key);
  const [lesson, plan] = PAGE.slice(PAGE.indexOf('## What each line means'), PAGE.indexOf('## A worked example')).split('In `plan`:');

  test('name every key of a lesson and no other', () => {
    expect(new Set(keys(lesson))).toEqual(new Set(Object.keys(lessonSchema.shape).filter((key) => key !== '$schema')));
  });

  test('name only keys a plan has', () => {
    expect(keys(plan).length).toBeGreaterThan(6);
    for (const key of keys(plan)) expect(Object.keys(planSchema.shape)).toContain(key);
  });
});

describe('the messages', () => {
  const text = (path: (string | number)[], to: Json | undefined): string => JSON.stringify(changed(example(), path, to));
  const twoMarks = [
    { fishHealth: 50, harvest: 30 },
    { fishHealth: 50, harvest: 30 },
    { fishHealth: 85, harvest: 83 },
  ];
  test.each([
    ['a comma or a closing brace', '{ "a": 1 "b": 2 }'],
    ['a key in double quotes', '{ "a": 1, }'],
    ['no such key here; the keys are ', text(['brieff'], ['x'])],
    ['a number from 0.00001 to 1000 m³', text(['shelf', 0, 'volume_m3'], '0.2')],
    ['a text of 1 to 80 characters', text(['title'], '')],
    ['one of fish, sump, pump, settler, mats, degas, rafts', text(['reference', 'order', 1], 'setler')],
    ['all fixed stages in this order: fish, sump, pump', text(['reference', 'order'], ['fish', 'pump', 'sump'])],
    ['at least 50, as the mark before', text(['scoring', 'marks', 1, 'fishHealth'], 40)],
    ['a threshold higher than the mark before', text(['scoring', 'marks'], twoMarks)],
    ['60, where the choice before ends (its below)', text(['predictions', 0, 'choices', 2, 'atLeast'], 70)],
    ['nothing: the last choice is open above', text(['predictions', 0, 'choices', 2, 'below'], 90)],
    ['a day before the season ends (60 days)', text(['demonstrations', 0, 'turningPoints', 1, 'day'], 60)],
    [
      'a stage that stands both in this loop and in the reference, to compare',
      text(['mistakes', 0, 'order'], ['fish', 'settler', 'degas', 'rafts', 'sump', 'pump']),
    ],
    ['atLeast or atMost', text(['predictions', 0, 'explanations', 1, 'evidence', 'atMost'], undefined)],
  ])('"%s" is told on the page and by the check', (message, file) => {
    expect(PAGE).toContain(`\`${message}${message.endsWith(' are ') ? '…' : ''}\``);
    const read = readLesson(file);
    expect('problems' in read ? read.problems.map((problem) => expectedWords(problem.expected)).join('\n') : 'no problem').toContain(
      message,
    );
  });
});
