// No module leans on itself by way of others, not even for a type. The picture's drawings are left out: they still share their boxes with
// the scene.
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { importsOf } from './imports';
import { sourceFiles, textOf } from './sourceFiles';

type Graph = ReadonlyMap<string, readonly string[]>;

/** Which files of src each file of src imports, types included. */
function graphOf(files: readonly string[], read: (path: string) => string): Graph {
  const known = new Set(files);
  const found = (path: string, what: string): string | undefined => {
    const target = posix.normalize(posix.join(posix.dirname(path), what));
    return [target, `${target}.ts`, `${target}.tsx`].find((one) => known.has(one));
  };
  return new Map(files.map((path) => [path, importsOf(path, read(path)).flatMap(({ what }) => found(path, what) ?? [])]));
}

/** One ring of every group of files that lean on each other, as a path back to where it began. */
function ringsOf(graph: Graph): string[] {
  const done = new Set<string>();
  const rings: string[] = [];
  const follow = (path: string, way: readonly string[]): void => {
    const at = way.indexOf(path);
    if (at >= 0) rings.push([...way.slice(at), path].join(' → '));
    if (at >= 0 || done.has(path)) return;
    for (const next of graph.get(path) ?? []) follow(next, [...way, path]);
    done.add(path);
  };
  for (const path of graph.keys()) follow(path, []);
  return rings;
}

describe('the modules of src', () => {
  it('form no ring', () => {
    const files = sourceFiles();
    expect(files.length).toBeGreaterThan(200);
    expect(ringsOf(graphOf(files, textOf))).toEqual([]);
  });
});

describe('the search for rings', () => {
  const ringsIn = (files: Readonly<Record<string, string>>): string[] => ringsOf(graphOf(Object.keys(files), (path) => files[path]));

  it('finds one that goes by way of a type, and one of a single file', () => {
    expect(
      ringsIn({
        'src/a.ts': "import { b } from './x/b';",
        'src/x/b.ts': "import type { C } from '../c';",
        'src/c.ts': "import type { A } from './a';",
      }),
    ).toEqual(['src/a.ts → src/x/b.ts → src/c.ts → src/a.ts']);
    expect(ringsIn({ 'src/a.ts': "import { a } from './a';" })).toHaveLength(1);
  });

  it('lets two files use a third', () => {
    expect(ringsIn({ 'src/a.ts': "import './c'; import './b';", 'src/b.ts': "import './c';", 'src/c.ts': '' })).toEqual([]);
  });
});
