// The long tests: minutes, not seconds; run by hand before a release, joined by vite.config.ts beside this.
import { defineConfig } from 'vitest/config';
import { fileURLToPath } from 'node:url';

export default defineConfig({
  test: {
    root: fileURLToPath(new URL('../../', import.meta.url)),
    include: ['node_modules/.long/*.long.js'],
    exclude: [],
    testTimeout: 3_600_000,
    fileParallelism: false,
    // Each check tells its end as it comes: a run of an hour that speaks only at the last cannot be watched.
    reporters: ['verbose'],
    disableConsoleIntercept: true,
  },
});
