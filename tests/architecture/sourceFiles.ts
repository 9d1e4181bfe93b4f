// What the architecture tests read: the files of the project and their syntax.
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { join, relative, sep } from 'node:path';
import ts from 'typescript';

export const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Every file below a folder, as paths from the project's root with forward slashes, sorted. */
export function filesBelow(folder: string): string[] {
  const entries = readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

export const textOf = (path: string): string => readFileSync(join(ROOT, path), 'utf8');

const isCode = (path: string): boolean => /\.tsx?$/.test(path);

/** TypeScript files below src. */
export const sourceFiles = (): string[] => filesBelow('src').filter(isCode);

const trees = new Map<string, ts.SourceFile>();

/** The syntax tree of a file's text; a text is parsed once, however many tests ask for it. */
export function parse(path: string, text: string): ts.SourceFile {
  const known = trees.get(path);
  if (known?.text === text) return known;
  const tree = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true, path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS);
  trees.set(path, tree);
  return tree;
}

/** Calls a function on every node of a tree. */
export function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  ts.forEachChild(node, (child) => walk(child, visit));
}

/** Line of a node, from 1. */
export const lineOf = (tree: ts.SourceFile, node: ts.Node): number => tree.getLineAndCharacterOfPosition(node.getStart(tree)).line + 1;
