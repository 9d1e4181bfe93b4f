// Who may import whom: no file of src reaches where the table does not allow.
import { describe, expect, it } from 'vitest';
import { importsOf, partOf, wrongImports } from './imports';
import { sourceFiles, textOf } from './sourceFiles';

describe('the import graph', () => {
  const files = sourceFiles();

  it('covers the engine and the page', () => {
    expect(files.length).toBeGreaterThan(20);
    const parts = new Set(files.map(partOf));
    for (const part of [
      'numerics',
      'model',
      'season',
      'lessons',
      'page/state',
      'words',
      'page/picture/kit',
      'page/picture',
      'page/panels',
      'tools',
      'worker messages',
    ]) {
      expect(parts).toContain(part);
    }
  });

  it('has no edge the table does not allow', () => {
    expect(files.flatMap((path) => wrongImports(path, textOf(path)))).toEqual([]);
  });
});

describe('the reading of imports', () => {
  it('finds every way to name a module', () => {
    const text = `import a from 'a'; import type { B } from 'b'; import { type C } from 'c'; import 'd';
      export { e } from 'e'; export type { F } from 'f'; const g = import('g'); type H = import('h').H; const i = require('i');
      const j = import.meta.glob('../world/*.ts');`;
    expect(importsOf('src/x.ts', text)).toEqual([
      { what: 'a', typeOnly: false },
      { what: 'b', typeOnly: true },
      { what: 'c', typeOnly: true },
      { what: 'd', typeOnly: false },
      { what: 'e', typeOnly: false },
      { what: 'f', typeOnly: true },
      { what: 'g', typeOnly: false },
      { what: 'h', typeOnly: true },
      { what: 'i', typeOnly: false },
      { what: '../world/*.ts', typeOnly: false },
    ]);
  });

  it.each([
    ['src/page/picture/life/fish.ts', "import { Shelf } from '../../panels/build/Shelf';"],
    ['src/catalogue/stages/tower/drawing.ts', "import { School } from '../../../page/picture/life/school';"],
    ['src/catalogue/stages/tower/drawing.ts', "import { drewAir } from '../../../page/state/run/pump';"],
    ['src/catalogue/stages/tower/drawing.ts', "import type { GameObjects } from 'phaser';"],
    ['src/catalogue/stages/tower/drawing.ts', "import { sprayBar } from '../tricklingFilter/drawing';"],
    ['src/catalogue/stages/tower/words.ts', "import { say } from '../../../words/say';"],
    ['src/page/panels/build/Shelf.tsx', "import { stageDrawings } from '../../../catalogue/drawings';"],
    ['src/page/picture/kit/solids.ts', "import { School } from '../life/school';"],
    ['src/page/picture/kit/dials.ts', "import { addsUp } from '../../state/run/readings';"],
    ['src/page/panels/build/Shelf.tsx', "import type { Fish } from '../../picture/life/fish';"],
    ['src/page/panels/build/Shelf.tsx', "import { tilapia } from '../../../model/organisms/tilapia';"],
    ['src/page/state/common/store.ts', "import { season } from '../../../season/season';"],
    ['src/worker/client.ts', "import { engine } from './engine';"],
    ['src/worker/messages.ts', "import { PLAN_FORMAT } from '../season/plan';"],
    ['src/model/equilibrium/solve.ts', "import exp from '@stdlib/math-base-special-exp';"],
    ['src/season/season.ts', "import { z } from 'zod';"],
    ['src/lessons/readPlan.ts', "import { readFileSync } from 'node:fs';"],
    ['src/numerics/ros2w.ts', "import { CO2 } from '../model/components';"],
    ['src/main.tsx', "import { season } from './season/season';"],
    ['src/helpers/things.ts', ''],
  ])('%s may not say %s', (path, text) => {
    expect(wrongImports(path, text)).toHaveLength(1);
  });

  it.each([
    [
      'src/page/panels/build/Shelf.tsx',
      "import pump from '../../../../assets/sprites/pump.svg?url'; import { say } from '../../../words/say';",
    ],
    ['src/catalogue/stages/tower/drawing.ts', "import { scatter } from '../../../page/picture/kit/curves';"],
    ['src/catalogue/drawings.ts', "import { drawing as tower } from './stages/tower/drawing';"],
    ['src/page/state/common/store.ts', "import type { Plan } from '../../../season/plan'; import { createStore } from 'zustand/vanilla';"],
    ['src/worker/engineCore.ts', "import { season } from '../season/season'; import type { Request } from './messages';"],
    [
      'src/main.tsx',
      "import { createRoot } from 'react-dom/client'; import { World } from './page/picture/scene/world'; import l from '../levels/01.json?raw';",
    ],
  ])('%s may say %s', (path, text) => {
    expect(wrongImports(path, text)).toEqual([]);
  });
});
