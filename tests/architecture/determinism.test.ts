// Same plan, same bits: what computes a season calls nothing that differs between engines, clocks or runs.
import { describe, expect, it } from 'vitest';
import ts from 'typescript';
import { lineOf, parse, sourceFiles, textOf, walk } from './sourceFiles';

/** Members of Math with one exact answer everywhere. All others (exp, log, pow, sin, hypot, random, …) are banned. */
const EXACT = new Set(['abs', 'ceil', 'floor', 'round', 'trunc', 'sign', 'min', 'max', 'sqrt', 'fround', 'imul', 'clz32', 'PI']);
const BANNED_NAMES = new Set(['Date', 'performance', 'crypto', 'Intl', 'eval']);
const ENGINE = /^src\/(numerics|model|season|lessons)\//;

function isName(node: ts.Identifier): boolean {
  const parent = node.parent;
  const member = ts.isPropertyAccessExpression(parent) && parent.name === node;
  const key =
    (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent) || ts.isPropertyDeclaration(parent)) && parent.name === node;
  return !member && !key;
}

/** Banned calls of a text, each as "path:line what". */
function bannedIn(path: string, text: string): string[] {
  const tree = parse(path, text);
  const found: string[] = [];
  const report = (node: ts.Node, what: string): void => {
    found.push(`${path}:${lineOf(tree, node)} ${what}`);
  };
  walk(tree, (node) => {
    if (ts.isIdentifier(node) && node.text === 'Math' && isName(node)) {
      const parent = node.parent;
      const member = ts.isPropertyAccessExpression(parent) && parent.expression === node ? parent.name.text : undefined;
      if (member === undefined || !EXACT.has(member)) report(node, `Math.${member ?? '…'}`);
    } else if (ts.isIdentifier(node) && BANNED_NAMES.has(node.text) && isName(node)) report(node, node.text);
    else if (node.kind === ts.SyntaxKind.AsteriskAsteriskToken || node.kind === ts.SyntaxKind.AsteriskAsteriskEqualsToken)
      report(node, '**');
    else if (ts.isIdentifier(node) && node.text === 'globalThis') report(node, 'globalThis');
  });
  return found;
}

describe('the engine', () => {
  it('calls nothing whose bits differ between browsers, and reads no clock', () => {
    const files = sourceFiles().filter((path) => ENGINE.test(path));
    expect(files.length).toBeGreaterThan(10);
    expect(files.flatMap((path) => bannedIn(path, textOf(path)))).toEqual([]);
  });
});

describe('the search for banned calls', () => {
  it.each([
    'Math.exp(1)',
    'Math.log(2)',
    'Math.log2(2)',
    'Math.log10(2)',
    'Math.pow(2, 3)',
    'Math.sin(1)',
    'Math.cos(1)',
    'Math.tan(1)',
    'Math.tanh(1)',
    'Math.cbrt(8)',
    'Math.hypot(3, 4)',
    'Math.random()',
    'Math["exp"](1)',
    'const { exp } = Math',
    '2 ** 3',
    'let x = 2; x **= 2',
    'Date.now()',
    'new Date()',
    'performance.now()',
    'globalThis.Math.sqrt(2)',
    'const m = Math',
  ])('finds %s', (text) => {
    expect(bannedIn('src/season/x.ts', text)).not.toEqual([]);
  });

  it.each(['Math.sqrt(2) + Math.max(1, 2)', 'const a = { Date: 1 }; a.Date', '// Math.exp in a comment', "const s = 'Math.exp(1) ** 2'"])(
    'lets %s pass',
    (text) => {
      expect(bannedIn('src/season/x.ts', text)).toEqual([]);
    },
  );
});
