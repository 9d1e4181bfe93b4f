// What the path shows of a lesson is read without the engine, and survives any file.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cardOf } from '../../src/lessons/card';

const LEVELS = new URL('../../levels/', import.meta.url);

describe("a lesson's card", () => {
  it('tells number, words, time and the reference loop, and what the learner places', () => {
    const lesson = {
      id: 'a',
      title: 'A',
      teaches: 'b',
      aim: 'c',
      minutes: 15,
      plan: {
        loop: [
          { id: 'fish', kind: 'fishTank' },
          { id: 'pump', kind: 'returnPump' },
        ],
      },
      shelf: [{ id: 'rafts', kind: 'raftBed' }],
      reference: { order: ['fish', 'rafts', 'pump', 'ghost'] },
    };
    expect(cardOf('04-a.json', JSON.stringify(lesson))).toEqual({
      number: '04',
      file: '04-a.json',
      id: 'a',
      title: 'A',
      teaches: 'b',
      aim: 'c',
      minutes: 15,
      free: false,
      loop: [
        { kind: 'fishTank', placed: false },
        { kind: 'raftBed', placed: true },
        { kind: 'returnPump', placed: false },
      ],
    });
    expect(cardOf('04-a.json', JSON.stringify({ ...lesson, given: ['fish', 'rafts', 'pump'] })).loop.some((stage) => stage.placed)).toBe(
      false,
    );
  });

  it.each([
    '',
    '{',
    'null',
    '[1]',
    '{"title":3,"plan":[],"shelf":{},"reference":{"order":7},"minutes":"long"}',
    '{"plan":{"loop":[null,1]},"shelf":[null],"reference":{"order":[null]}}',
  ])('keeps its place whatever the file holds: %s', (text) => {
    expect(cardOf('09-x.json', text)).toMatchObject({
      number: '09',
      id: '09-x.json',
      title: '09-x.json',
      teaches: '',
      minutes: 0,
      free: false,
      loop: [],
    });
  });

  it.each(readdirSync(LEVELS).filter((name) => /^\d\d-.*\.json$/.test(name)))('%s has one', (name) => {
    const card = cardOf(name, readFileSync(new URL(name, LEVELS), 'utf8'));
    expect(card.title).not.toBe(name);
    expect(card.loop.length).toBeGreaterThan(1);
  });
});
