// Marks and consequences are read off a season by formula.
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/lessons/consequences';
import type { Consequence, Lesson } from '../../src/lessons/lesson';
import { harvestFor, marksFor as marksOf } from '../../src/lessons/marks';
import { measure } from '../../src/lessons/measure';
import { movesBetween } from '../../src/lessons/moves';
import { choiceOf, settle } from '../../src/lessons/predictions';
import { withDefaults } from '../../src/lessons/readPlan';
import type { Scores } from '../../src/season/trajectory';
import { stageReading } from '../../src/season/stageReading';
import { scoresOf, tinySeason } from '../tools/tinySeason';

const lesson = {
  given: ['fish', 'rafts', 'pump'],
  plan: withDefaults({ format: 'loopwright.plan/2', loop: [{ id: 'fish', kind: 'fishTank' }] }),
  scoring: {
    plantsWeight: 0.25,
    marks: [
      { fishHealth: 40, harvest: 30 },
      { fishHealth: 60, harvest: 50 },
      { fishHealth: 80, harvest: 70 },
    ],
  },
};
const grown = (plants_kg: number, gain_kg: number, fishHealth: number) => ({
  ...scoresOf({ fishHealth }),
  plants_kg,
  gain_kg,
  plantsIdeal_kg: 10,
  gainIdeal_kg: 5,
});

const shows = (more: Partial<Consequence>): Consequence => ({
  stage: 'fish',
  variable: 'TAN_mgN_L',
  statistic: 'max',
  fromDay: 0,
  ...more,
});
const marksFor = (scores: Scores, from: Pick<Lesson, 'scoring' | 'given' | 'plan'>, order = ['fish', 'rafts', 'pump']): number =>
  marksOf(scores, tinySeason(), order, from);

describe('marks', () => {
  test('weigh plants and fish as the lesson says', () => {
    expect(harvestFor(grown(10, 0, 0), lesson)).toBe(25);
    expect(harvestFor(grown(0, 5, 0), lesson)).toBe(75);
    expect(harvestFor(grown(5, -1, 0), lesson)).toBe(12.5);
  });

  test('nothing to be had is nothing earned, not a fault', () => {
    expect(harvestFor({ plants_kg: 0, plantsIdeal_kg: 0, gain_kg: 0, gainIdeal_kg: 0 }, lesson)).toBe(0);
  });

  test('need both thresholds; reaching one exactly counts', () => {
    expect(marksFor(grown(10, 5, 39.9), lesson)).toBe(0);
    expect(marksFor(grown(10, 5, 40), lesson)).toBe(1);
    expect(marksFor(grown(10, 2.5, 100), lesson)).toBe(2);
    expect(marksFor(grown(10, 5, 80), lesson)).toBe(3);
    expect(marksFor(grown(0, 0, 100), lesson)).toBe(0);
  });

  test('ask for their goals too, and a missed goal ends the count', () => {
    const goal = (atMost: number) => ({
      text: 'little ammonia',
      stage: 'fish',
      variable: 'TAN_mgN_L' as const,
      statistic: 'max' as const,
      fromDay: 0,
      atMost,
    });
    const [one, two, three] = lesson.scoring.marks;
    const asks = (second: number) => ({
      ...lesson,
      scoring: { plantsWeight: 0.25, marks: [one, { ...two, goals: [goal(second)] }, three] },
    });
    expect(marksFor(grown(10, 5, 90), asks(48))).toBe(3);
    expect(marksFor(grown(10, 5, 90), asks(47))).toBe(1);
  });

  test('count the moves from the loop as given', () => {
    const [one, two, three] = lesson.scoring.marks;
    const asks = { ...lesson, scoring: { plantsWeight: 0.25, marks: [one, two, { ...three, moves: 1 }] } };
    expect(marksFor(grown(10, 5, 90), asks, ['fish', 'pump', 'rafts'])).toBe(3);
    expect(marksFor(grown(10, 5, 90), asks, ['fish', 'settler', 'pump', 'rafts'])).toBe(2);
  });
});

describe('moves', () => {
  test.each([
    [['a', 'b', 'c'], ['a', 'b', 'c'], 0],
    [['a', 'b', 'c', 'd'], ['b', 'c', 'd', 'a'], 1],
    [['a', 'b', 'c'], ['c', 'b', 'a'], 2],
    [['a', 'b'], ['a', 'x', 'b'], 1],
    [['a', 'x', 'b'], ['a', 'b'], 1],
    [['a', 'b', 'x'], ['y', 'b', 'a'], 3],
  ])('from %j to %j take %i', (from, to, moves) => {
    expect(movesBetween(from, to)).toBe(moves);
  });
});

describe('a prediction', () => {
  const choices = [
    { key: 'low', text: 'low', below: 10 },
    { key: 'middle', text: 'middle', atLeast: 10, below: 30 },
    { key: 'high', text: 'high', atLeast: 30 },
  ];
  const asked = {
    key: 'peak',
    askDay: 0,
    dueDay: 1,
    question: 'How high?',
    look: 'fish',
    measure: shows({ statistic: 'max' }),
    choices,
    explanations: [
      { key: 'much', text: 'much', evidence: { ...shows({ stage: 'rafts', statistic: 'max' }), atLeast: 72 } },
      { key: 'little', text: 'little', evidence: { ...shows({ statistic: 'max' }), atMost: 23 } },
    ],
  };

  test('falls into the band that holds its number, edges upwards', () => {
    expect([-1, 9.99, 10, 29.99, 30, 1e9, Number.NaN].map((value) => choiceOf(choices, value))).toEqual([
      'low',
      'low',
      'middle',
      'middle',
      'high',
      'high',
      null,
    ]);
  });

  test('is settled by what was lived before its day, and so are its explanations', () => {
    // the fish tank shows 24 at the end of day 0, the bed 2, 3 and 4 times that, on average 72
    expect(settle(tinySeason(), asked)).toEqual({
      key: 'peak',
      value: 24,
      outcome: 'middle',
      explanations: [
        { key: 'much', value: 72, holds: true },
        { key: 'little', value: 24, holds: false },
      ],
    });
  });
});

describe('a measure', () => {
  test('ends before toDay, sums, reads scores, and what a process did a day', () => {
    const season = { ...tinySeason(), processNames: ['rot', 'breathe'] };
    season.days.forEach((chunk, day) => {
      chunk.extents = Float64Array.from({ length: 8 }, (_, index) => (index + 1) * (day + 1));
    });
    expect(measure(season, shows({ statistic: 'last', toDay: 1 }))).toBe(24);
    expect(measure(season, shows({ statistic: 'sum', toDay: 1 }))).toBe(300);
    expect(measure(season, { score: 'harvest', statistic: 'last', fromDay: 0 })).toBe(20);
    expect(measure(season, { score: 'harvest', statistic: 'last', fromDay: 0, toDay: 1 })).toBe(10);
    // the bed's cells 1–3 hold extents 4, 6 and 8 of the second process on day 0, twice that on day 1
    expect(measure(season, { stage: 'rafts', process: 'breathe', statistic: 'mean', fromDay: 0 })).toBe(27);
    expect(measure(season, { stage: 'rafts', process: 'unheard', statistic: 'mean', fromDay: 0 })).toBeNaN();
  });
});

describe('a consequence', () => {
  test('is the largest, smallest, mean or last hour from its day on', () => {
    const season = tinySeason();
    // hour h of day d of cell c shows (24 d + h) × (c + 1); the fish tank is cell 0
    expect(measure(season, shows({ statistic: 'max' }))).toBe(48);
    expect(measure(season, shows({ statistic: 'min' }))).toBe(1);
    expect(measure(season, shows({ statistic: 'min', fromDay: 1 }))).toBe(25);
    expect(measure(season, shows({ statistic: 'mean' }))).toBe(24.5);
    expect(measure(season, shows({ statistic: 'last' }))).toBe(48);
  });

  test('at a stage that is not there cannot be shown', () => {
    expect(compare(tinySeason(), tinySeason(), shows({ stage: 'mats', atLeastTimes: 0 })).holds).toBe(false);
  });

  test('holds at the ratio asked and not beyond it', () => {
    const shown = (more: Partial<Consequence>) => compare(tinySeason(1), tinySeason(2), shows(more));
    expect(shown({ atLeastTimes: 2 })).toMatchObject({ times: 2, holds: true });
    expect(shown({ atLeastTimes: 2.1 }).holds).toBe(false);
    expect(shown({ atMostTimes: 0.5 }).holds).toBe(false);
    expect(shown({}).holds).toBe(false);
    expect(shown({ atLeast: 96 }).holds).toBe(true);
    expect(shown({ atLeast: 97, atLeastTimes: 2 }).holds).toBe(false);
    expect(shown({ atLeast: 96, atLeastTimes: 3 }).holds).toBe(false);
  });

  test('something against nothing is endlessly often, nothing against nothing is once', () => {
    expect(compare(tinySeason(0), tinySeason(1), shows({ atLeastTimes: 1000 }))).toMatchObject({ times: Infinity, holds: true });
    expect(compare(tinySeason(0), tinySeason(0), shows({ atLeastTimes: 2 }))).toMatchObject({ times: 1, holds: false });
  });
});

describe('a long bed', () => {
  test('shows the mean of its water, the sum of its crop, and flow and level at its outlet', () => {
    const season = tinySeason();
    const bed = season.stages[0];
    const read = (variable: string) => stageReading(season.days[0].hourly, 0, season.variables, bed, variable);
    // cells 1, 2 and 3 show 2, 3 and 4 at the end of the first hour
    expect([read('NO3_mgN_L'), read('cut_kg'), read('flow_m3_d'), read('level_m')]).toEqual([3, 9, 4, 4]);
    expect(read('unheard')).toBeNaN();
  });
});
