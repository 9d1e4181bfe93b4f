// Whatever comes in, the gates answer: never an exception, always problems with a place.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jsonFault } from '../../src/lessons/jsonScan';
import { withLines } from '../../src/lessons/jsonPlace';
import { readLesson } from '../../src/lessons/readLesson';
import { readPlan } from '../../src/lessons/readPlan';
import type { Problem } from '../../src/lessons/problem';
import { expectedWords, foundWords, whereWords } from '../../src/words/problemWords';
import { changed, soundLesson, soundPlan } from './plans';
import type { Json } from './plans';

function sound(problems: Problem[]): void {
  expect(problems.length).toBeGreaterThan(0);
  for (const problem of problems) {
    expect(whereWords(problem)).not.toBe('');
    expect(foundWords(problem.got)).not.toBe('');
    expect(foundWords(problem.got).length).toBeLessThan(120);
    expect(expectedWords(problem.expected)).not.toBe('');
    // every fault has a code of ours, and every value of it has its place
    expect(problem.expected.code).not.toBe('other');
    expect(problem.expected.code === 'words' ? '' : expectedWords(problem.expected)).not.toMatch(/\{\w+\}/);
  }
}

/** Every path into a value. */
function pathsOf(value: Json, path: (string | number)[] = []): (string | number)[][] {
  if (typeof value !== 'object' || value === null) return [path];
  const entries = Array.isArray(value) ? value.map((inner, index) => [index, inner] as const) : Object.entries(value);
  return [...(path.length > 0 ? [path] : []), ...entries.flatMap(([key, inner]) => pathsOf(inner, [...path, key]))];
}

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('the gates', () => {
  test('answer any JSON value with problems', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        for (const read of [readPlan(JSON.stringify(value)), readLesson(JSON.stringify(value))]) {
          if ('problems' in read) sound(read.problems);
          else throw new Error('a random value was taken for a plan');
        }
      }),
      { numRuns: 300 },
    );
  });

  test('answer any text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'{}[]",:0-1.eE\\u truefalsn\n') })), (text) => {
        for (const read of [readPlan(text), readLesson(text)]) if ('problems' in read) sound(read.problems);
      }),
      { numRuns: 500 },
    );
  });

  test('answer a sound plan with any one place replaced by anything', () => {
    const plan = soundPlan();
    fc.assert(
      fc.property(fc.constantFrom(...pathsOf(plan)), fc.jsonValue(), (path, value) => {
        const read = readPlan(JSON.stringify(changed(plan, path, value as Json)));
        if ('problems' in read) sound(read.problems);
        else expect(read.plan.format).toBe('loopwright.plan/2');
      }),
      { numRuns: 500 },
    );
  });

  test('answer a sound lesson with any one place replaced by anything', () => {
    const lesson = soundLesson();
    fc.assert(
      fc.property(fc.constantFrom(...pathsOf(lesson)), fc.jsonValue(), (path, value) => {
        const read = readLesson(JSON.stringify(changed(lesson, path, value as Json)));
        if ('problems' in read) sound(read.problems);
      }),
      { numRuns: 300 },
    );
  });

  test('answer very deep nesting and very long texts, at once', { timeout: 5_000 }, () => {
    const deep = '['.repeat(200_000);
    for (const text of [
      `{"title": "${'\\\\'.repeat(450_000)}`,
      `["${'x'.repeat(990_000)}"]`,
      '"\\"'.repeat(200_000),
      '// '.repeat(300_000),
      deep,
      `${deep}${']'.repeat(200_000)}`,
      '{"loop":'.repeat(100_000),
    ]) {
      const read = readPlan(text);
      sound('problems' in read ? read.problems : []);
      withLines(text, 'problems' in read ? read.problems : []);
    }
  });

  test('refuse what is nested deeper than 64 levels, and say where', () => {
    const nested = (levels: number): string => `{\n  "plan": ${'['.repeat(levels - 1)}1${']'.repeat(levels - 1)} }`;
    const read = readPlan(nested(65));
    expect('problems' in read && read.problems).toMatchObject([{ line: 2, column: 74, expected: { code: 'json.nesting' } }]);
    const sixtyFour = readPlan(nested(64));
    expect('problems' in sixtyFour && sixtyFour.problems.some(({ path }) => path === 'plan')).toBe(true);
  });

  test('place problems in a text of a million characters, deep and wide, at once', { timeout: 5_000 }, () => {
    const wide = `{\n "list": ${'['.repeat(60)}${Array.from({ length: 300_000 }, () => '1').join(',')}${']'.repeat(60)},\n "days": "many" }`;
    const inList = `list${'[0]'.repeat(59)}[299999]`;
    const at = (path: string): Problem => ({ path, got: { code: 'nothing' }, expected: { code: 'yesNo' } });
    const lines = withLines(wide, [...Array.from({ length: 38 }, () => at(inList)), at('days')]).map(({ line }) => line);
    expect(new Set(lines.slice(0, 38))).toEqual(new Set([2]));
    expect(lines[38]).toBe(3);
  });

  test("refuse keys that reach for an object's inside", () => {
    const read = readPlan(`{"__proto__": {"days": 3}, ${JSON.stringify(soundPlan()).slice(1)}`);
    expect('problems' in read && read.problems.map((problem) => problem.path)).toEqual(['__proto__']);
  });
});

describe('the place where a text stops being JSON', () => {
  test('is found exactly where the text is no JSON', () => {
    const noise = fc.string({
      unit: fc.constantFrom(
        '{',
        '}',
        '[',
        ']',
        '"',
        ',',
        ':',
        '0',
        '-',
        '1',
        '.',
        'e',
        '\\',
        'u',
        'true',
        'null',
        ' ',
        '\n',
        'é',
        '\u0001',
      ),
    });
    const spoilt = fc.tuple(fc.json(), fc.nat(), fc.constantFrom('', ',', '"', '}', '0', '\\')).map(([text, at, put]) => {
      const cut = at % (text.length + 1);
      return text.slice(0, cut) + put + text.slice(cut + 1);
    });
    fc.assert(
      fc.property(fc.oneof(noise, fc.json(), spoilt), (text) => {
        expect(jsonFault(text) === null).toBe(parses(text));
      }),
      { numRuns: 3000 },
    );
  });

  test.each([
    ['{"a": 1', 7, 'json.commaOrBrace'],
    ['[1 2]', 3, 'json.commaOrBracket'],
    ['{"a" 1}', 5, 'json.colon'],
    ['[1,]', 3, 'json.value'],
    ['{} x', 3, 'json.end'],
    ['["a', 3, 'json.closingQuote'],
    ["{'a': 1}", 1, 'json.key'],
    ['01', 1, 'json.end'],
  ])('%s fails at %i', (text, offset, expected) => {
    expect(jsonFault(text)).toEqual({ offset, expected });
  });
});
