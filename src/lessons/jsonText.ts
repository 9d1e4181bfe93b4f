// From text to a value, or a problem with its line and column.
import { jsonFault } from './jsonScan';
import type { Problem } from './lesson';
import { withoutNotes } from './notes';
import { describe, WHOLE_FILE } from './problems';

/** A plan of 24 stages and 2000 actions is far below this; more is a wrong file. */
export const TEXT_MAX = 1_000_000;

function placeOf(text: string, offset: number): string {
  const before = text.slice(0, offset);
  const line = before.split('\n').length;
  return `line ${line}, column ${offset - before.lastIndexOf('\n')}`;
}

/** Texts of more than TEXT_MAX characters and texts that are no JSON are refused. A byte order mark and notes are passed over. */
export function parseJson(text: string): { value: unknown } | { problems: Problem[] } {
  if (text.length > TEXT_MAX) {
    return { problems: [{ path: WHOLE_FILE, got: `${text.length} characters`, expected: `at most ${TEXT_MAX} characters` }] };
  }
  const plain = withoutNotes(text.startsWith('\uFEFF') ? text.slice(1) : text);
  const fault = jsonFault(plain);
  if (fault === null) return { value: JSON.parse(plain) as unknown };
  const rest = plain.slice(fault.offset, fault.offset + 20);
  const got = rest === '' ? 'the end of the text' : describe(rest);
  return { problems: [{ path: placeOf(plain, fault.offset), got, expected: fault.expected }] };
}
