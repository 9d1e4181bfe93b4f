// Files of the first format are read as they were meant, whatever has got another name since, and it is told.
import { describe, expect, test } from 'vitest';
import { OLD_DEEDS, OLD_KEYS, OLD_KINDS, OLD_PROCESSES, OLD_VARIABLES } from '../../src/lessons/oldFormats';
import { problemText } from '../../src/words/problemWords';
import { readLesson } from '../../src/lessons/readLesson';
import { readPlan } from '../../src/lessons/readPlan';
import { PROCESS_NAMES } from '../../src/model/processes/catalogue';
import { stageType } from '../../src/catalogue/stageTypes';
import { VARIABLES } from '../../src/season/trajectory';
import { changed, fileText, soundLesson, soundPlan } from './plans';
import type { Json } from './plans';

/** What a person had written before the names changed. */
const backwards = (text: string): string => {
  let old = text.replaceAll('loopwright.plan/2', 'loopwright.plan/1').replaceAll('loopwright.lesson/2', 'loopwright.lesson/1');
  for (const names of [OLD_KINDS, OLD_VARIABLES, OLD_PROCESSES, OLD_KEYS])
    for (const [was, is] of names) old = old.replaceAll(`"${is}"`, `"${was}"`);
  // a score has the name of a deed
  for (const [was, is] of OLD_DEEDS) old = old.replaceAll(new RegExp(`("do": ?)"${is}"`, 'g'), `$1"${was}"`);
  return old;
};

const loop = (kinds: readonly string[]): Json[] => [
  { id: 'fish', kind: 'fishTank' },
  ...kinds.map((kind, index) => ({ id: `part-${index}`, kind })),
  { id: 'sump', kind: 'sump' },
  { id: 'pump', kind: 'returnPump' },
];
const DEEDS: Json[] = [
  { day: 1, do: 'singleDose', stage: 'sump', base: 'KOH', g: 2 },
  { day: 2, do: 'harvest', stage: 'part-0' },
];
const everyName = { format: 'loopwright.plan/2', loop: loop([...OLD_KINDS.values()]), actions: DEEDS };

describe('a plan of the first format', () => {
  test('is read as the same plan under its present names, each told once', () => {
    const old = backwards(JSON.stringify(everyName));
    expect(old).toContain('"filmChannel"');
    const today = readPlan(JSON.stringify(everyName));
    const read = readPlan(old);
    if ('problems' in read || 'problems' in today) throw new Error(JSON.stringify([read, today]));
    expect(read.plan).toEqual(today.plan);
    expect(read.plan.actions.map((action) => action.do)).toEqual(['singleDose', 'harvest']);
    expect(read.old).toEqual({ format: 'loopwright.plan/1', renamed: [...OLD_KINDS, ...OLD_DEEDS].map(([was, is]) => ({ was, is })) });
    expect(today.old).toBeUndefined();
  });

  test('without an old name is read with a word of its format alone', () => {
    const read = readPlan(JSON.stringify({ ...soundPlan(), format: 'loopwright.plan/1' }));
    expect(read).toMatchObject({ plan: { format: 'loopwright.plan/2' }, old: { format: 'loopwright.plan/1', renamed: [] } });
  });

  test('keeps an id, a title and a crop that happen to be an old name', () => {
    const read = readPlan(
      JSON.stringify({
        format: 'loopwright.plan/1',
        title: 'movingBed',
        loop: loop([]).map((stage, index) => (index === 1 ? { id: 'movingBed', kind: 'sump' } : stage)),
      }),
    );
    expect(read).toMatchObject({ plan: { title: 'movingBed', loop: [{}, { id: 'movingBed', kind: 'sump' }, {}] }, old: { renamed: [] } });
  });

  test('of today may not use an old name', () => {
    const read = readPlan(JSON.stringify({ format: 'loopwright.plan/2', loop: loop(['filmChannel']) }));
    expect('problems' in read && read.problems[0]).toMatchObject({ path: 'loop[1].kind', got: { code: 'value', text: '"filmChannel"' } });
  });

  test('hides nothing from the gate: what it does not know is refused where it stands', () => {
    const read = readPlan(`{"__proto__": {"days": 3}, ${backwards(JSON.stringify(everyName)).slice(1)}`);
    expect('problems' in read && read.problems.map(({ path }) => path)).toEqual(['__proto__']);
    expect(readPlan(`${'['.repeat(500)}${']'.repeat(500)}`)).toHaveProperty('problems');
  });
});

describe('a lesson of the first format', () => {
  const evidence = { stage: 'fish', process: 'freeBacteriaKill', statistic: 'max', atLeast: 1 };
  const asked = {
    key: 'germs',
    dueDay: 20,
    question: 'How many?',
    look: 'fish',
    measure: { stage: 'fish', variable: 'freeBacteria', statistic: 'mean' },
    choices: [
      { key: 'low', text: 'few', below: 1 },
      { key: 'high', text: 'many', atLeast: 1 },
    ],
    explanations: [
      { key: 'a', text: 'a', evidence },
      { key: 'b', text: 'b', evidence },
    ],
  };
  const shelf = [...(soundLesson().shelf as Json[]), { id: 'channel', kind: 'nftChannel' }];
  const lesson = [
    [['shelf'], shelf],
    [['predictions'], [asked]],
    [['reference', 'actions', 0], { day: 30, do: 'harvest', stage: 'rafts' }],
    [['mistakes', 0, 'actions', 0], { day: 30, do: 'singleDose', stage: 'sump', base: 'KOH', g: 1 }],
  ].reduce<Json>((whole, [path, value]) => changed(whole, path as (string | number)[], value as Json), soundLesson());

  test('is read as the same lesson: kinds on the shelf, deeds, measures and turning points', () => {
    const old = backwards(JSON.stringify(lesson));
    for (const was of ['filmChannel', 'slug', 'cut', 'opportunists', 'opportunistKill', 'moments']) expect(old).toContain(`"${was}"`);
    const today = readLesson(JSON.stringify(lesson));
    const read = readLesson(old);
    if ('problems' in read || 'problems' in today)
      throw new Error([read, today].flatMap((one) => ('problems' in one ? one.problems.map(problemText) : [])).join('\n'));
    expect(read.lesson).toEqual(today.lesson);
    expect(read.old?.format).toBe('loopwright.lesson/1');
    expect(read.old?.renamed.map(({ was }) => was).sort()).toEqual([
      'cut',
      'filmChannel',
      'moments',
      'opportunistKill',
      'opportunists',
      'slug',
    ]);
  });

  test('of the path reads the same from its first format', () => {
    const text = fileText('levels/13-polish-once.json');
    const [today, read] = [readLesson(text), readLesson(backwards(text))];
    if ('problems' in read || 'problems' in today) throw new Error('not read');
    expect(read.lesson).toEqual(today.lesson);
  });

  test('may hold a plan of the first format in a lesson of today', () => {
    const read = readLesson(JSON.stringify(changed(soundLesson(), ['plan', 'format'], 'loopwright.plan/1')));
    expect(read).toMatchObject({ old: { format: 'loopwright.plan/1', renamed: [] } });
  });

  test('names a fault by the keys that the file has', () => {
    const broken = backwards(JSON.stringify(changed(soundLesson(), ['demonstrations', 0, 'turningPoints', 0, 'day'], 'soon')));
    const read = readLesson(broken);
    expect('problems' in read && read.problems.map(({ path }) => path)).toEqual(['demonstrations[0].moments[0].day']);
  });
});

test('every present name is one that the engine has', () => {
  for (const kind of OLD_KINDS.values()) expect(stageType(kind).kind).toBe(kind);
  for (const variable of OLD_VARIABLES.values()) expect(VARIABLES).toContain(variable);
  for (const process of OLD_PROCESSES.values()) expect(PROCESS_NAMES).toContain(process);
});
