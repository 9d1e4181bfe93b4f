// Reads which kinds there are from the catalogue's folders: one folder a kind, named as files name it.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

export interface Folders {
  stages: string[];
  crops: string[];
  species: string[];
}

const NAME = /^[a-z][A-Za-z0-9]*$/;
/** Groups of parameters that the model has for itself; a kind of such a name would hide one. */
const TAKEN = new Set([
  'matter',
  'kinetics',
  'stages',
  'devices',
  'practice',
  'hydraulics',
  'heat',
  'chemistry',
  'crops',
  'fish',
  'kinds',
  'species',
]);

function namesIn(root: string, shelf: keyof Folders, files: readonly string[]): string[] {
  const folder = join(root, shelf);
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => {
      if (!NAME.test(name) || TAKEN.has(name))
        throw new Error(
          `${shelf}/${name}: expected a name of letters and digits that begins small and is none of ${[...TAKEN].join(', ')}`,
        );
      for (const file of files) if (!existsSync(join(folder, name, file))) throw new Error(`${shelf}/${name}: expected a file ${file}`);
      return name;
    })
    .sort();
}

/**
 * Everything that stands in the catalogue, each list sorted by name.
 * @param root the folder with stages/, crops/ and species/
 * @throws Error where a folder has an unfit name, lacks a file, or has a name twice
 */
export function foldersIn(root: string): Folders {
  const found: Folders = {
    stages: namesIn(root, 'stages', ['kind.ts', 'science.ts']),
    crops: namesIn(root, 'crops', ['science.ts']),
    species: namesIn(root, 'species', ['science.ts']),
  };
  const all = [...found.stages, ...found.crops, ...found.species];
  const twice = all.find((name, index) => all.indexOf(name) !== index);
  if (twice !== undefined) throw new Error(`${twice}: two folders of the catalogue have this name`);
  return found;
}

/** Those of a shelf that have a certain file. */
export const withFile = (root: string, shelf: keyof Folders, names: readonly string[], file: string): string[] =>
  names.filter((name) => existsSync(join(root, shelf, name, file)));
