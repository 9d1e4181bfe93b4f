// Minutes of a lesson: counted from what it asks for, said in levels/README.md, kept where a file says its own.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { countsOf, DAYS_A_MINUTE, minutesOf, MISTAKES_A_RUN, PACE } from '../../src/lessons/minutes';
import type { Lesson } from '../../src/lessons/lesson';
import { readLesson } from '../../src/lessons/readLesson';
import { changed, soundLesson, type Json } from './plans';

function lessonWith(path: string[], value: Json | undefined): Lesson {
  const read = readLesson(JSON.stringify(changed(soundLesson(), path, value)));
  if ('problems' in read) throw new Error(JSON.stringify(read.problems));
  return read.lesson;
}
const sound = (): Lesson => lessonWith(['title'], 'A');

describe('the minutes of a lesson', () => {
  it('count parts to place and move, deeds, offers, questions and runs', () => {
    const lesson = sound();
    const { steps, questions, runs } = countsOf(lesson);
    expect(steps).toBe(4 + lesson.reference.actions.length);
    expect(questions).toBe(lesson.predictions.length);
    expect(runs).toBe(1 + Math.floor(lesson.mistakes.length / MISTAKES_A_RUN));
    const [first, second] = lesson.reference.order;
    expect(countsOf({ ...lesson, given: lesson.reference.order }).steps).toBe(steps - 4);
    expect(countsOf({ ...lesson, given: [first, ...lesson.reference.order.slice(2), second] }).steps).toBe(steps - 3);
    expect(countsOf({ ...lesson, sizes: [{ stage: 'fish', size: 'volume_m3', from: 1, to: 2 }] }).steps).toBe(steps + 1);
  });

  it('grow with each of them, in steps of five', () => {
    const lesson = sound();
    const deed = lesson.reference.actions[0];
    const longer = {
      ...lesson,
      reference: { ...lesson.reference, actions: Array.from({ length: lesson.reference.actions.length + 10 }, () => deed) },
    };
    expect(minutesOf(longer) - minutesOf(lesson)).toBe(10 * PACE.step);
    expect(minutesOf({ ...lesson, mistakes: [] })).toBeLessThan(minutesOf(lesson));
    expect(minutesOf({ ...lesson, predictions: [] })).toBeLessThan(minutesOf(lesson));
    expect(minutesOf({ ...lesson, plan: { ...lesson.plan, days: lesson.plan.days + 2 * DAYS_A_MINUTE } })).toBeGreaterThan(
      minutesOf(lesson),
    );
    expect(minutesOf(lesson) % 5).toBe(0);
  });

  it('stand in a lesson whose file does not say, and are left alone where it does', () => {
    const reckoned = lessonWith(['minutes'], undefined);
    expect(reckoned.minutes).toBe(minutesOf(reckoned));
    expect(lessonWith(['minutes'], 7).minutes).toBe(7);
  });

  it('are told to authors by the same numbers', () => {
    const page = readFileSync(new URL('../../levels/README.md', import.meta.url), 'utf8');
    const told = page.slice(page.indexOf('## How long it takes'), page.indexOf('## A worked example'));
    const of = (words: string): string => new RegExp(`^\\| ${words}[^|]*\\| (.*) \\|$`, 'm').exec(told)?.[1] ?? '';
    expect([of('reading the brief'), of('each step'), of('each prediction'), of('reading the result')].map(Number)).toEqual([
      PACE.reading,
      PACE.step,
      PACE.question,
      PACE.result,
    ]);
    expect(of('each run')).toBe(`${PACE.run}, and a minute for each ${DAYS_A_MINUTE} days: a day a second`);
    expect(told).toContain('`05-fines-on-roots.json`: 2 + 3 steps × 0.5 + 2 predictions × 2 + 3 runs × (3 + 42 / 60) + 2 = 20.6, so 20.');
    const fifth = readLesson(readFileSync(new URL('../../levels/05-fines-on-roots.json', import.meta.url), 'utf8'));
    if ('problems' in fifth) throw new Error('the lesson cannot be read');
    expect({ ...countsOf(fifth.lesson), days: fifth.lesson.plan.days, minutes: fifth.lesson.minutes }).toEqual({
      steps: 3,
      questions: 2,
      runs: 3,
      days: 42,
      minutes: 20,
    });
  });
});
