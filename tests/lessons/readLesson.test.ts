// The gate for lesson files: every listed build must be one the model can run and the lesson can compare.
import { describe, expect, test } from 'vitest';
import { buildPlan } from '../../src/lessons/buildPlan';
import type { Lesson } from '../../src/lessons/lesson';
import { problemText } from '../../src/lessons/problems';
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
const faults: [string, (string | number)[], Json | undefined, string][] = [
  ['a shelf part with a fixed stage\'s name', ['shelf', 0, 'id'], 'sump', 'shelf[0].id: got "sump"; expected a name no other stage has'],
  ['a reference without the pump', ['reference', 'order'], ['fish', 'settler', 'mats', 'degas', 'rafts', 'sump'], `reference.order: got the fixed stages fish, sump; expected ${fixed}`],
  ['fixed stages out of order', ['mistakes', 0, 'order'], ['fish', 'pump', 'sump'], `mistakes[0].order: got the fixed stages fish, pump, sump; expected ${fixed}`],
  ['a part nobody offers', ['reference', 'order', 1], 'tower', 'reference.order[1]: got "tower"; expected one of fish, sump, pump, settler, mats, degas, rafts'],
  ['a part placed twice', ['reference', 'order', 2], 'settler', 'reference.order[2]: got "settler"; expected each stage once'],
  ['a loop that does not begin at the fish tank', ['reference', 'order'], ['settler', 'fish', 'mats', 'degas', 'rafts', 'sump', 'pump'], 'reference.order: got "radialFlowSettler"; expected fishTank: a loop begins at its fish tank'],
  ['two thresholds only', ['scoring', 'marks'], [{ fishHealth: 1, harvest: 1 }, { fishHealth: 2, harvest: 2 }], 'scoring.marks: got a list of 2; expected a list of 3 to 3 thresholds, for one, two and three marks'],
  ['thresholds that fall', ['scoring', 'marks', 2, 'harvest'], 1, 'scoring.marks[2].harvest: got 1; expected at least 50, as the mark before'],
  ['the same threshold twice', ['scoring', 'marks', 2], { fishHealth: 60, harvest: 50 }, 'scoring.marks[2]: got an object with keys fishHealth, harvest; expected a threshold higher than the mark before'],
  ['a mistake that rinses what it left out', ['mistakes', 0, 'actions', 0], { day: 1, do: 'rinse', stage: 'mats' }, 'mistakes[0].actions[0].stage: got "mats"; expected a stage that can be rinsed (fineFilter, cartridgeFilter, mediaBed, or a tank with media); no stage has this name (there are fish, settler, degas, rafts, sump, pump, base)'],
  ['a consequence at a stage left out', ['mistakes', 0, 'shows', 0, 'stage'], 'mats', 'mistakes[0].shows[0].stage: got "mats"; expected a stage that stands both in this loop and in the reference, to compare'],
  ['a consequence that asks nothing', ['mistakes', 0, 'shows', 0], { stage: 'rafts', variable: 'pH', statistic: 'mean' }, 'mistakes[0].shows[0]: got an object with keys stage, variable, statistic, fromDay; expected atLeastTimes or atMostTimes, against the reference'],
  ['a consequence after the end', ['mistakes', 0, 'shows', 0, 'fromDay'], 60, 'mistakes[0].shows[0].fromDay: got 60; expected a day before the season ends (60 days)'],
  ['a rig', ['plan', 'rig'], { inflow: {}, flow_m3_d: 1 }, 'plan.rig: got an object with keys inflow, flow_m3_d; expected null: a lesson plays a loop'],
  ['a fault inside its plan', ['plan', 'climate', 'weather'], 2, 'plan.climate.weather: got 2; expected a number from 0 to 1'],
  ['fish in a tank that is not there', ['plan', 'fish', 0, 'tank'], 'pond', 'plan.fish[0].tank: got "pond"; expected a fish tank of the loop; no stage has this name (there are fish, sump, pump, base, settler, mats, degas, rafts)'],
  ['a brief too long for the bar', ['brief'], ['a', 'b', 'c', 'd'], 'brief: got a list of 4; expected a list of 1 to 3 lines'],
];

describe('a broken lesson names the place, what stands there and what was expected', () => {
  test.each(faults)('%s', (_name, path, to, message) => {
    const lesson = changed(soundLesson(), ['scoring', 'marks'], [{ fishHealth: 40, harvest: 30 }, { fishHealth: 60, harvest: 50 }, { fishHealth: 80, harvest: 70 }]);
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

  test('does the lesson\'s own actions before the person\'s', () => {
    const own = { day: 40, do: 'power', on: false };
    const lesson = lessonOf(changed(soundLesson(), ['plan', 'actions'], [own]));
    const plan = buildPlan(lesson, { order: ['fish', 'sump', 'pump'], actions: [{ day: 1, hour: 0, do: 'pump', on: false }] });
    expect(plan.actions.map((action) => action.do)).toEqual(['power', 'pump']);
  });

  test('takes no sludge from parts left on the shelf', () => {
    const side: Json = [{ id: 'mineral', kind: 'mineralisationTank', takes: ['settler', 'mats'], returnsTo: 'sump' }, { id: 'base', kind: 'baseDosing', into: 'sump' }];
    const lesson = lessonOf(changed(soundLesson(), ['plan', 'side'], side));
    expect(buildPlan(lesson, { order: ['fish', 'mats', 'sump', 'pump'], actions: [] }).side[0]).toMatchObject({ takes: ['mats'] });
  });
});
