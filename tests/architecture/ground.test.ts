// The ground the project stands on: what lies at its top, who made its assets, which packages it uses.
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ROOT, filesBelow, textOf } from './sourceFiles';

const TOP = new Set([
  'README.md',
  'DEVELOPERS.md',
  'package.json',
  'package-lock.json',
  'vite.config.ts',
  'src',
  'assets',
  'tests',
  'levels',
  'tsconfig.json',
  'tsconfig.engine.json',
  'eslint.config.js',
  'node_modules',
  'dist',
]);

describe('the top of the project', () => {
  it('holds what a newcomer expects and no more', () => {
    const unkept = new Set(
      textOf('.gitignore')
        .split(/\r?\n/)
        .map((line) => line.replace(/\/$/, '')),
    );
    const found = readdirSync(ROOT).filter((name) => !name.startsWith('.') && !TOP.has(name) && !unkept.has(name));
    expect(found).toEqual([]);
  });
});

describe('assets', () => {
  interface Credit {
    file: string;
    author: string;
    licence: string;
  }
  const said = (text: unknown): boolean => typeof text === 'string' && text.trim() !== '';

  /** Objects with a `file` anywhere in the credits; a file may name a folder by ending in a slash. */
  function creditsIn(value: unknown): Credit[] {
    if (typeof value !== 'object' || value === null) return [];
    const own = 'file' in value ? [value as Credit] : [];
    return [...own, ...Object.values(value).flatMap(creditsIn)];
  }

  const credits = (): Credit[] => creditsIn(JSON.parse(textOf('assets/credits.json')));
  const files = [
    ...filesBelow('assets')
      .map((path) => path.slice('assets/'.length))
      .filter((path) => path !== 'credits.json'),
    ...filesBelow('src/catalogue').filter((path) => path.endsWith('.svg')),
  ];
  const covers = (credit: Credit, file: string): boolean =>
    credit.file === file || (credit.file.endsWith('/') && file.startsWith(credit.file));

  it('are each credited to an author, with a licence', () => {
    const known = credits();
    expect(files.length).toBeGreaterThan(0);
    expect(files.filter((file) => !known.some((credit) => covers(credit, file)))).toEqual([]);
    expect(known.filter(({ author, licence }) => !said(author) || !said(licence))).toEqual([]);
  });

  it('are all there: no credit is left over', () => {
    expect(credits().filter((credit) => !files.some((file) => covers(credit, file)))).toEqual([]);
  });
});

describe('packages', () => {
  it('are each named in DEVELOPERS.md', () => {
    const { dependencies, devDependencies } = JSON.parse(textOf('package.json')) as Record<
      'dependencies' | 'devDependencies',
      Record<string, string>
    >;
    const page = textOf('DEVELOPERS.md');
    expect(Object.keys(dependencies).length).toBeGreaterThan(0);
    expect(
      Object.keys({ ...dependencies, ...devDependencies }).filter(
        (name) => !new RegExp(`(^|[^\\w/@-])${name}($|[^\\w/-])`, 'm').test(page),
      ),
    ).toEqual([]);
  });
});
