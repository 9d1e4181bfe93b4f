// The science page is held to the code: every process in one is in the other.
import { describe, expect, it } from 'vitest';
import { PROCESS_NAMES } from '../../src/model/processes/catalogue';
import { textOf } from './sourceFiles';

/** Names in backticks in the first column of every table whose first heading is "Process". */
function processesOn(page: string): string[] {
  const found: string[] = [];
  let inTable = false;
  let before = '';
  for (const line of page.split(/\r?\n/)) {
    const isRow = /^\s*\|/.test(line);
    if (isRow && !/^\s*\|/.test(before)) inTable = /^\s*\|\s*Process\b/i.test(line);
    else if (isRow && inTable) {
      const first = line.split('|')[1] ?? '';
      for (const name of first.matchAll(/`([^`]+)`/g)) found.push(name[1]);
    }
    before = line;
  }
  return found;
}

const NAMES: readonly string[] = PROCESS_NAMES;

describe('the science page', () => {
  const onPage = (): string[] => processesOn(textOf('src/model/MODEL.md'));

  it('tells of every process the model has', () => {
    const page = onPage();
    expect(NAMES.filter((name) => !page.includes(name))).toEqual([]);
  });

  it('tells of no process the model does not have', () => {
    expect(onPage().filter((name) => !NAMES.includes(name))).toEqual([]);
  });

  it('tells of each once, and the model has more than a few', () => {
    expect(new Set(onPage()).size).toBe(onPage().length);
    expect(NAMES.length).toBeGreaterThan(10);
  });

  it('is read by its process tables alone', () => {
    expect(processesOn('| Process | Rate |\n| --- | --- |\n| `a` | `x` |\n\n| Gas | H |\n| --- | --- |\n| `O2` | 1 |\n')).toEqual(['a']);
  });
});
