// Whole seasons against the tables kept beside this file. Where a change is meant, write them anew with `npx tsx tests/golden/write.ts` and
// read what moved.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { GOLDEN, tableOf } from './tables';

describe('a whole season', () => {
  it.each(GOLDEN.map((golden) => [golden.name, golden] as const))('%s is the one on record', (name, golden) => {
    expect(tableOf(golden)).toBe(readFileSync(new URL(`./${name}.csv`, import.meta.url), 'utf8'));
  });
});
