// The long tests: minutes, not seconds; run by hand before a release.
import { defineConfig } from 'vitest/config';
import { fileURLToPath } from 'node:url';

export default defineConfig({
  test: {
    root: fileURLToPath(new URL('../../', import.meta.url)),
    include: ['tests/long/**/*.long.ts'],
    testTimeout: 3_600_000,
    fileParallelism: false,
  },
});
