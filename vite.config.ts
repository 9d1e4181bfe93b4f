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

const PHASER_SOURCE = /[\\/]node_modules[\\/]phaser[\\/]src[\\/].*\.js$/;
const LEFT_OUT = /typeof (?:WEBGL_DEBUG|FEATURE_SOUND|PLUGIN_\w+)/g;
const LEFT_IN = /typeof (?:WEBGL|CANVAS)_RENDERER/g;
const PACKED_PHASER = /[\\/]node_modules[\\/]phaser[\\/]dist[\\/]phaser\.esm\.js$/;

/**
 * What the picture uses of Phaser, from its sources. The parts without a name sign in with its scenes when they are loaded; a scene does
 * without others.
 */
const USED_OF_PHASER = `
import Game from '../src/core/Game.js';
import Scene from '../src/scene/Scene.js';
import Image from '../src/gameobjects/image/Image.js';
import Vector2 from '../src/math/Vector2.js';
import SCALE_MODE from '../src/scale/const/SCALE_MODE_CONST.js';
import CONST from '../src/const.js';
import '../src/events/EventEmitter.js';
import '../src/cameras/2d/CameraManager.js';
import '../src/scene/ScenePlugin.js';
import '../src/gameobjects/DisplayList.js';
import '../src/gameobjects/UpdateList.js';
import '../src/gameobjects/GameObjectFactory.js';
import '../src/gameobjects/layer/LayerFactory.js';
const GameObjects = { Image };
const Maths = { Vector2 };
const Scale = SCALE_MODE;
export const { AUTO, CANVAS } = CONST;
export { Game, GameObjects, Maths as Math, Scale, Scene };
`;

/**
 * Phaser ships in one file whose unused parts no bundler can tell from the used ones: that file is read as the parts that the picture uses.
 */
function phaserParts(): Plugin {
  return {
    name: 'phaser-parts',
    load: (id) => (PACKED_PHASER.test(id) ? USED_OF_PHASER : null),
    transform(code, id) {
      if (!PHASER_SOURCE.test(id)) return null;
      // Phaser's own build settles the first two; two names of events are no reason to load every renderer, and no filter is used
      return code
        .replace(LEFT_OUT, 'false')
        .replace(LEFT_IN, 'true')
        .replace("require('../../../renderer')", "{ Events: require('../../events') }")
        .replace(/require\('\.\/filters\/Filter\w+'\)/g, 'undefined');
    },
  };
}

export default defineConfig({
  root: here('./src'),
  base: './',
  publicDir: false,
  plugins: [react(), lessonCards(), phaserParts(), joinSources(here('.'), [react(), lessonCards()])],
  worker: { format: 'es' },
  server: {
    open: !process.env['CI'] && Boolean(process.env['DISPLAY'] || process.platform !== 'linux'),
    fs: { allow: [here('./src'), here('./assets'), here('./levels'), here('./node_modules')] },
  },
  // packages that only the worker or a later screen uses are found at the start too: one found later makes the page load anew
  optimizeDeps: { entries: ['index.html', 'worker/entry.ts'], rolldownOptions: { plugins: [phaserParts()] } },
  build: {
    outDir: here('./dist'),
    emptyOutDir: true,
    chunkSizeWarningLimit: 700,
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
