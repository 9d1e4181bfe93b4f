// Builds the bench the way the page's worker is built, so that it times what ships: constants folded in, modules joined.
import { defineConfig } from 'vite';
import { fileURLToPath } from 'node:url';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here('.'),
  logLevel: 'error',
  ssr: { noExternal: true },
  // two folders deep, as its sources are: it reads the first lesson beside them
  build: { ssr: here('./bench.ts'), outDir: here('../../node_modules/.bench'), emptyOutDir: true, minify: true, target: 'esnext' },
});
