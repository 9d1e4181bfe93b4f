// How a lesson's file played, in words: every number with its unit, nothing left unfilled.
import { describe, expect, it } from 'vitest';
import { playLesson } from '../../../src/lessons/playLesson';
import { readLesson } from '../../../src/lessons/readLesson';
import { askedWords, mustOf, shownWords, titleOf } from '../../../src/page/panels/path/checkWords';
import { changed, soundLesson, type Json } from '../../lessons/plans';
import { tinySeason } from '../../tools/tinySeason';

function played() {
  const mistake = {
    key: 'no-settler',
    title: 'No settler',
    order: ['fish', 'rafts', 'sump', 'pump'],
    shows: [{ stage: 'rafts', variable: 'H2S_ug_L', statistic: 'max', fromDay: 0, atLeastTimes: 3, atLeast: 5 }],
  };
  const choices: Json = [
    { key: 'low', text: 'Low', below: 1 },
    { key: 'high', text: 'High', atLeast: 1 },
  ];
  const sulfide: Json = { stage: 'rafts', variable: 'H2S_ug_L', statistic: 'max' };
  const goal: Json = { ...sulfide, atMost: 500, text: 'Little sulfide' };
  let lesson: Json = changed(soundLesson(), ['mistakes'], [mistake]);
  lesson = changed(
    lesson,
    ['predictions'],
    [
      {
        key: 'gas',
        askDay: 0,
        dueDay: 2,
        question: 'How much?',
        look: 'rafts',
        measure: sulfide,
        choices,
        explanations: [
          { key: 'yes', text: 'Yes', evidence: { ...sulfide, atLeast: 0 } },
          { key: 'also', text: 'Also', evidence: { ...sulfide, atLeast: 0 } },
        ],
      },
    ],
  );
  lesson = changed(
    lesson,
    ['demonstrations'],
    [
      {
        key: 'pair',
        title: 'Pair',
        left: 'reference',
        right: 'no-settler',
        leftName: 'A',
        rightName: 'B',
        tint: 'hydrogenSulfide',
        look: 'rafts',
        question: 'How much?',
        measure: sulfide,
        choices,
        turningPoints: [{ day: 1, say: 'Look' }],
      },
    ],
  );
  lesson = changed(lesson, ['scoring', 'marks', 2, 'goals'], [goal]);
  const read = readLesson(JSON.stringify(lesson));
  if ('problems' in read) throw new Error(JSON.stringify(read.problems));
  const runs = playLesson(read.lesson, (plan) => tinySeason(plan.loop.some((stage) => stage.id === 'settler') ? 1 : 2));
  return { lesson: read.lesson, reference: runs[0], mistake: runs[1], idle: runs[2] };
}

describe('the words of a check', () => {
  const { lesson, reference, mistake, idle } = played();

  it('name the builds and what each must do', () => {
    expect([reference, mistake, idle].map(titleOf)).toEqual(['The reference loop', 'No settler', 'The loop as given, nothing done']);
    expect(new Set([reference, mistake, idle].map(mustOf)).size).toBe(3);
  });

  it('tell what a mistake showed against the reference, with units and both limits', () => {
    expect(mistake.passes).toBe(false);
    expect(shownWords(mistake.shown[0], lesson, null)).toMatch(
      /^Hydrogen sulfide.*Raft bed.*: [\d.,]+\u00a0µg\/L against [\d.,]+\u00a0µg\/L, 2\.00 times; asked: .*5.*µg\/L, at least 3\.00 times$/,
    );
  });

  it("tell goals, predictions and demonstrations in the lesson's own words", () => {
    const words = reference.asked.map((asked) => askedWords(asked, lesson, null));
    expect(words[0]).toMatch(/^Goal “Little sulfide”: [\d.,]+\u00a0µg\/L$/);
    expect(words[1]).toMatch(
      /^Prediction gas: [\d.,]+\u00a0µg\/L, which is “High”\. Explanations: yes holds \(.*\), also holds \(.*\)\. At least one of them must hold and one must not\.$/,
    );
    expect(words[2]).toMatch(/^Demonstration pair: .*, 2\.00 times, which is “High”$/);
    for (const line of words) expect(line).not.toMatch(/[{}]/);
  });
});
