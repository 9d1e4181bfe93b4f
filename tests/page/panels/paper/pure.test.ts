// What the sheets are made of: cards, deeds and measures in words, what befell, traces with round axes, the fit on a page.
import { readdirSync, readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { readLesson } from '../../../../src/lessons/readLesson';
import type { Lesson } from '../../../../src/lessons/lesson';
import type { Action } from '../../../../src/season/plan';
import { processFacts } from '../../../../src/worker/processFacts';
import { VARIABLES, SCORE_NAMES } from '../../../../src/season/trajectory';
import { cardsOf } from '../../../../src/page/panels/paper/cards';
import { deedLines, ownActions } from '../../../../src/page/panels/paper/deedWords';
import { happenings } from '../../../../src/page/panels/paper/happenings';
import { limitWords, measureValue, measureWords, timesWords } from '../../../../src/page/panels/common/measureWords';
import { fitScale } from '../../../../src/page/panels/paper/OnePage';
import { axisOf, paperTraceOf, roundStep, TRACE_BOX } from '../../../../src/page/panels/paper/paperTrace';
import { mergeSeason } from '../../../../src/page/state/run/view';
import { isWord } from '../../../../src/words/say';
import { showUnitsOf } from '../../../../src/words/units';
import { smallLesson, smallPlan, smallSeason } from '../../state/fakeClient';

afterEach(() => showUnitsOf('metric'));

function lessons(): Lesson[] {
  return readdirSync('levels')
    .filter((name) => /^\d\d-.*\.json$/.test(name))
    .map((name) => {
      const read = readLesson(readFileSync(`levels/${name}`, 'utf8'));
      if ('problems' in read) throw new Error(`${name}: ${JSON.stringify(read.problems)}`);
      return read.lesson;
    });
}

describe('the cards', () => {
  it('hold every stage once, and in no version of any lesson stand in the reference order', () => {
    const all = lessons();
    expect(all.length).toBeGreaterThan(0);
    for (const lesson of all) {
      const known = [...lesson.plan.loop, ...lesson.shelf];
      const kindOf = (id: string): string | undefined => known.find((stage) => stage.id === id)?.kind;
      for (const version of [0, 1, 2, 3]) {
        const { first, cards, boxes } = cardsOf(lesson, version);
        const placed = cards.filter((card) => !card.stray).map((card) => card.stage);
        const right = lesson.reference.order.slice(1);
        expect([first?.id, ...placed.map((stage) => stage.id)].sort(), lesson.id).toEqual([...lesson.reference.order].sort());
        expect(boxes).toBe(right.length);
        expect(new Set(cards.map((card) => card.letter)).size).toBe(cards.length);
        if (new Set(right.map(kindOf)).size > 1)
          expect(
            placed.map((stage) => stage.kind),
            `${lesson.id} ${version}`,
          ).not.toEqual(right.map(kindOf));
      }
    }
  });

  it('of one version are the same each time, and differ between versions', () => {
    const [lesson] = lessons();
    const order = (version: number): string =>
      cardsOf(lesson, version)
        .cards.map((card) => card.stage.id)
        .join();
    expect(order(1)).toBe(order(1));
    expect(new Set([0, 1, 2, 3].map(order)).size).toBeGreaterThan(1);
  });
});

describe('deeds in words', () => {
  const actions: Action[] = [
    { every_d: 3, from: 2, to: 9, hour: 9, do: 'drain', stage: 'settler' },
    { day: 0, do: 'feed', tank: 'fish', g_d: 60 },
    { day: 6, hour: 14, do: 'base', base: 'KHCO3', g_d: 12, targetPH: 6.9 },
    { day: 30, do: 'power', on: false },
  ];
  const plan = { ...smallPlan(40), loop: [...smallPlan().loop, ...smallLesson().shelf], actions };

  it('come in the order in which they begin, as far as they were lived', () => {
    const lines = deedLines(plan, actions, 20 * 24);
    expect(lines.map((line) => line.when)).toEqual(['From the start', 'Every 3 days from day 2 to day 9', 'Day 6, 14:00']);
    expect(lines[0].what).toContain('60\u00a0g/d, Fish tank');
    expect(lines[2].what).toContain('6.90');
  });

  it('are told apart from those of the lesson', () => {
    const lesson = { ...smallLesson(), plan: { ...smallPlan(), actions: [actions[3]] } };
    expect(ownActions(plan, lesson).own).toEqual(actions.slice(0, 3));
    expect(ownActions(plan, lesson).given).toEqual([actions[3]]);
  });
});

describe('measures in words', () => {
  const plan = { ...smallPlan(), loop: [...smallPlan().loop, ...smallLesson().shelf] };

  it('name quantity, stage, statistic and days', () => {
    expect(measureWords({ stage: 'rafts', variable: 'rootMat_g_m2', statistic: 'max', fromDay: 10 }, plan)).toBe(
      'Root fouling, Raft bed (highest, from day 10)',
    );
    expect(measureWords({ score: 'harvest', statistic: 'last', fromDay: 0 }, plan)).toBe('Harvest (whole season)');
    expect(measureWords({ stage: 'rafts', process: 'nitritation', statistic: 'sum', fromDay: 2, toDay: 5 }, plan)).toContain('day 2 to 5');
  });

  it('know every variable and every score', () => {
    for (const variable of VARIABLES) expect(isWord(`variable.${variable}`), variable).toBe(true);
    for (const score of SCORE_NAMES) expect(isWord(`score.${score}`), score).toBe(true);
  });

  it('give numbers with units; small ones keep two figures', () => {
    const asked = { stage: 'rafts', variable: 'H2S_ug_L', statistic: 'max', fromDay: 0 } as const;
    expect(measureValue(asked, 0.0821, null)).toBe('0.082\u00a0µg/L');
    expect(measureValue(asked, 12.34, null)).toBe('12.3\u00a0µg/L');
    expect(measureValue({ score: 'plants_kg', statistic: 'last', fromDay: 0 }, 1.5, null)).toBe('1.50\u00a0kg');
    expect(
      measureValue({ stage: 'rafts', process: 'nitritation', statistic: 'sum', fromDay: 0 }, 2.5, {
        effects: {},
        limits: {},
        crops: {},
        units: { nitritation: 'g N' },
      }),
    ).toBe('2.50\u00a0g N');
    // an index is said as what it compares with, by the model's own unit
    expect(measureValue({ stage: 'uv', process: 'freeBacteriaKill', statistic: 'mean', fromDay: 0 }, 3.86, processFacts())).toBe(
      '3.86\u00a0× the free bacteria in 1\u00a0m³ of a clean loop',
    );
    expect(limitWords({ ...asked, atLeast: 1, atMost: 5 }, null)).toBe('at least 1.0\u00a0µg/L and at most 5.0\u00a0µg/L');
    expect([timesWords(0.346), timesWords(2.52), timesWords(15.6)]).toEqual(['0.35', '2.5', '15.6']);
  });
});

describe('what befell', () => {
  it('is told once for each kind and stage, with how often and how many', () => {
    const plan = smallPlan();
    const season = mergeSeason(null, smallSeason(plan, 0));
    const event = (hour: number, kind: 'fishDied' | 'spilled', amount: number) => ({ hour, kind, stage: 'fish', amount, byPerson: false });
    season.days[1] = { ...season.days[1], events: [event(30, 'fishDied', 2), event(31, 'spilled', 5), event(33, 'fishDied', 3)] };
    season.days[3] = { ...season.days[3], events: [event(80, 'spilled', 5)] };
    expect(happenings(season, 96)).toEqual([
      { kind: 'fishDied', stage: 'fish', day: 1, times: 2, amount: 5 },
      { kind: 'spilled', stage: 'fish', day: 1, times: 2, amount: 10 },
    ]);
    expect(happenings(season, 32)).toHaveLength(2);
    expect(happenings(season, 29)).toEqual([]);
  });
});

describe('a trace on paper', () => {
  it('has round steps and an axis that holds all numbers', () => {
    expect([0.37, 1, 4.2, 9, 47].map(roundStep)).toEqual([0.2, 0.5, 2.5, 5, 25]);
    for (const [low, high] of [
      [6.02, 8.04],
      [0.4, 4.8],
      [6.9, 7.1],
      [19.2, 31.5],
    ]) {
      for (const fromZero of [true, false]) {
        const { bottom, top, step } = axisOf(low, high, fromZero);
        expect(bottom).toBeLessThanOrEqual(low);
        expect(top).toBeGreaterThanOrEqual(high - 1e-9);
        expect((top - bottom) / step).toBeLessThanOrEqual(4 + 1e-9);
      }
    }
  });

  it('draws what was lived inside its box, in the unit shown, with the limit of comfort', () => {
    const plan = smallPlan();
    const season = mergeSeason(null, smallSeason(plan, 0));
    const trace = paperTraceOf(season, [{ applies: 'fish', variable: 'TAN_mgN_L', watchAbove: 4 }], 'TAN_mgN_L', 'fish', 72, 96);
    expect(trace?.high).toBeCloseTo(7.2, 3);
    expect(trace?.limits).toHaveLength(1);
    const points = [...(trace?.path ?? '').matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
    expect(points.length).toBeGreaterThan(50);
    for (const [x, y] of points) {
      expect(x).toBeGreaterThanOrEqual(TRACE_BOX.left);
      expect(x).toBeLessThanOrEqual(TRACE_BOX.width - TRACE_BOX.right);
      expect(y).toBeGreaterThanOrEqual(TRACE_BOX.top);
      expect(y).toBeLessThanOrEqual(TRACE_BOX.height - TRACE_BOX.bottom);
    }
    // three of four days
    expect(points.at(-1)?.[0]).toBeCloseTo(TRACE_BOX.left + 0.75 * (TRACE_BOX.width - TRACE_BOX.left - TRACE_BOX.right), 0);
    expect(paperTraceOf(season, [], 'TAN_mgN_L', 'pump', 72, 96)).toBeNull();
  });
});

describe('the fit on a page', () => {
  it('is the largest scale that fits, and full size where none does', () => {
    expect(fitScale(() => 900, 1000, 0.8)).toBe(1);
    expect(fitScale((scale) => 1100 * scale, 1000, 0.8)).toBeCloseTo(0.9, 9);
    expect(fitScale((scale) => 1300 * scale, 1000, 0.8)).toBe(1);
  });
});
