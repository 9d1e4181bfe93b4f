// Habits of the code: small files that say what they own, named exports, strict types, and nothing of anyone's machine.
import { describe, expect, it } from 'vitest';
import ts from 'typescript';
import { filesBelow, lineOf, parse, sourceFiles, textOf, walk } from './sourceFiles';

const LONGEST = 300;
const MEDIAN = 150;
const WIDEST = 140;

/** Tables of constants, kept in columns. */
const TABLE = /^src\/model\/parameters\/|\/(science|constants)\.ts$/;
/** One text or expression that no line break may cut. */
const ONE_LITERAL = /^\s*(?:(?:return|const \w+ =|\w+ \+=|[\w.'"]+:|\?|\+|:) )?(['"`/]).*\1[gimu]*(?:,|;|\);?|\),)?$/;
const tooWide = (path: string, text: string): string[] =>
  text.split('\n').flatMap((line, i) => (line.length > WIDEST && !ONE_LITERAL.test(line) ? [`${path}:${i + 1}`] : []));

const lines = (text: string): number => text.trimEnd().split('\n').length;

/** Words that belong to one machine or to a package host, put together here so that this file does not hold them. */
const FOREIGN = [
  ['', 'work', ''],
  ['', 'tmp', ''],
  ['', 'home', ''],
  ['', 'root', ''],
]
  .map((parts) => parts.join('/'))
  .concat(['npmjs', 'yarnpkg', 'pypi', 'jsdelivr', 'unpkg'].map((host) => `${host}.`));
const foreignIn = (text: string): string[] =>
  FOREIGN.filter((word) => new RegExp(`(^|[\\s"'\`(=:])${word.replace('.', '\\.')}|\\.${word.replace('.', '\\.')}`, 'm').test(text));

/** Breaches of the habits that syntax shows, each as "path:line what". */
function breaches(path: string, text: string): string[] {
  const tree = parse(path, text);
  const found: string[] = [];
  const report = (node: ts.Node, what: string): void => {
    found.push(`${path}:${lineOf(tree, node)} ${what}`);
  };
  walk(tree, (node) => {
    if (node.kind === ts.SyntaxKind.AnyKeyword) report(node, 'any');
    if (ts.isNonNullExpression(node)) report(node, 'non-null !');
    if (ts.isExportAssignment(node) || (node.kind === ts.SyntaxKind.DefaultKeyword && !ts.isDefaultClause(node.parent)))
      report(node, 'default export');
    if (ts.isExportSpecifier(node) && node.name.text === 'default') report(node, 'default export');
    if (ts.isExportDeclaration(node) && !node.exportClause) report(node, 'barrel');
  });
  for (const silencer of [/@ts-(ignore|expect-error|nocheck)/, /eslint-(disable|enable)/]) {
    const hit = silencer.exec(text);
    if (hit) found.push(`${path} ${hit[0]}`);
  }
  return found;
}

describe('source files', () => {
  const files = sourceFiles();

  it('open with a comment that says what they own', () => {
    expect(files.filter((path) => !/^\s*\/[/*]/.test(textOf(path)))).toEqual([]);
  });

  it(`are at most ${LONGEST} lines, half of them under ${MEDIAN}`, () => {
    const sizes = files.map((path) => ({ path, size: lines(textOf(path)) }));
    expect(sizes.filter(({ size }) => size > LONGEST)).toEqual([]);
    const sorted = sizes.map(({ size }) => size).sort((a, b) => a - b);
    expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThan(MEDIAN);
  });

  it(`hold no line over ${WIDEST} characters, tables of constants and single texts apart`, () => {
    const all = [...files, ...filesBelow('tests')].filter((path) => /\.tsx?$/.test(path) && !TABLE.test(path));
    expect(all.length).toBeGreaterThan(600);
    expect(all.flatMap((path) => tooWide(path, textOf(path)))).toEqual([]);
    expect(tooWide('a.ts', `const a = ${'1 + '.repeat(40)}1;`)).toEqual(['a.ts:1']);
    expect(tooWide('a.ts', `const a = '${'text '.repeat(40)}';`)).toEqual([]);
  });

  it('export by name, keep types strict and silence no rule', () => {
    expect(files.flatMap((path) => breaches(path, textOf(path)))).toEqual([]);
  });

  it('are never named utils, helpers or index', () => {
    expect(files.filter((path) => /(^|\/)(utils?|helpers?|index)(\/|\.tsx?$)/.test(path))).toEqual([]);
  });
});

describe('all that is written', () => {
  it('speaks of no machine and no package host', () => {
    const written = [
      ...filesBelow('src'),
      ...filesBelow('tests'),
      ...filesBelow('levels'),
      'README.md',
      'DEVELOPERS.md',
      'package.json',
      'package-lock.json',
      'vite.config.ts',
      'eslint.config.js',
    ].filter((path) => !/\.(png|jpg|woff2?|ico)$/.test(path));
    expect(written.flatMap((path) => foreignIn(textOf(path)).map((word) => `${path}: ${word}`))).toEqual([]);
  });
});

describe('the search for breaches', () => {
  it.each([
    ['const a: any = 1;', 'any'],
    ['const b = c!;', 'non-null !'],
    ['export default 1;', 'default export'],
    ['export default function f() {}', 'default export'],
    ['export { a as default };', 'default export'],
    ["export * from './a';", 'barrel'],
    ['// @ts-ignore', '@ts-ignore'],
    ['/* eslint-disable */', 'eslint-disable'],
  ])('finds %s', (text, what) => {
    expect(breaches('x.ts', text).join()).toContain(what);
  });

  it('lets a switch have its default, and an outer module its own', () => {
    expect(breaches('x.ts', "import a, { default as b } from 'c'; switch (a) { default: b(); }")).toEqual([]);
  });

  it("knows a path of somebody's machine and a package host, and lets folders of the project pass", () => {
    expect(foreignIn(`read('${['', 'tmp', 'x'].join('/')}')`)).toHaveLength(1);
    expect(foreignIn(`https://registry.${'npmjs'}.org/a`)).toHaveLength(1);
    expect(foreignIn(['src', 'work', 'x and a', 'tmp', 'b'].join('/'))).toEqual([]);
  });
});
