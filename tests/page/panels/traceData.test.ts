// Traces and marks above the scrubber.
import { describe, expect, it } from 'vitest';
import { scrubMarks } from '../../../src/page/panels/run/scrubMarks';
import { heightIn, traceOf, traceStep } from '../../../src/page/panels/run/traceData';
import { mergeSeason } from '../../../src/page/state/run/view';
import type { SeasonEvent } from '../../../src/season/trajectory';
import { smallPlan, smallSeason } from '../state/fakeClient';

const view = mergeSeason(null, smallSeason(smallPlan(), 0));

describe('a trace', () => {
  it('shows no hour that was not lived', () => {
    const trace = traceOf(view, [], 'ammonia', 'fish', 24, 96);
    const xs = [...(trace?.path.matchAll(/[ML]([\d.]+) /g) ?? [])].map((found) => Number(found[1]));
    expect(Math.max(...xs)).toBeCloseTo(250);
    expect(trace?.high).toBeCloseTo(2.4, 5);
  });

  it('marks the fine zone up to the watch limit', () => {
    const trace = traceOf(view, [{ applies: 'fish', variable: 'TAN_mgN_L', watchAbove: 2, actAbove: 4 }], 'ammonia', 'fish', 48, 96);
    expect(trace?.ease?.bottom).toBe(1);
    expect(trace?.ease?.top).toBeGreaterThan(0.3);
    expect(trace?.ease?.top).toBeLessThan(0.9);
  });

  it('shares its box with the branch it is compared with, each as far as it was lived', () => {
    const other = mergeSeason(null, smallSeason(smallPlan(), 0, 30));
    const alone = traceOf(view, [], 'ammonia', 'fish', 48, 96);
    const beside = traceOf(view, [], 'ammonia', 'fish', 48, 96, { season: other, lived_h: 72 });
    expect(alone?.ghostPath).toBe('');
    expect(beside?.high).toBe(alone?.high);
    expect(beside?.ghostPath).toMatch(/L750\.0 [\d.]+$/);
    expect(beside?.path).toMatch(/L500\.0 [\d.]+$/);
    // thirty mg/L more in the ghost: the present line sinks in the box they share
    if (alone === null || beside === null) throw new Error('no trace');
    expect(heightIn(beside, beside.high)).toBeGreaterThan(heightIn(alone, alone.high));
  });

  it('keeps every value inside its box', () => {
    const trace = traceOf(view, [], 'ammonia', 'fish', 48, 96);
    if (trace === null) throw new Error('no trace');
    expect(heightIn(trace, trace.high)).toBeGreaterThan(0);
    expect(heightIn(trace, trace.high * 9)).toBe(0);
    expect(heightIn(trace, -1)).toBe(1);
  });

  it('takes no more points than can be told apart', () => {
    expect(traceStep(96)).toBe(1);
    expect(traceStep(365 * 24)).toBe(37);
  });

  it('is not drawn for a stage without water of its own', () => {
    expect(traceOf(view, [], 'ammonia', 'pump', 24, 96)).toBeNull();
  });
});

describe('marks above the scrubber', () => {
  const event = (hour: number, kind: SeasonEvent['kind'], byPerson = false): SeasonEvent => ({
    hour,
    kind,
    stage: 'fish',
    amount: 1,
    byPerson,
  });

  it('leave out chores done by routine, but not those of a hand', () => {
    const marks = scrubMarks([event(9, 'drained'), event(33, 'drained', true)], 1000, 1440);
    expect(marks.map((mark) => [mark.hour, mark.shape])).toEqual([[33, 'hand']]);
  });

  it('gives trouble its words first when there is no room for all', () => {
    const marks = scrubMarks([event(600, 'harvested'), event(604, 'fishDied')], 600, 1440);
    expect(marks.find((mark) => mark.kind === 'fishDied')?.label).not.toBeNull();
    expect(marks.find((mark) => mark.kind === 'harvested')?.label).toBeNull();
  });

  it('one mark stands for all deaths of a day', () => {
    expect(scrubMarks([event(600, 'fishDied'), event(610, 'fishDied')], 1000, 1440)).toHaveLength(1);
  });
});
