// Builds the commands that play many seasons the way the page's worker is built: constants folded in, modules joined.
import { defineConfig } from 'vite';
import { fileURLToPath } from 'node:url';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here('../../src/tools'),
  logLevel: 'error',
  publicDir: false,
  ssr: { noExternal: true },
  // two folders deep, as their sources are: they read examples beside the tests from there
  build: {
    ssr: here('../../src/tools/sequences.ts'),
    outDir: here('../../node_modules/.commands'),
    emptyOutDir: false,
    minify: true,
    target: 'esnext',
  },
});
