// Problems of a lesson file name the line of the text at which they stand.
import { describe, expect, it } from 'vitest';
import { withLines } from '../../src/lessons/jsonPlace';
import { readLesson } from '../../src/lessons/readLesson';
import { changed, soundLesson } from './plans';

const TEXT = `{
  "title": "A \\"quoted\\" title, with [brackets]: and commas",
  "plan": { "days": 60,
    "loop": [
      { "id": "fish", "volume_m3": 1 },
      { "id": "sump",
        "volume_m3": "big" }
    ] },
  "marks": [[1, 2],
    [3]], "odd key": true
}`;

const lineOf = (path: string, text = TEXT): number | undefined =>
  withLines(text, [{ path, got: { code: 'nothing' }, expected: { code: 'name' } }])[0].line;

describe('the line of a problem', () => {
  it.each([
    ['title', 2],
    ['plan', 3],
    ['plan.days', 3],
    ['plan.loop', 4],
    ['plan.loop[0]', 5],
    ['plan.loop[0].volume_m3', 5],
    ['plan.loop[1].volume_m3', 7],
    ['marks[1][0]', 10],
    ['["odd key"]', 10],
  ])('%s stands at line %i', (path, line) => {
    expect(lineOf(path)).toBe(line);
  });

  it('of what is missing is where the thing that lacks it begins', () => {
    expect(lineOf('plan.loop[1].kind')).toBe(6);
    expect(lineOf('plan.fish[3].number')).toBe(3);
  });

  it('is not given for the whole file, for a text that is no JSON, or for what nothing holds', () => {
    expect(lineOf('')).toBeUndefined();
    expect(lineOf('format')).toBeUndefined();
    expect(lineOf('a', '{ "a": "\\q" ')).toBeUndefined();
  });

  it('counts notes and a byte order mark as they stand in the file', () => {
    expect(lineOf('a', '\uFEFF{ // a note with "a" in it\n\n  "a": 1 }')).toBe(3);
  });

  it('is right in a whole lesson, whatever is wrong with it', () => {
    const lesson = changed(soundLesson(), ['shelf', 0, 'volume_m3'], 'big');
    const text = JSON.stringify(lesson, null, 2);
    const read = readLesson(text);
    if (!('problems' in read)) throw new Error('a volume is no word');
    const [problem] = withLines(text, read.problems);
    expect(problem.path).toBe('shelf[0].volume_m3');
    expect(text.split('\n')[(problem.line ?? 0) - 1]).toContain('"volume_m3": "big"');
  });
});
