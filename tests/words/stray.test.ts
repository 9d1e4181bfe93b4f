// All words a person reads stand in src/words: no panel and no picture writes text of its own, and the engine's side gives codes with
// values.
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
      else if (
        ts.isJsxExpression(node.initializer)
        && node.initializer.expression !== undefined
        && ts.isStringLiteralLike(node.initializer.expression)
      )
        report(node, node.initializer.expression.text);
    } else if (
      ts.isJsxExpression(node)
      && !ts.isJsxAttribute(node.parent)
      && node.expression !== undefined
      && ts.isStringLiteralLike(node.expression)
    )
      report(node, node.expression.text);
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

/**
 * Prose: three words of letters in a row, with nothing but spaces, commas and apostrophes between them. Lists of names and paths are none.
 */
const PROSE = /(?:^|[\s"'(])\p{L}[\p{L}’'-]*[,;:]? \p{L}[\p{L}’'-]*[,;:]? \p{L}[\p{L}’'-]*/u;

/**
 * Where text may stand that no learner, teacher or author is shown: what is thrown for whoever programs wrongly, and sources of constants.
 */
function isForProgrammers(node: ts.Node): boolean {
  for (let above = node.parent; above !== undefined; above = above.parent) {
    if (ts.isThrowStatement(above)) return true;
    if (ts.isPropertyAssignment(above) && ['source', 'note'].includes(above.name.getText())) return true;
  }
  return false;
}

/** Sentences written in place, each as "path:line text". */
function prose(path: string, text: string): string[] {
  const tree = parse(path, text);
  const found: string[] = [];
  walk(tree, (node) => {
    const words = ts.isStringLiteralLike(node)
      ? node.text
      : ts.isTemplateExpression(node)
        ? [node.head.text, ...node.templateSpans.map((span) => span.literal.text)].join('…')
        : '';
    if (PROSE.test(words) && !isForProgrammers(node)) found.push(`${path}:${lineOf(tree, node)} ${words.trim()}`);
  });
  return found;
}

describe('the engine’s side and the commands', () => {
  // Errors thrown for whoever programs wrongly (an unknown kind, a broken continuity) stay as they are: the gate lets nothing through that
  // could raise them.
  it('say nothing themselves: they give codes with values', () => {
    const files = filesBelow('src').filter((path) => /^src\/(lessons|worker|tools|season|sizing)\/.*\.ts$/.test(path));
    expect(files.length).toBeGreaterThan(70);
    expect(files.flatMap((path) => prose(path, textOf(path)))).toEqual([]);
  });

  it.each([
    ["report('loop', loop, 'at least one stage that holds water')", true],
    ['note(`written for model ${a}, run with model ${b}: results may differ`)', true],
    ["throw new RangeError('loop: no stage holds water')", false],
    ["oneOf(['bare', 'seeded', 'mature'])", false],
    ["say('command.noPlan')", false],
    ["import a from '../season/plan';", false],
  ])('%s counts as prose: %s', (text, isProse) => {
    expect(prose('x.ts', text).length > 0).toBe(isProse);
  });
});

describe('the search for stray words', () => {
  it.each([
    ['<p>Feed the fish</p>', 'Feed the fish'],
    ['<button aria-label="Close" />', 'Close'],
    ["<b title={'Air'} />", 'Air'],
    ["<i>{'Drain'}</i>", 'Drain'],
  ])('finds %s', (jsx, words) => {
    expect(stray('x.tsx', `const a = ${jsx};`).join()).toContain(words);
  });

  it('lets signs, numbers and words of the catalogue pass', () => {
    expect(stray('x.tsx', "const a = <p aria-label={say('page.close')} className=\"note\">– 12 · {say('page.close')}</p>;")).toEqual([]);
  });
});
