// Builds the one page; its root is src, and levels and assets stand beside it.
import { defineConfig } from 'vitest/config';
import react from '@vitejs/plugin-react';
import { fileURLToPath } from 'node:url';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here('./src'),
  base: './',
  publicDir: false,
  plugins: [react()],
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
  },
});
