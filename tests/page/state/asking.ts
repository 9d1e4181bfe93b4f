// A lesson that asks: one prediction before the season and one on its second day, fish to put in, and sizes left free.
import type { Lesson, Prediction } from '../../../src/lessons/lesson';
import type { Judged } from '../../../src/page/state/common/state';
import { smallLesson } from './fakeClient';

const prediction = (key: string, askDay: number, dueDay: number): Prediction => ({
  key,
  askDay,
  dueDay,
  question: `What of ${key}?`,
  look: 'sump',
  measure: { stage: 'fish', variable: 'O2_mg_L', statistic: 'max', fromDay: 0, toDay: dueDay },
  choices: [
    { key: 'low', text: 'little', below: 5 },
    { key: 'high', text: 'much', atLeast: 5 },
  ],
  explanations: [
    { key: 'air', text: 'Air.', evidence: { stage: 'fish', process: 'oxygenTransfer', statistic: 'mean', fromDay: 0, atLeast: 1 } },
    { key: 'magic', text: 'Magic.', evidence: { stage: 'fish', process: 'oxygenTransfer', statistic: 'mean', fromDay: 0, atMost: -1 } },
  ],
});

export function askingLesson(days = 4, change: Partial<Lesson> = {}): Lesson {
  return {
    ...smallLesson(days),
    predictions: [prediction('first', 0, 2), prediction('second', 1, 3)],
    stocks: [
      { tank: 'fish', species: 'tilapia', number: 40, mass_g: 20 },
      { tank: 'fish', species: 'tilapia', number: 40, mass_g: 20 },
      { tank: 'fish', species: 'commonCarp', number: 5, mass_g: 100 },
    ],
    sizes: [
      { stage: 'fish', size: 'volume_m3', from: 0.5, to: 2 },
      { stage: 'sump', size: 'stand_m', from: -0.4, to: 0.4 },
      { stage: 'rafts', size: 'area_m2', from: 1, to: 6 },
    ],
    ...change,
  };
}

export function judgedAs(value: number): Judged {
  const settled = (key: string) => ({
    key,
    value,
    outcome: value < 5 ? 'low' : 'high',
    explanations: [
      { key: 'air', value: 12, holds: true },
      { key: 'magic', value: 12, holds: false },
    ],
  });
  return { marks: [], predictions: [settled('first'), settled('second')] };
}
