// Builds the one page; its root is src, and levels and assets stand beside it.
import { defineConfig } from 'vitest/config';
import react from '@vitejs/plugin-react';
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { cardOf } from './src/lessons/card.ts';
import { joinSources } from './tests/joined/joinSources.ts';
import { LongestFirst } from './tests/joined/longestFirst.ts';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const CARD = /^\0lesson-card:(.*):card$/;

/** `NN-name.json?card` is what the path shows of a lesson, so that the page need not load whole lessons to begin. */
function lessonCards(): Plugin {
  return {
    name: 'lesson-cards',
    enforce: 'pre',
    async resolveId(source, importer) {
      if (!source.endsWith('.json?card')) return null;
      const file = await this.resolve(source.slice(0, -'?card'.length), importer, { skipSelf: true });
      // the name must not end as a JSON file's, or it would be read as one
      return file === null ? null : `\0lesson-card:${file.id}:card`;
    },
    load(id) {
      const [, file] = CARD.exec(id) ?? [];
      if (file === undefined) return null;
      this.addWatchFile(file);
      return `export const card = ${JSON.stringify(cardOf(basename(file), readFileSync(file, 'utf8')))};`;
    },
  };
}

export default defineConfig({
  root: here('./src'),
  base: './',
  publicDir: false,
  plugins: [react(), lessonCards(), joinSources(here('.'), [react(), lessonCards()])],
  worker: { format: 'es' },
  server: { open: !process.env['CI'] && Boolean(process.env['DISPLAY'] || process.platform !== 'linux'), fs: { allow: [here('./src'), here('./assets'), here('./levels'), here('./node_modules')] } },
  build: {
    outDir: here('./dist'),
    emptyOutDir: true,
    chunkSizeWarningLimit: 1600,
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: 'phaser', test: /node_modules[\\/]phaser/ },
            { name: 'react', test: /node_modules[\\/](react|react-dom|scheduler)[\\/]/ },
          ],
        },
      },
    },
  },
  preview: { port: 4173, strictPort: false },
  test: {
    root: here('.'),
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/browser/**', 'tests/long/**', 'node_modules/**'],
    testTimeout: 60_000,
    // one core fewer, as by default, would leave a small machine with one
    maxWorkers: '100%',
    // the test files of a worker share its modules, already compiled; no test may leave a mark on one
    pool: 'threads',
    isolate: false,
    sequence: { sequencer: LongestFirst },
  },
});
