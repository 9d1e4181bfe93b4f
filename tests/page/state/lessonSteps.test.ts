// Forty-five minutes, shared out whatever a lesson has.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Lesson } from '../../../src/lessons/lesson';
import { CLASS_MINUTES, lessonSteps, minutesShort } from '../../../src/page/state/paper/lessonSteps';
import { smallLesson } from './fakeClient';

const lessonOf = (minutes: number, predictions: number, demonstrations: number): Lesson => ({
  ...smallLesson(),
  minutes,
  predictions: Array.from({ length: predictions }, (_, n) => ({
    key: `p${n}`,
    askDay: 0,
    dueDay: 2,
    question: '',
    look: 'fish',
    measure: { statistic: 'max', fromDay: 0 },
    choices: [],
    explanations: [],
  })),
  demonstrations: Array.from({ length: demonstrations }, (_, n) => ({
    key: `d${n}`,
    title: '',
    left: '',
    right: '',
    leftName: '',
    rightName: '',
    tint: 'ammonia',
    look: 'fish',
    question: '',
    measure: { statistic: 'max', fromDay: 0 },
    choices: [],
    turningPoints: [],
  })),
});

describe('the steps of a lesson plan', () => {
  it('follow each other without a gap and fill the class, whatever the lesson has', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 120 }), fc.nat(4), fc.nat(3), (minutes, predictions, demonstrations) => {
        const steps = lessonSteps(lessonOf(minutes, predictions, demonstrations));
        let at = 0;
        for (const step of steps) {
          expect(step.from).toBe(at);
          expect(step.minutes).toBeGreaterThan(0);
          at += step.minutes;
        }
        expect(at).toBe(CLASS_MINUTES);
        expect(steps.some((step) => step.kind === 'predict')).toBe(predictions > 0);
        expect(steps.some((step) => step.kind === 'show')).toBe(demonstrations > 0);
      }),
    );
  });

  it('give the run its own time where there is room, and say what is short where there is not', () => {
    const run = (lesson: Lesson): number => lessonSteps(lesson).find((step) => step.kind === 'run')?.minutes ?? 0;
    expect(run(lessonOf(12, 1, 1))).toBe(12);
    expect(minutesShort(lessonOf(12, 1, 1))).toBe(0);
    const long = lessonOf(40, 2, 1);
    expect(run(long) + minutesShort(long)).toBe(40);
    expect(minutesShort(long)).toBeGreaterThan(0);
  });
});
