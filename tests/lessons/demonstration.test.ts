// Two builds of a lesson beside each other: what differs, and which band the outcome is.
import { describe, expect, it } from 'vitest';
import { outcomeOf, pairOf, standElsewhere } from '../../src/lessons/demonstration';
import { soundLesson } from './plans';
import { readLesson } from '../../src/lessons/readLesson';

describe('stages that stand elsewhere', () => {
  it('are those that one loop lacks or that were moved, and no others', () => {
    expect(standElsewhere(['a', 'b', 'c', 'd'], ['a', 'b', 'c', 'd'])).toEqual([]);
    expect(standElsewhere(['a', 'b', 'c', 'd'], ['a', 'c', 'd'])).toEqual(['b']);
    expect(standElsewhere(['a', 'b', 'c', 'd', 'e'], ['a', 'd', 'b', 'c', 'e'])).toEqual(['d']);
  });
});

describe('the outcome', () => {
  const choices = [
    { key: 'less', text: 'Less', below: 0.9 },
    { key: 'same', text: 'Same', atLeast: 0.9, below: 1.1 },
    { key: 'more', text: 'More', atLeast: 1.1 },
  ];

  it('is the band of right ÷ left, and none where there is no number', () => {
    expect(
      [
        [4, 2],
        [4, 4],
        [4, 4.4],
        [0, 0],
        [Number.NaN, 1],
      ].map(([left, right]) => outcomeOf(left, right, choices).choice),
    ).toEqual(['less', 'same', 'more', null, null]);
  });
});

describe('the pair', () => {
  it('is made of the reference and a mistake, by their keys', () => {
    const read = readLesson(JSON.stringify(soundLesson()));
    if (!('lesson' in read)) throw new Error('a sound lesson is read');
    const [mistake] = read.lesson.mistakes;
    const { plans } = pairOf(read.lesson, { left: 'reference', right: mistake.key });
    expect(plans[0].loop.map(({ id }) => id)).toEqual(read.lesson.reference.order);
    expect(plans[1].loop.map(({ id }) => id)).toEqual(mistake.order);
    expect(() => pairOf(read.lesson, { left: 'reference', right: 'nothing' })).toThrow();
  });
});
