// The one list of kinds is what the folders say; a stage, a crop and a fish that somebody makes up live a season from theirs alone.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { foldersIn } from '../../src/catalogue/generate/folders';
import { kindsFile } from '../../src/catalogue/generate/kindsFile';
import { CROPS, SPECIES, STAGES } from '../../src/catalogue/kinds';

describe('the list of kinds', () => {
  it('is as `npm run catalogue` writes it', () => {
    expect(
      readFileSync('src/catalogue/kinds.ts', 'utf8') === kindsFile('src/catalogue'),
      'src/catalogue/kinds.ts is stale: npm run catalogue',
    ).toBe(true);
  });

  it('has every folder once', () => {
    const { stages, crops, species } = foldersIn('src/catalogue');
    expect(STAGES.map(({ kind }) => kind)).toEqual(stages);
    expect(Object.keys(CROPS)).toEqual(crops);
    expect(Object.keys(SPECIES)).toEqual(species);
  });
});

/** A trap that somebody makes up: a weir pool with numbers of its own. */
const WEIR_KIND = `// A weir pool.
import type { KindFacts } from '../../../model/stages/stageKind';
import { volume } from '../../../model/stages/sizes';

export const kind: KindFacts = { group: 'catchSolids', controls: ['drain'], airMax_L_min: 0, cautions: ['openWater'],
  sizes: { volume_m3: volume(0.2) }, drains: true };
`;
const WEIR_CONSTANTS = `// Numbers of the weir pool.
export const constants = { depth: { value: 0.4, unit: 'm', low: 0.2, high: 0.8, source: 'made up', flag: 'assumption' } } as const;
`;
const WEIR_SCIENCE = `// How a weir pool settles.
import { ownNumbers } from '../../../model/parameters/values';
import { cleared } from '../../../model/stages/solidsTerms';
import type { StageScience } from '../../../model/stages/stageScience';
import { constants } from './constants';

export const science: StageScience = {
  cells: 1,
  volume: (s) => (s.volume_m3 ?? 0.2) * (s.count ?? 1),
  cell(s, v) {
    const volume = this.volume(s, v);
    const floor = volume / ownNumbers(v, 'weirPool', constants).depth;
    return { volume, surface: floor, floor, film: floor, sludgeRoom: volume * 0.1, cone: false, depth: 0.3 };
  },
  vessel: () => ({ depth_m: 0.4, width_m: 0.8, height_m: 0.5 }),
  solids(cell, c) { cell.settle0 = cleared(c.values.kinetics.settleCoarse, cell.floor, cell.flow, 0.5, c.values.stages.restStill); },
};
`;

/** Reads a plan through the gate and lives it, in an engine whose catalogue has the made-up kinds; prints what came of it. */
const LIVE = `import { readPlan } from './src/lessons/readPlan';
import { runSeason } from './src/season/season';
import { valuesWith } from './src/catalogue/values';

const plan = (parts: object[], species: string, crop: string): string => JSON.stringify({
  format: 'loopwright.plan/2', days: 12, climate: { water_C: 20 },
  loop: [{ id: 'fish', kind: 'fishTank', air_L_min: 30 }, ...parts,
    { id: 'rafts', kind: 'raftBed', crop: { kind: crop } }, { id: 'sump', kind: 'sump' }, { id: 'pump', kind: 'returnPump' }],
  fish: [{ tank: 'fish', species, number: 20, mass_g: 60, day: 0 }], actions: [{ day: 0, do: 'feed', tank: 'fish', g_d: 30 }],
});
const live = (text: string, parameters = {}): object => {
  const read = readPlan(text);
  if ('problems' in read) return { problems: read.problems };
  const season = runSeason(read.plan, { parameters });
  const last = season.days[season.days.length - 1];
  const at = (stage: string, variable: string): number => {
    const found = season.stages.find(({ id }) => id === stage);
    return last.hourly[(23 * season.cells + (found?.first ?? 0)) * season.variables.length + season.variables.indexOf(variable as never)];
  };
  const closure = Math.max(...season.summary.ledger.map((line) => Math.abs(line.closure)));
  return { sludge: at('weir', 'sludge_g'), leaf: at('rafts', 'leafDry_g_m2'), mass: at('fish', 'mass_g'), closure };
};
const weir = [{ id: 'weir', kind: 'weirPool' }];
console.log(JSON.stringify({
  stage: live(plan(weir, 'tilapia', 'lettuce')), deep: live(plan(weir, 'tilapia', 'lettuce'), { 'weirPool.depth': 0.8 }),
  crop: live(plan([], 'tilapia', 'cress')), fish: live(plan([], 'loach', 'lettuce')),
  values: [valuesWith({ 'cress.ripe': 3 }).crops.cress.ripe, valuesWith({ 'loach.gain': 0.5 }).fish.loach.gain],
}));
`;

describe('kinds that somebody makes up', () => {
  let root = '';
  let lived: Record<string, Record<string, number>> = {};
  const put = (path: string, text: string): void => {
    mkdirSync(join(root, path, '..'), { recursive: true });
    writeFileSync(join(root, path), text);
  };

  beforeAll(() => {
    root = mkdtempSync(join(tmpdir(), 'kinds-'));
    for (const folder of ['numerics', 'model', 'catalogue', 'season', 'lessons', 'words'])
      cpSync(`src/${folder}`, join(root, 'src', folder), { recursive: true });
    symlinkSync(resolve('node_modules'), join(root, 'node_modules'));
    put('package.json', '{ "type": "module" }\n');
    put('src/catalogue/stages/weirPool/kind.ts', WEIR_KIND);
    put('src/catalogue/stages/weirPool/constants.ts', WEIR_CONSTANTS);
    put('src/catalogue/stages/weirPool/science.ts', WEIR_SCIENCE);
    put(
      'src/catalogue/crops/cress/science.ts',
      readFileSync('src/catalogue/crops/lettuce/science.ts', 'utf8').replace(/ripe: \{ value: [\d.]+/, 'ripe: { value: 2'),
    );
    put(
      'src/catalogue/species/loach/science.ts',
      readFileSync('src/catalogue/species/tilapia/science.ts', 'utf8').replace(/gain: \{ value: [\d.]+/, 'gain: { value: 0.7'),
    );
    put('src/catalogue/kinds.ts', kindsFile(join(root, 'src/catalogue')));
    put('live.ts', LIVE);
    lived = JSON.parse(execFileSync(process.execPath, ['--import', 'tsx', 'live.ts'], { cwd: root, encoding: 'utf8' })) as typeof lived;
  }, 120_000);
  afterAll(() => rmSync(root, { recursive: true }));

  it('as a stage catch what settles, by numbers of their own that can be replaced', () => {
    expect(lived.stage.sludge).toBeGreaterThan(1);
    expect(lived.deep.sludge).toBeLessThan(lived.stage.sludge);
    expect(lived.stage.closure).toBeLessThan(1e-9);
  });

  it('as a crop grow', () => {
    expect(lived.crop.leaf).toBeGreaterThan(0);
    expect(lived.crop.closure).toBeLessThan(1e-9);
  });

  it('as a fish gain', () => {
    expect(lived.fish.mass).toBeGreaterThan(60);
    expect(lived.fish.mass).toBeLessThan(lived.stage.mass);
  });

  it('have numbers that a run may replace', () => {
    expect(lived.values).toEqual([3, 0.5]);
  });

  it.each([
    ['stages/Weir', 'expected a name of letters and digits that begins small'],
    ['stages/kinetics', 'is none of matter'],
    ['crops/weirPool', 'two folders of the catalogue have this name'],
    ['stages/half', 'stages/half: expected a file kind.ts'],
  ])('are refused as %s', (path, message) => {
    const half = path.endsWith('half');
    put(`src/catalogue/${path}/science.ts`, '');
    if (path.startsWith('stages') && !half) put(`src/catalogue/${path}/kind.ts`, '');
    expect(() => foldersIn(join(root, 'src/catalogue'))).toThrow(message);
    rmSync(join(root, 'src/catalogue', path), { recursive: true });
  });
});
