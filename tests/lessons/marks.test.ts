// Marks and consequences are read off a season by formula.
import { describe, expect, test } from 'vitest';
import { compare, measure } from '../../src/lessons/consequences';
import type { Consequence } from '../../src/lessons/lesson';
import { harvestFor, marksFor } from '../../src/lessons/marks';
import { stageReading } from '../../src/season/stageReading';
import { scoresOf, tinySeason } from '../tools/tinySeason';

const lesson = { scoring: { plantsWeight: 0.25, marks: [{ fishHealth: 40, harvest: 30 }, { fishHealth: 60, harvest: 50 }, { fishHealth: 80, harvest: 70 }] } };
const grown = (plants_kg: number, gain_kg: number, fishHealth: number) => ({ ...scoresOf({ fishHealth }), plants_kg, gain_kg, plantsIdeal_kg: 10, gainIdeal_kg: 5 });

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
});

const shows = (more: Partial<Consequence>): Consequence => ({ stage: 'fish', variable: 'TAN_mgN_L', statistic: 'max', fromDay: 0, ...more });

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
