// Where in a file's text a problem stands, so that whoever wrote the file finds the line.
import { parseTree } from 'jsonc-parser';
import type { Node } from 'jsonc-parser';
import { jsonFault } from './jsonScan';
import { TEXT_MAX } from './jsonText';
import type { Problem } from './problem';
import { withoutNotes } from './notes';
import { pathText } from './problems';

/** A thing within a value: how much of a path names it, where its key stands (its own place in a list), and its value. */
interface Inner {
  length: number;
  offset: number;
  value: Node | undefined;
}

/** The thing that a path goes on with. */
function innerOf(node: Node, rest: string, isFirst: boolean): Inner | undefined {
  const inner = node.children ?? [];
  if (node.type === 'array') {
    const index = /^\[(\d+)\]/.exec(rest);
    const value = index ? inner[Number(index[1])] : undefined;
    return index && value ? { length: index[0].length, offset: value.offset, value } : undefined;
  }
  for (const { offset, children = [] } of inner) {
    const key = pathText([String(children[0]?.value)]);
    const length = key.length + (isFirst || key.startsWith('[') ? 0 : 1);
    const whole = rest.length === length || '.['.includes(rest[length] ?? '');
    if (whole && rest.startsWith(key, length - key.length)) return { length, offset, value: children[1] };
  }
  return undefined;
}

/** Where a path's value stands, or the nearest thing around it that does; undefined where nothing on the way is there. */
function offsetOf(root: Node, path: string): number | undefined {
  let offset: number | undefined;
  let node: Node | undefined = root;
  for (let rest = path; rest !== '' && node;) {
    const found = innerOf(node, rest, rest === path);
    if (!found) break;
    rest = rest.slice(found.length);
    ({ offset, value: node } = found);
  }
  return offset;
}

const lineAt = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;

/**
 * The problems with the line each stands at, from 1. What is missing stands where the object that lacks it begins.
 * Problems of the whole file get none, and neither do those of a text that is no JSON: they name their line already.
 */
export function withLines(text: string, problems: readonly Problem[]): Problem[] {
  const plain = text.length > TEXT_MAX ? '' : withoutNotes(text.replace(/^\uFEFF/, ' '));
  const root = jsonFault(plain) === null ? parseTree(plain) : undefined;
  if (!root) return [...problems];
  return problems.map((problem) => {
    const offset = offsetOf(root, problem.path);
    return offset === undefined ? problem : { ...problem, line: lineAt(plain, offset) };
  });
}
