// What the page knows of the kinds, written from their folders: drawings, words, pictures, and who made the pictures.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { foldersIn } from './folders';

const GROUPS = ['stages', 'crops', 'species'] as const;
type Group = (typeof GROUPS)[number];

/** A folder of the catalogue, by its path under the project's root. */
export interface Folder {
  group: Group;
  kind: string;
  path: string;
}

/** What a generated file opens with. */
const HEAD = (what: string): string => `// ${what} Written by \`npm run catalogue\` from the folders of the catalogue; never edited.\n`;

/** Every text that a kind must have in each language; it may have more. */
const TEXTS: Readonly<Record<Group, readonly string[]>> = {
  stages: ['name', 'does', 'mistake'],
  crops: ['name'],
  species: ['name', 'inText'],
};

/** All folders of the catalogue, in the order of their names. @param root the project's folder */
export function foldersOf(root: string): Folder[] {
  const found = foldersIn(join(root, 'src/catalogue'));
  return GROUPS.flatMap((group) => found[group].map((kind) => ({ group, kind, path: `src/catalogue/${group}/${kind}` })));
}

/** Reads a file of a kind. @throws where it is missing */
function textIn(root: string, { path }: Folder, name: string): string {
  const file = join(root, path, name);
  if (!existsSync(file)) throw new Error(`${path}/${name}: missing; a kind has a ${name} of its own`);
  return readFileSync(file, 'utf8');
}

const byGroup = (folders: readonly Folder[], group: Group): Folder[] => folders.filter((folder) => folder.group === group);
const spread = (kinds: readonly string[]): string => kinds.map((kind) => `  ${kind},\n`).join('');

/** The drawings, each as its folder gives it; a kind that is to look like a plain vessel says so in its drawing.ts. */
function drawings(root: string, folders: readonly Folder[]): string {
  for (const folder of folders) {
    if (!/export (const drawing\b|\{[^}]*\bdrawing\b)/.test(textIn(root, folder, 'drawing.ts')))
      throw new Error(`${folder.path}/drawing.ts: must export "drawing"`);
  }
  const record = (name: string, type: string, group: Group): string =>
    `export const ${name}: Readonly<Record<string, ${type}>> = {\n${spread(byGroup(folders, group).map(({ kind }) => kind))}};\n`;
  return (
    HEAD('How every kind is drawn.')
    + "import type { CropDrawing } from '../page/picture/kit/crops';\n"
    + "import type { FishForm } from '../page/picture/kit/fishForm';\n"
    + "import type { KindDrawing } from '../page/picture/kit/kit';\n"
    + folders.map(({ group, kind }) => `import { drawing as ${kind} } from './${group}/${kind}/drawing';\n`).join('')
    + `\n${record('stageDrawings', 'KindDrawing', 'stages')}\n${record('cropDrawings', 'CropDrawing', 'crops')}\n`
    + `${record('speciesDrawings', 'FishForm', 'species')}`
  );
}

type Texts = Readonly<Record<string, unknown>>;
const isTexts = (value: unknown): value is Texts => typeof value === 'object' && value !== null;

/** Keys of a kind's texts, each with where its folder holds it. */
function keysOf({ group, kind, path }: Folder, language: string, texts: unknown): [string, string][] {
  if (!isTexts(texts)) throw new Error(`${path}/words.ts: must export "${language}", the words of that language`);
  for (const text of TEXTS[group])
    if (typeof texts[text] !== 'string') throw new Error(`${path}/words.ts: "${language}" needs a text "${text}"`);
  const at = `${kind}.${language}`;
  if (group === 'crops') return [[`crop.${kind}`, `${at}.name`]];
  if (group === 'species')
    return [
      [`species.${kind}`, `${at}.name`],
      [`stock.${kind}`, `${at}.inText`],
    ];
  const cautions = isTexts(texts.cautions) ? texts.cautions : {};
  return [
    ...Object.keys(texts)
      .filter((key) => typeof texts[key] === 'string')
      .map((key): [string, string] => [`stage.${kind}.${key}`, `${at}.${key}`]),
    ...Object.keys(cautions).flatMap((name): [string, string][] => [
      [`caution.${name}`, `${at}.cautions.${name}.full`],
      [`shortCaution.${name}`, `${at}.cautions.${name}.short`],
    ]),
  ];
}

/** The words of all kinds, one catalogue a language: every folder speaks every language that one of them speaks. */
async function words(root: string, folders: readonly Folder[]): Promise<string> {
  const spoken: { folder: Folder; languages: Texts }[] = [];
  for (const folder of folders) {
    // words are plain JavaScript: read as such they need nobody to compile them, whoever runs this
    const text = textIn(root, folder, 'words.ts');
    const languages: unknown = await import(/* @vite-ignore */ `data:text/javascript,${encodeURIComponent(text)}`);
    spoken.push({ folder, languages: isTexts(languages) ? languages : {} });
  }
  const languages = [...new Set(['english', ...spoken.flatMap(({ languages: own }) => Object.keys(own))])];
  const catalogue = (language: string): string =>
    `\nexport const ${language} = {\n${spoken
      .flatMap(({ folder, languages: own }) => keysOf(folder, language, own[language]))
      .map(([key, place]) => `  '${key}': ${place},\n`)
      .join('')}};\n`;
  return (
    HEAD('The words of every kind.')
    + folders.map(({ group, kind }) => `import * as ${kind} from './${group}/${kind}/words';\n`).join('')
    + languages.map(catalogue).join('')
  );
}

/** Where a miniature stands: its ground is at y = 0. */
function frameOf(root: string, folder: Folder): string {
  const box = /viewBox="(-?[\d.]+) (-?[\d.]+) ([\d.]+) ([\d.]+)"/.exec(textIn(root, folder, 'miniature.svg'));
  if (box === null) throw new Error(`${folder.path}/miniature.svg: needs a viewBox of four numbers`);
  const [, , top, width, height] = box;
  return `top: ${top}, width: ${width}, height: ${height}`;
}

/** The pictures of the stages: on the shelf, and in miniature for those that have one. */
function icons(root: string, folders: readonly Folder[]): string {
  const stages = byGroup(folders, 'stages');
  const small = stages.filter(({ path }) => existsSync(join(root, path, 'miniature.svg')));
  for (const folder of stages) textIn(root, folder, 'icon.svg');
  return (
    HEAD('The pictures of every kind of stage.')
    + stages.map(({ kind }) => `import ${kind} from './stages/${kind}/icon.svg?url';\n`).join('')
    + small.map(({ kind }) => `import ${kind}Small from './stages/${kind}/miniature.svg?url';\n`).join('')
    + `\n/** As it lies on the shelf. */\nexport const stageIcons = {\n${spread(stages.map(({ kind }) => kind))}};\n`
    + '\n/** A picture in miniature and its frame: it stands on the ground at y = 0. */\nexport interface Miniature { picture: string; top: number; width: number; height: number }\n'
    + '\nexport const stageMiniatures: Readonly<Record<string, Miniature>> = {\n'
    + small.map((folder) => `  ${folder.kind}: { picture: ${folder.kind}Small, ${frameOf(root, folder)} },\n`).join('')
    + '};\n'
  );
}

/** Who made a picture: its first line says author and licence. */
function creditOf(root: string, folder: Folder, name: string): string {
  const said = /^<!-- (.+), ([^,]+) -->\n/.exec(textIn(root, folder, name));
  if (said === null)
    throw new Error(`${folder.path}/${name}: its first line must say who made it and under which licence, <!-- author, licence -->`);
  return `    ${JSON.stringify({ file: `${folder.path}/${name}`, author: said[1], licence: said[2] })
    .replace(/":"/g, '": "')
    .replace(/","/g, '", "')}`;
}

/** The credits, with the kinds' part written anew. */
function credits(root: string, folders: readonly Folder[]): string {
  const file = 'assets/credits.json';
  const kept = /^\{\n {2}"files": \[\n[^\]]*\n {2}\]/.exec(readFileSync(join(root, file), 'utf8'));
  if (kept === null) throw new Error(`${file}: must open with "files", the credits of what lies beside it`);
  const pictures = folders.flatMap((folder) =>
    readdirSync(join(root, folder.path))
      .filter((name) => name.endsWith('.svg'))
      .sort()
      .map((name) => creditOf(root, folder, name)),
  );
  return `${kept[0]},\n  "kinds": [\n${pictures.join(',\n')}\n  ]\n}\n`;
}

/** The files that the page's side of the catalogue needs, by their paths under the root. */
export async function pageFiles(root: string): Promise<Record<string, string>> {
  const folders = foldersOf(root);
  return {
    'src/catalogue/drawings.ts': drawings(root, folders),
    'src/catalogue/words.ts': await words(root, folders),
    'src/catalogue/icons.ts': icons(root, folders),
    'assets/credits.json': credits(root, folders),
  };
}
