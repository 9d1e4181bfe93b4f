// The order of the test files: those that live whole seasons begin, so that no core idles at the end while one of them runs.
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Longest first; all others follow as they come. */
const LONG = [
  'tests/levels/levels.test.ts',
  'tests/season/accuracy.test.ts',
  'tests/season/determinism.test.ts',
  'tests/season/claims.test.ts',
  'tests/season/anyLoop.test.ts',
];

function placeOf(file: string): number {
  const place = LONG.findIndex((long) => file.endsWith(long));
  return place === -1 ? LONG.length : place;
}

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const usual = await super.sort(files);
    return [...usual].sort((a, b) => placeOf(a.moduleId) - placeOf(b.moduleId));
  }
}
