// Nobody asks which kind a stage, crop or fish is: what it can do is asked. Its name stands in its folder and in what is written from
// there.
import { describe, expect, it } from 'vitest';
import ts from 'typescript';
import { CROPS, SPECIES, STAGES } from '../../src/catalogue/kinds';
import { parse, sourceFiles, textOf, walk } from './sourceFiles';

const NAMES = new Set<string>([...STAGES.map(({ kind }) => kind), ...Object.keys(CROPS), ...Object.keys(SPECIES)]);

/** Files that may name a kind, and why. */
const MAY: Readonly<Record<string, string>> = {
  'src/catalogue/kinds.ts': 'written from the folders',
  'src/catalogue/standIn.ts': 'whose numbers serve where nothing lives',
  'src/lessons/oldFormats.ts': 'what files of the first format call them',
};
/** Words of the picture and the page that happen to be a kind’s name, and are none. */
const SPOKEN = new Set(['sump', 'tower']);

function namesIn(path: string): string[] {
  const found: string[] = [];
  walk(parse(path, textOf(path)), (node) => {
    if (ts.isStringLiteral(node) && NAMES.has(node.text) && !SPOKEN.has(node.text)) found.push(`${path}: '${node.text}'`);
  });
  return found;
}

const IN_FOLDER = /^src\/catalogue\/(stages|crops|species)\//;

describe('the names of kinds', () => {
  const others = sourceFiles().filter((path) => !IN_FOLDER.test(path) && !Object.hasOwn(MAY, path));

  it('stand in no engine, command or state of the page', () => {
    expect(others.length).toBeGreaterThan(200);
    expect(others.filter((path) => !/^src\/(page\/(picture|panels)|words)\//.test(path)).flatMap(namesIn)).toEqual([]);
  });

  it('stand in no panel or picture', () => {
    expect(others.filter((path) => /^src\/page\/(picture|panels)\//.test(path)).flatMap(namesIn)).toEqual([]);
  });

  it('are found where they stand', () => {
    for (const path of Object.keys(MAY)) expect(namesIn(path).length, path).toBeGreaterThan(0);
  });
});
