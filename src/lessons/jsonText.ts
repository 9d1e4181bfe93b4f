// From text to a value, or a problem with its line and column.
import { jsonFault } from './jsonScan';
import type { Found, Problem } from './problem';
import { withoutNotes } from './notes';
import { describe, WHOLE_FILE } from './problems';

/** A plan of 24 stages and 2000 actions is far below this; more is a wrong file. */
export const TEXT_MAX = 1_000_000;

function placeOf(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset);
  return { line: before.split('\n').length, column: offset - before.lastIndexOf('\n') };
}

/** Texts of more than TEXT_MAX characters and texts that are no JSON are refused. A byte order mark and notes are passed over. */
export function parseJson(text: string): { value: unknown } | { problems: Problem[] } {
  if (text.length > TEXT_MAX) {
    return {
      problems: [{ path: WHOLE_FILE, got: { code: 'characters', n: text.length }, expected: { code: 'charactersUpTo', to: TEXT_MAX } }],
    };
  }
  const plain = withoutNotes(text.startsWith('\uFEFF') ? text.slice(1) : text);
  const fault = jsonFault(plain);
  if (fault === null) return { value: JSON.parse(plain) as unknown };
  const rest = plain.slice(fault.offset, fault.offset + 20);
  const got: Found = rest === '' ? { code: 'endOfText' } : describe(rest);
  return { problems: [{ path: WHOLE_FILE, ...placeOf(plain, fault.offset), got, expected: { code: fault.expected } }] };
}
