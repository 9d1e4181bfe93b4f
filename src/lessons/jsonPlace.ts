// Where in a file's text a problem stands, so that whoever wrote the file finds the line.
import { jsonFault } from './jsonScan';
import { TEXT_MAX } from './jsonText';
import type { Problem } from './problem';
import { withoutNotes } from './notes';
import { pathText } from './problems';

const TOKEN = /"(?:[^"\\]|\\.)*"|[{}[\],]|[^\s{}[\],:"]+/g;

type Key = string | number;

/** The paths of everything in a sound JSON text, each with the offset at which it stands (a key's own place, for what has a key). */
function placesIn(text: string): Map<string, number> {
  const places = new Map<string, number>();
  /** the keys down to here; an object waits for its next key with null */
  const keys: (Key | null)[] = [];
  const note = (offset: number): void => {
    const path = keys.filter((key): key is Key => key !== null);
    if (path.length > 0 && !places.has(pathText(path))) places.set(pathText(path), offset);
  };
  for (const found of text.matchAll(TOKEN)) {
    const [token] = found;
    const last = keys.length - 1;
    if (token === '}' || token === ']') keys.pop();
    else if (token === ',') {
      const key = keys[last];
      keys[last] = typeof key === 'number' ? key + 1 : null;
    } else if (keys[last] === null && token.startsWith('"')) {
      keys[last] = JSON.parse(token) as string;
      note(found.index);
    } else {
      note(found.index);
      if (token === '{') keys.push(null);
      else if (token === '[') keys.push(0);
    }
  }
  return places;
}

/** The path itself, then ever more of what holds it. */
function outward(path: string): string[] {
  const steps = [path];
  for (let rest = path; rest !== '';) {
    rest = rest.replace(/(\.[^.[\]]*|\[[^\]]*\]|^[^.[\]]+)$/, '');
    if (rest === steps[steps.length - 1]) break;
    steps.push(rest);
  }
  return steps;
}

const lineAt = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;

/**
 * The problems with the line each stands at, from 1. What is missing stands where the object that lacks it begins.
 * Problems of the whole file get none, and neither do those of a text that is no JSON: they name their line already.
 */
export function withLines(text: string, problems: readonly Problem[]): Problem[] {
  const plain = text.length > TEXT_MAX ? '' : withoutNotes(text.replace(/^\uFEFF/, ' '));
  if (jsonFault(plain) !== null) return [...problems];
  const places = placesIn(plain);
  return problems.map((problem) => {
    const offset = outward(problem.path).map((path) => places.get(path)).find((place) => place !== undefined);
    return offset === undefined ? problem : { ...problem, line: lineAt(plain, offset) };
  });
}
