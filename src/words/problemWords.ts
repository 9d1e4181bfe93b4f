// Says what is wrong with a file from outside, from the codes and values that the gate gives.
import type { Expected, Found, Problem } from '../lessons/problem';
import { say } from './say';
import type { Value } from './say';

/** Numbers stand as a file writes them, with a point and ungrouped, whatever the language. */
function asWritten(values: Readonly<Record<string, unknown>>): Record<string, Value> {
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) => [name, Array.isArray(value) ? value.map(String) : String(value)]),
  );
}

export function foundWords(found: Found): string {
  return say(`found.${found.code}`, asWritten({ ...found }));
}

export function expectedWords(expected: Expected): string {
  const values = asWritten({ ...expected });
  if (expected.code === 'missing') return say('expected.missing', { wanted: expectedWords(expected.wanted), there: expected.there });
  return say(`expected.${expected.code}`, values);
}

/** Where a problem stands: its path, or line and column of a text that is no JSON. */
export function whereWords({ path, line, column }: Problem): string {
  if (path !== '') return path;
  return line === undefined || column === undefined
    ? say('problem.wholeFile')
    : say('problem.at', { line: String(line), column: String(column) });
}

/** One line for a terminal or a list. */
export function problemText(problem: Problem): string {
  return say('problem.line', { where: whereWords(problem), found: foundWords(problem.got), expected: expectedWords(problem.expected) });
}
