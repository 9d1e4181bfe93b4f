// Joins the long tests with the engine before they run: a runner that loads module by module makes a season five times slower.
import { readdirSync } from 'node:fs';
import { defineConfig } from 'vite';
import { fileURLToPath } from 'node:url';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here('.'),
  logLevel: 'error',
  // two folders deep, as their sources are: they read lessons and the built page by address from there
  build: {
    ssr: true,
    outDir: here('../../node_modules/.long'),
    emptyOutDir: true,
    minify: false,
    target: 'esnext',
    rollupOptions: {
      input: readdirSync(here('.'))
        .filter((name) => name.endsWith('.long.ts'))
        .map((name) => here(name)),
      output: { chunkFileNames: '[name].js' },
    },
  },
});
