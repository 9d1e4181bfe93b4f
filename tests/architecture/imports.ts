// Finds the imports of a file, and judges each against who may import whom.
import { posix } from 'node:path';
import ts from 'typescript';
import { parse, walk } from './sourceFiles';

export interface Import {
  what: string;
  typeOnly: boolean;
}

/** Every module a text names: import, export from, import(), require(), import types, and new URL beside the file. */
export function importsOf(path: string, text: string): Import[] {
  const found: Import[] = [];
  walk(parse(path, text), (node) => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      found.push({ what: node.moduleSpecifier.text, typeOnly: importsTypesOnly(node.importClause) });
    } else if (ts.isExportDeclaration(node) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier)) {
      found.push({ what: node.moduleSpecifier.text, typeOnly: node.isTypeOnly });
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument) && ts.isStringLiteral(node.argument.literal)) {
      found.push({ what: node.argument.literal.text, typeOnly: true });
    } else if (ts.isCallExpression(node) && isLoader(node.expression)) {
      const name = node.arguments[0];
      found.push({ what: name && ts.isStringLiteralLike(name) ? name.text : '(computed)', typeOnly: false });
    } else if (ts.isImportEqualsDeclaration(node)) {
      found.push({ what: node.moduleReference.getText(), typeOnly: node.isTypeOnly });
    }
  });
  return found;
}

function importsTypesOnly(clause: ts.ImportClause | undefined): boolean {
  if (!clause) return false;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
  const names = clause.namedBindings;
  return (
    !clause.name
    && names !== undefined
    && ts.isNamedImports(names)
    && names.elements.length > 0
    && names.elements.every((name) => name.isTypeOnly)
  );
}

function isLoader(called: ts.Expression): boolean {
  const glob = ts.isPropertyAccessExpression(called) && ts.isMetaProperty(called.expression) && called.name.text.startsWith('glob');
  return called.kind === ts.SyntaxKind.ImportKeyword || glob || (ts.isIdentifier(called) && called.text === 'require');
}

/** Folders and packages a part of the page or engine may use. Its own folder needs no mention. */
interface Rule {
  values: string[];
  types: string[];
  packages: RegExp | null;
}

const PAGE = ['page/state', 'words', 'assets'];
const ENGINE_TYPES = ['lessons', 'season', 'catalogue', 'model'];

/** The table of DEVELOPERS.md, "who may import whom". Worker files have names of their own: see partOf. */
export const RULES: Record<string, Rule> = {
  numerics: { values: [], types: [], packages: /^(seedrandom|@stdlib\/math-[a-z-]+)$/ },
  model: { values: ['numerics'], types: [], packages: null },
  catalogue: { values: ['model'], types: [], packages: null },
  season: { values: ['catalogue', 'model', 'numerics'], types: [], packages: null },
  lessons: { values: ['season', 'catalogue', 'model', 'lessons texts'], types: [], packages: /^(zod|jsonc-parser)$/ },
  // chooses the language of texts; reads nothing else, so that the page may use it
  'lessons texts': { values: [], types: [], packages: null },
  'worker entry': { values: ['lessons', 'season', 'catalogue', 'model', 'worker messages'], types: [], packages: null },
  'worker client': { values: ['worker messages'], types: [], packages: null },
  'worker messages': { values: [], types: ENGINE_TYPES, packages: null },
  words: { values: ['catalogue words'], types: [...ENGINE_TYPES, 'worker messages'], packages: null },
  'page/state': { values: ['worker messages', 'words'], types: ENGINE_TYPES, packages: /^zustand\/vanilla$/ },
  'catalogue drawing': { values: ['page/picture/kit'], types: [], packages: null },
  'catalogue words': { values: [], types: [], packages: null },
  'catalogue drawings': { values: ['catalogue drawing'], types: ['page/picture/kit'], packages: null },
  'catalogue icons': { values: ['catalogue icon'], types: [], packages: null },
  'catalogue generator': { values: [], types: [], packages: /^(node:.*|\(computed\))$/ },
  'page/picture/kit': { values: ['words', 'assets'], types: ['page/state'], packages: /^phaser$/ },
  'page/picture': { values: [...PAGE, 'page/picture/kit', 'catalogue drawings'], types: [], packages: /^phaser$/ },
  'page/panels': {
    values: [...PAGE, 'catalogue icons'],
    types: [],
    packages: /^(react|react\/jsx-runtime|zustand(\/vanilla)?|uplot|uplot\/dist\/uPlot\.min\.css|d3-sankey)$/,
  },
  tools: { values: ['lessons', 'season', 'catalogue', 'model', 'catalogue generator', 'words'], types: [], packages: /^node:/ },
  main: {
    values: [...PAGE, 'levels', 'worker client', 'worker messages', 'lessons texts', 'page/picture', 'page/panels'],
    types: ['lessons'],
    packages: /./,
  },
};

/** The part a file belongs to, from its path under the project's root; undefined where no file may stand. */
export function partOf(path: string): string | undefined {
  const [top, folder, file] = path.split('/');
  if (top === 'assets' || top === 'levels') return top;
  if (top !== 'src') return undefined;
  if (file === undefined) return /^main\.tsx?$/.test(folder) ? 'main' : undefined;
  if (folder === 'lessons' && /^texts(\.ts)?$/.test(file)) return 'lessons texts';
  if (path.startsWith('src/page/picture/kit/')) return 'page/picture/kit';
  if (folder === 'catalogue') return catalogueParts(path);
  if (folder === 'page') return Object.hasOwn(RULES, `page/${file}`) ? `page/${file}` : undefined;
  if (folder !== 'worker') return Object.hasOwn(RULES, folder) ? folder : undefined;
  const name = file.replace(/\.tsx?$/, '');
  return name === 'client' || name === 'messages' ? `worker ${name}` : 'worker entry';
}

/** Each file of a kind's folder is a part of its own, and so is each list that is written from them. */
function catalogueParts(path: string): string | undefined {
  const name = posix.basename(path).replace(/\.tsx?$/, '');
  if (path.startsWith('src/catalogue/generate/')) return 'catalogue generator';
  if (name.endsWith('.svg')) return 'catalogue icon';
  const part = `catalogue ${name}`;
  // what a kind is and how it works, the list of them, and what asks that list
  return Object.hasOwn(RULES, part) ? part : 'catalogue';
}

/** The folder of a kind that a path lies in. */
const kindOf = (path: string): string | undefined => /^src\/catalogue\/(?:stages|crops|species)\/[^/]+\//.exec(path)?.[0];

/** Whether a file of a kind reaches into the folder of another. */
function otherKind(path: string, target: string): boolean {
  const own = kindOf(path);
  const theirs = kindOf(target);
  return own !== undefined && theirs !== undefined && own !== theirs;
}

/** The edges of one file that the table does not allow, each as "path: what is wrong". */
export function wrongImports(path: string, text: string): string[] {
  const part = partOf(path);
  if (!part || !Object.hasOwn(RULES, part)) return [`${path}: stands in no folder of the table`];
  const rule = RULES[part];
  return importsOf(path, text).flatMap(({ what, typeOnly }) => {
    if (!what.startsWith('.')) return rule.packages?.test(what) ? [] : [`${path}: package ${what}`];
    const target = posix.normalize(posix.join(posix.dirname(path), what.replace(/\?.*$/, '')));
    const other = partOf(target);
    if (otherKind(path, target)) return [`${path}: another kind, ${target}`];
    if (other === part || (other !== undefined && rule.values.includes(other))) return [];
    if (other !== undefined && typeOnly && rule.types.includes(other)) return [];
    return [`${path}: ${typeOnly ? 'types of ' : ''}${target}`];
  });
}
