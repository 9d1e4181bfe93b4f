// The lesson command's judgement, on a stand-in for the model whose answers are known.
import { describe, expect, test } from 'vitest';
import { playLesson } from '../../src/lessons/playLesson';
import { readLesson } from '../../src/lessons/readLesson';
import type { Lesson } from '../../src/lessons/lesson';
import type { Plan } from '../../src/season/plan';
import type { Trajectory } from '../../src/season/trajectory';
import { lessonCommand } from '../../src/tools/lessonCommand';
import { playedText } from '../../src/tools/playedText';
import { changed, fileText, soundLesson } from '../lessons/plans';
import { scoresOf, tinySeason } from './tinySeason';

function oneMistake(): Lesson {
  const mistake = {
    key: 'no-settler',
    title: 'no settler',
    order: ['fish', 'rafts', 'sump', 'pump'],
    shows: [{ stage: 'rafts', variable: 'H2S_ug_L', statistic: 'max', atLeastTimes: 2 }],
  };
  // what the stand-in knows nothing of is not asked
  const plain = changed(changed(changed(soundLesson(), ['predictions'], []), ['demonstrations'], []), ['scoring', 'marks', 2, 'goals'], []);
  const read = readLesson(JSON.stringify(changed(plain, ['mistakes'], [mistake])));
  if ('problems' in read) throw new Error(JSON.stringify(read.problems));
  return read.lesson;
}

/** Shows `times` as much of everything without a settler, and full or no scores by whether rafts stand in the loop. */
function standIn(times: number, full: number): (plan: Plan) => Trajectory {
  return (plan) => {
    const has = (id: string): boolean => plan.loop.some((stage) => stage.id === id);
    const season = tinySeason(has('settler') ? 1 : times);
    const scores = has('rafts')
      ? scoresOf({ fishHealth: full, plants_kg: full, plantsIdeal_kg: 100, gain_kg: full, gainIdeal_kg: 100 })
      : scoresOf({});
    return { ...season, summary: { ...season.summary, scores } };
  };
}

describe('playing a lesson', () => {
  test('passes where the reference earns three marks, the mistake shows itself and the idle player earns none', () => {
    const played = playLesson(oneMistake(), standIn(2, 100));
    expect(played.map((one) => [one.key, one.marks, one.passes])).toEqual([
      ['reference', 3, true],
      ['no-settler', 3, true],
      ['idle', 0, true],
    ]);
  });

  test('fails a reference short of three marks', () => {
    expect(playLesson(oneMistake(), standIn(2, 20))[0]).toMatchObject({ key: 'reference', passes: false });
  });

  test('fails a mistake that does not show itself, and prints got against expected', () => {
    const played = playLesson(oneMistake(), standIn(1.5, 100));
    expect(played[1].passes).toBe(false);
    expect(playedText(played)).toContain('FAILS  max rafts.H2S_ug_L: 216 against 144 = 1.5 times; expected at least 2 times');
  });
});

const quiet = (): void => undefined;

describe('the lesson command', () => {
  test('prints the plan of a build, ready to be run', () => {
    let out = '';
    const code = lessonCommand(['levels/00-first-loop.json', '--plan', 'no-fine-filter'], {
      print: (text) => {
        out += text;
      },
      note: quiet,
      run: standIn(2, 100),
    });
    expect(code).toBe(0);
    expect((JSON.parse(out) as Plan).loop.map((stage) => stage.id)).not.toContain('mats');
  });

  test('the example plan of the first lesson is its reference (refresh with: lesson … --plan reference)', () => {
    let out = '';
    lessonCommand(['levels/00-first-loop.json', '--plan', 'reference'], {
      print: (text) => {
        out += text;
      },
      note: quiet,
      run: standIn(2, 100),
    });
    expect(fileText('tests/season/plans/first-loop.json')).toBe(out);
  });

  test('leaves with 1 where something fails and 0 where all passes', () => {
    // the stand-in shows nothing of what the level's own mistakes should show
    expect(lessonCommand(['levels/00-first-loop.json'], { print: quiet, note: quiet, run: standIn(1, 100) })).toBe(1);
    expect(lessonCommand(['--help'], { print: quiet, note: quiet, run: standIn(1, 100) })).toBe(0);
  });

  test('refuses a broken file and an unknown build by name', () => {
    expect(() => lessonCommand(['package.json'], { print: quiet, note: quiet, run: standIn(2, 100) })).toThrow(
      /package\.json cannot be used:\n {2}format: got nothing; expected "loopwright\.lesson\/2"/,
    );
    expect(() => lessonCommand(['levels/00-first-loop.json', '--plan', 'x'], { print: quiet, note: quiet, run: standIn(2, 100) })).toThrow(
      '--plan: got x; expected one of reference, no-fine-filter',
    );
    expect(() => lessonCommand(['levels/00-first-loop.json', '--plan'], { print: quiet, note: quiet, run: standIn(2, 100) })).toThrow(
      '--plan: got nothing; expected one of',
    );
    expect(() => lessonCommand(['levels/00-first-loop.json', '--plans'], { print: quiet, note: quiet, run: standIn(2, 100) })).toThrow(
      'got --plans; expected --plan or --help',
    );
    expect(() => lessonCommand([], { print: quiet, note: quiet, run: standIn(2, 100) })).toThrow('expected one lesson file');
  });
});
