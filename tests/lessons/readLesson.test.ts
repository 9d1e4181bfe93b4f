// The gate for lesson files: every listed build must be one the model can run and the lesson can compare.
import { describe, expect, test } from 'vitest';
import { buildPlan } from '../../src/lessons/buildPlan';
import type { Lesson } from '../../src/lessons/lesson';
import { problemText } from '../../src/words/problemWords';
import { readPlan } from '../../src/lessons/readPlan';
import { readLesson } from '../../src/lessons/readLesson';
import { changed, soundLesson } from './plans';
import type { Json } from './plans';

function lessonOf(value: Json): Lesson {
  const read = readLesson(JSON.stringify(value));
  if ('problems' in read) throw new Error(read.problems.map(problemText).join('\n'));
  return read.lesson;
}

function problemsOf(value: Json): string[] {
  const read = readLesson(JSON.stringify(value));
  return 'problems' in read ? read.problems.map(problemText) : [];
}

const fixed = 'all fixed stages in this order: fish, sump, pump';
const evidence = { stage: 'rafts', variable: 'rootMat_g_m2', statistic: 'max', atLeast: 15 };
const choices: Json[] = [
  { key: 'low', text: 'little', below: 1 },
  { key: 'high', text: 'much', atLeast: 1 },
];
const prediction: { [key: string]: Json } = {
  key: 'roots',
  dueDay: 20,
  question: 'How much?',
  look: 'rafts',
  measure: { stage: 'rafts', variable: 'rootMat_g_m2' },
  choices,
  explanations: [
    { key: 'a', text: 'a', evidence },
    { key: 'b', text: 'b', evidence },
  ],
};
const demonstration: { [key: string]: Json } = {
  key: 'mats',
  title: 'With and without',
  left: 'reference',
  right: 'no-fine-filter',
  leftName: 'with',
  rightName: 'without',
  tint: 'solids',
  look: 'rafts',
  question: 'How much?',
  measure: { stage: 'rafts', variable: 'rootMat_g_m2' },
  choices,
  turningPoints: [{ day: 20, say: 'Look.' }],
};
const faults: [string, (string | number)[], Json | undefined, string][] = [
  ["a shelf part with a fixed stage's name", ['shelf', 0, 'id'], 'sump', 'shelf[0].id: got "sump"; expected a name no other stage has'],
  [
    'a reference without the pump',
    ['reference', 'order'],
    ['fish', 'settler', 'mats', 'degas', 'rafts', 'sump'],
    `reference.order: got the fixed stages fish, sump; expected ${fixed}`,
  ],
  [
    'fixed stages out of order',
    ['mistakes', 0, 'order'],
    ['fish', 'pump', 'sump'],
    `mistakes[0].order: got the fixed stages fish, pump, sump; expected ${fixed}`,
  ],
  [
    'a part nobody offers',
    ['reference', 'order', 1],
    'tower',
    'reference.order[1]: got "tower"; expected one of fish, sump, pump, settler, mats, degas, rafts',
  ],
  ['a part placed twice', ['reference', 'order', 2], 'settler', 'reference.order[2]: got "settler"; expected each stage once'],
  [
    'a loop that does not begin at the fish tank',
    ['reference', 'order'],
    ['settler', 'fish', 'mats', 'degas', 'rafts', 'sump', 'pump'],
    'reference.order: got "radialFlowSettler"; expected fishTank: a loop begins at its fish tank',
  ],
  [
    'two thresholds only',
    ['scoring', 'marks'],
    [
      { fishHealth: 1, harvest: 1 },
      { fishHealth: 2, harvest: 2 },
    ],
    'scoring.marks: got a list of 2; expected a list of exactly 3 thresholds, for one, two and three marks',
  ],
  [
    'thresholds that fall',
    ['scoring', 'marks', 2, 'harvest'],
    1,
    'scoring.marks[2].harvest: got 1; expected at least 50, as the mark before',
  ],
  [
    'the same threshold twice',
    ['scoring', 'marks', 2],
    { fishHealth: 60, harvest: 50 },
    'scoring.marks[2]: got an object with keys fishHealth, harvest; expected a threshold higher than the mark before',
  ],
  [
    'a mistake that rinses what it left out',
    ['mistakes', 0, 'actions', 0],
    { day: 1, do: 'rinse', stage: 'mats' },
    'mistakes[0].actions[0].stage: got "mats"; expected a stage that can be rinsed (cartridgeFilter, fineFilter, mediaBed, or a tank with media); no stage has this name (there are fish, settler, degas, rafts, sump, pump, base)',
  ],
  [
    'a consequence at a stage left out',
    ['mistakes', 0, 'shows', 0, 'stage'],
    'mats',
    'mistakes[0].shows[0].stage: got "mats"; expected a stage that stands both in this loop and in the reference, to compare',
  ],
  [
    'a consequence that asks nothing',
    ['mistakes', 0, 'shows', 0],
    { stage: 'rafts', variable: 'pH', statistic: 'mean' },
    'mistakes[0].shows[0]: got an object with keys stage, variable, statistic, fromDay; expected atLeastTimes or atMostTimes, against the reference, or atLeast or atMost',
  ],
  [
    'a consequence after the end',
    ['mistakes', 0, 'shows', 0, 'fromDay'],
    60,
    'mistakes[0].shows[0].fromDay: got 60; expected a day before the season ends (60 days)',
  ],
  [
    'a rig',
    ['plan', 'rig'],
    { inflow: {}, flow_m3_d: 1 },
    'plan.rig: got an object with keys inflow, flow_m3_d; expected null: a lesson plays a loop',
  ],
  ['a fault inside its plan', ['plan', 'climate', 'weather'], 2, 'plan.climate.weather: got 2; expected a number from 0 to 1'],
  [
    'fish in a tank that is not there',
    ['plan', 'fish', 0, 'tank'],
    'pond',
    'plan.fish[0].tank: got "pond"; expected a fish tank of the loop; no stage has this name (there are fish, sump, pump, base, settler, mats, degas, rafts)',
  ],
  ['a loop given without the pump', ['given'], ['fish', 'settler', 'sump'], `given: got the fixed stages fish, sump; expected ${fixed}`],
  [
    'a size for a part nobody offers',
    ['sizes'],
    [{ stage: 'tower', size: 'volume_m3', from: 1, to: 2 }],
    'sizes[0].stage: got "tower"; expected one of fish, sump, pump, settler, mats, degas, rafts, base',
  ],
  [
    'a size of another kind of part',
    ['sizes'],
    [{ stage: 'rafts', size: 'volume_m3', from: 1, to: 2 }],
    'sizes[0].size: got "volume_m3"; expected a size that rafts has',
  ],
  [
    'fish offered for the sump',
    ['stocks'],
    [{ tank: 'sump', species: 'tilapia', number: 5, mass_g: 20 }],
    'stocks[0].tank: got "sump"; expected a fish tank of the loop',
  ],
  [
    'a build without a side stage that is not there',
    ['reference', 'without'],
    ['uv'],
    'reference.without[0]: got "uv"; expected a side stage of the lesson (base)',
  ],
  [
    'a consequence of two things at once',
    ['mistakes', 0, 'shows', 0, 'score'],
    'harvest',
    'mistakes[0].shows[0]: got an object with keys stage, variable, score, statistic, fromD…; expected one of variable, process or score',
  ],
  [
    'a consequence over no days',
    ['mistakes', 0, 'shows', 0, 'toDay'],
    10,
    'mistakes[0].shows[0].toDay: got 10; expected a day after 10, at most 60',
  ],
  [
    'a prediction due before it is asked',
    ['predictions'],
    [{ ...prediction, askDay: 20, dueDay: 20 }],
    'predictions[0].dueDay: got 20; expected a day after 20, when it is asked, at most 60',
  ],
  [
    'choices with a gap',
    ['predictions'],
    [
      {
        ...prediction,
        choices: [
          { key: 'low', text: 'low', below: 1 },
          { key: 'high', text: 'high', atLeast: 2 },
        ],
      },
    ],
    'predictions[0].choices[1].atLeast: got 2; expected 1, where the choice before ends (its below)',
  ],
  [
    'choices that leave out the largest',
    ['predictions'],
    [
      {
        ...prediction,
        choices: [
          { key: 'low', text: 'low', below: 1 },
          { key: 'high', text: 'high', atLeast: 1, below: 2 },
        ],
      },
    ],
    'predictions[0].choices[1].below: got 2; expected nothing: the last choice is open above',
  ],
  [
    'an explanation without evidence',
    ['predictions'],
    [
      {
        ...prediction,
        explanations: [
          { key: 'a', text: 'a', evidence },
          { key: 'b', text: 'b', evidence: { score: 'harvest' } },
        ],
      },
    ],
    'predictions[0].explanations[1].evidence: got an object with keys score, statistic, fromDay; expected atLeast or atMost',
  ],
  [
    'a demonstration of a build not listed',
    ['demonstrations'],
    [{ ...demonstration, right: 'nobody' }],
    'demonstrations[0].right: got "nobody"; expected one of reference, no-fine-filter, never-drained, degassing-first, settler-after-pump, no-base, not-cycled',
  ],
  [
    'a demonstration that looks at what one of the two lacks',
    ['demonstrations'],
    [{ ...demonstration, look: 'mats' }],
    'demonstrations[0].look.stage: got "mats"; expected a stage that stands both in this loop and in the reference, to compare',
  ],
  ['a brief too long for the bar', ['brief'], ['a', 'b', 'c', 'd'], 'brief: got a list of 4; expected a list of 1 to 3 lines'],
];

describe('a broken lesson names the place, what stands there and what was expected', () => {
  test.each(faults)('%s', (_name, path, to, message) => {
    const lesson = changed(
      soundLesson(),
      ['scoring', 'marks'],
      [
        { fishHealth: 40, harvest: 30 },
        { fishHealth: 60, harvest: 50 },
        { fishHealth: 80, harvest: 70 },
      ],
    );
    expect(problemsOf(changed(lesson, path, to))).toContain(message);
  });

  test('a key used by two mistakes', () => {
    const lesson = soundLesson();
    const mistakes = lesson['mistakes'] as Json[];
    const twice = changed(lesson, ['mistakes'], [mistakes[0], mistakes[0]]);
    expect(problemsOf(twice)).toEqual([expect.stringMatching(/^mistakes\[1\]\.key: .*expected a key no other mistake has$/)]);
  });
});

describe('a build made into a plan', () => {
  test('has the stages in the order given, with the sizes the lesson gives them', () => {
    const lesson = lessonOf(soundLesson());
    const plan = buildPlan(lesson, { order: ['fish', 'degas', 'sump', 'pump', 'settler'], actions: [] });
    expect(plan.loop.map((stage) => stage.kind)).toEqual(['fishTank', 'degassingTank', 'sump', 'returnPump', 'radialFlowSettler']);
    expect(plan.loop[1]).toEqual(lesson.shelf.find((part) => part.id === 'degas'));
    expect(lesson.plan.loop.map((stage) => stage.id)).toEqual(['fish', 'sump', 'pump']);
  });

  test('reads back as itself: what a lesson gives is in the steps a plan is kept in', () => {
    const odd = changed(changed(soundLesson(), ['shelf', 0, 'volume_m3'], 0.19049), ['reference', 'actions', 0, 'g_d'], 40.4);
    const lesson = lessonOf(odd);
    const plan = buildPlan(lesson, lesson.reference);
    expect(plan.loop[1].volume_m3).toBe(0.19);
    expect(readPlan(JSON.stringify(plan))).toEqual({ plan });
  });

  test("does the lesson's own actions before the person's", () => {
    const own = { day: 40, do: 'power', on: false };
    const lesson = lessonOf(changed(soundLesson(), ['plan', 'actions'], [own]));
    const plan = buildPlan(lesson, { order: ['fish', 'sump', 'pump'], actions: [{ day: 1, hour: 0, do: 'pump', on: false }] });
    expect(plan.actions.map((action) => action.do)).toEqual(['power', 'pump']);
  });

  test('takes no sludge from parts left on the shelf', () => {
    const side: Json = [
      { id: 'mineral', kind: 'mineralisationTank', takes: ['settler', 'mats'], returnsTo: 'sump' },
      { id: 'base', kind: 'baseDosing', into: 'sump' },
    ];
    const lesson = lessonOf(changed(soundLesson(), ['plan', 'side'], side));
    expect(buildPlan(lesson, { order: ['fish', 'mats', 'sump', 'pump'], actions: [] }).side[0]).toMatchObject({ takes: ['mats'] });
  });
});
