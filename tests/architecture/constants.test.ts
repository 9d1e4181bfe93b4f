// One road for constants: what is fixed refuses another value and says why; nothing reads a record round the run's numbers.
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Parameter } from '../../src/model/parameters/parameter';
import { GROUPS, valuesWith } from '../../src/catalogue/values';

const entries = Object.entries(GROUPS).flatMap(([group, parameters]) =>
  Object.entries(parameters).map(([name, parameter]): [string, string, Parameter] => [group, name, parameter]),
);

describe('a fixed number', () => {
  it.each(entries.filter(([, , { fixed }]) => fixed !== undefined))(
    '%s.%s refuses another value, and says why',
    (group, name, { value, fixed }) => {
      expect(() => valuesWith({ [`${group}.${name}`]: value * 1.1 })).toThrow(`parameter ${group}.${name} is fixed: ${fixed}`);
    },
  );

  it.each([
    'chemistry.gasConstant',
    'chemistry.O2',
    'chemistry.carbonicAcid',
    'chemistry.H2S',
    'hydraulics.waterDensity',
    'heat.latentHeat',
  ])('%s is not replaced in a run', (path) => {
    expect(() => valuesWith({ [path]: 1 })).toThrow(`parameter ${path} is fixed: `);
  });

  it('is told from one that is not known', () => {
    expect(() => valuesWith({ 'chemistry.phlogiston': 1 })).toThrow('parameter chemistry.phlogiston is not known');
    expect(() => valuesWith({ 'kinetics.toString': 1 })).toThrow('parameter kinetics.toString is not known');
  });
});

const SRC = new URL('../../src/', import.meta.url);
const sources = ['model', 'catalogue', 'season', 'lessons', 'worker']
  .flatMap((room) =>
    readdirSync(new URL(`${room}/`, SRC), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => `${room}/${name.replaceAll('\\', '/')}`),
  )
  .map((path) => [path, readFileSync(new URL(path, SRC), 'utf8')] as const);

/** Reads of a record's own value that stay, and why; how many there are. */
const STAYS: Readonly<Record<string, readonly [count: number, why: string]>> = {
  'model/parameters/values.ts': [1, 'the road itself'],
  'model/kernel/generate/coefficients.ts': [1, 'moves each record in turn, to find the coefficients that answer to none'],
  'model/equilibrium/constants.ts': [1, 'gas constant, a definition'],
  'model/equilibrium/henry.ts': [5, 'gas constant, atmosphere and atomic weights are definitions; air is the same for every loop'],
  'lessons/measured.ts': [1, 'atomic weight, a definition'],
};
/** Only who imports records can read one; a reader of JSON has a `value` too. */
const importsRecords = (path: string, text: string): boolean =>
  path.startsWith('model/parameters/') || /^catalogue\/(crops|species|stages)\//.test(path) || /from '[^']*\/parameters\//.test(text);
const readsIn = (text: string): number => (text.match(/\.value\b|\{ value \}/g) ?? []).length;

describe('a record\u2019s own value', () => {
  it('is read where the list says, and nowhere else', () => {
    expect(
      Object.fromEntries(
        sources
          .filter(([path, text]) => importsRecords(path, text))
          .map(([path, text]) => [path, readsIn(text)] as const)
          .filter(([, count]) => count > 0),
      ),
    ).toEqual(Object.fromEntries(Object.entries(STAYS).map(([path, [count]]) => [path, count])));
  });

  it('that stays outside the road is one that cannot be replaced', () => {
    for (const name of ['gasConstant', 'atmosphere', 'O2', 'CO2', 'oxygenInAir'])
      expect(() => valuesWith({ [`chemistry.${name}`]: 1 })).toThrow('is fixed');
  });

  it('is found where somebody reads it', () => {
    expect(readsIn('const g = hydraulics.gravity.value;')).toBe(1);
    expect(readsIn('const all = values.kinetics;')).toBe(0);
  });
});

describe('every number that a run can replace', () => {
  const outside = sources
    .filter(([path]) => !path.startsWith('model/parameters/') && !/^catalogue\/(crops|species)\//.test(path))
    .map(([, text]) => text)
    .join('\n');
  const words = new Set(outside.match(/[A-Za-z_$][\w$]*/g));

  it('is asked for by name somewhere', () => {
    expect(
      entries.filter(([, name, { fixed }]) => fixed === undefined && !words.has(name)).map(([group, name]) => `${group}.${name}`),
    ).toEqual([]);
  });
});
