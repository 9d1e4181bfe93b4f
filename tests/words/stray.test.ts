// All words a person reads stand in src/words: no panel and no picture writes text of its own.
import { describe, expect, it } from 'vitest';
import ts from 'typescript';
import { filesBelow, lineOf, parse, textOf, walk } from '../architecture/sourceFiles';

/** Attributes that are read aloud or shown. */
const SPOKEN: ReadonlySet<string> = new Set(['aria-label', 'aria-valuetext', 'aria-description', 'title', 'alt', 'placeholder', 'label']);
/** Two letters in a row are a word; signs and single letters of a formula are not. */
const isWord = (text: string): boolean => /\p{L}{2,}/u.test(text);

/** Text written in place, each as "path:line text". */
function stray(path: string, text: string): string[] {
  const tree = parse(path, text);
  const found: string[] = [];
  const report = (node: ts.Node, words: string): void => {
    if (isWord(words)) found.push(`${path}:${lineOf(tree, node)} ${words.trim()}`);
  };
  walk(tree, (node) => {
    if (ts.isJsxText(node)) report(node, node.text);
    else if (ts.isJsxAttribute(node) && SPOKEN.has(node.name.getText(tree)) && node.initializer !== undefined) {
      if (ts.isStringLiteral(node.initializer)) report(node, node.initializer.text);
      else if (ts.isJsxExpression(node.initializer) && node.initializer.expression !== undefined && ts.isStringLiteralLike(node.initializer.expression)) report(node, node.initializer.expression.text);
    } else if (ts.isJsxExpression(node) && !ts.isJsxAttribute(node.parent) && node.expression !== undefined && ts.isStringLiteralLike(node.expression)) report(node, node.expression.text);
  });
  return found;
}

describe('words on the page', () => {
  it('all come from the catalogue', () => {
    const panels = filesBelow('src').filter((path) => /^src\/page\/(panels|picture)\/.*\.tsx?$/.test(path) || path === 'src/main.tsx');
    expect(panels.length).toBeGreaterThan(50);
    expect(panels.flatMap((path) => stray(path, textOf(path)))).toEqual([]);
  });
});

describe('the search for stray words', () => {
  it.each([['<p>Feed the fish</p>', 'Feed the fish'], ['<button aria-label="Close" />', 'Close'], ["<b title={'Air'} />", 'Air'], ["<i>{'Drain'}</i>", 'Drain']])('finds %s', (jsx, words) => {
    expect(stray('x.tsx', `const a = ${jsx};`).join()).toContain(words);
  });

  it('lets signs, numbers and words of the catalogue pass', () => {
    expect(stray('x.tsx', "const a = <p aria-label={say('page.close')} className=\"note\">– 12 · {say('page.close')}</p>;")).toEqual([]);
  });
});
