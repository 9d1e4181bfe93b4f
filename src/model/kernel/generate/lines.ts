// Puts generated text together: what every generated file opens with, lines broken where they grow long, imports.

/** No generated line is longer. */
const WIDTH = 140;

/** The first lines of a generated file. */
export const opening = (...owns: readonly string[]): string[] => [
  ...owns.map((line) => `// ${line}`),
  '// Written by `npm run kernels` from the tables of components and processes: never edited, stale copies fail a test.',
];

/** Where a text too long for a line is best broken: before a sign outside brackets, else after a comma, as late as fits. */
function breakAt(text: string, from: number): number {
  let depth = 0,
    sign = -1,
    comma = -1,
    outer = Infinity;
  for (let i = 0; i < WIDTH; i++) {
    if (text[i] === '[') depth++;
    else if (text[i] === ']') depth--;
    if (i <= from) continue;
    if (depth === 0 && /^ [+-] /.test(text.slice(i, i + 3))) sign = i;
    if (text[i] === ',' && text[i + 1] === ' ' && depth <= outer) {
      outer = depth;
      comma = i + 1;
    }
  }
  return sign >= 0 ? sign : comma;
}

/** One statement, or an item of a list, in as many lines as it needs. */
export function broken(text: string, indent = ''): string[] {
  const lines: string[] = [];
  let rest = indent + text;
  let from = indent.length + 8;
  while (rest.length > WIDTH) {
    const at = breakAt(rest, from);
    if (at < 0) break;
    lines.push(rest.slice(0, at));
    rest = `${indent}  ${rest.slice(at).trimStart()}`;
    from = indent.length + 10;
  }
  lines.push(rest);
  return lines;
}

/** Short statements, as many to a line as fit; two levels of indentation are allowed for. */
export function packed(statements: readonly string[]): string[] {
  const lines: string[] = [];
  for (const statement of statements) {
    const last = lines.length - 1;
    if (last >= 0 && lines[last].length + statement.length + 1 <= WIDTH - 4) lines[last] += ` ${statement}`;
    else lines.push(statement);
  }
  return lines;
}

/** One `const` for several names. */
export const constants = (definitions: readonly string[]): string[] =>
  definitions.length === 0 ? [] : [`const ${definitions.join(', ')};`];

/** `import { a, b } from 'c';` */
export const imported = (names: readonly string[], from: string, type = false): string[] =>
  broken(`import ${type ? 'type ' : ''}{ ${[...names].sort().join(', ')} } from '${from}';`);

/** Joins lines to a file's text. */
export const fileOf = (lines: readonly string[]): string => `${lines.join('\n')}\n`;

/** Lines inside a condition; as they are where there is none. */
export const within = (condition: string, lines: readonly string[]): string[] =>
  condition === '' || lines.length === 0 ? [...lines] : [`if (${condition}) {`, ...indented(lines), '}'];

export const indented = (lines: readonly string[]): string[] =>
  lines.flatMap((line) => (line === '' ? [''] : broken(line.trimStart(), `  ${/^ */.exec(line)?.[0] ?? ''}`)));

/** The first lines of an exported function; of its parameters, `x` is a number, `x[]` an array of numbers, others say their type. */
export const signature = (name: string, parameters: readonly string[], result: string): string[] => {
  const typed = parameters.map((one) => {
    if (one.includes(':')) return one;
    return one.endsWith('[]') ? `${one.slice(0, -2)}: Float64Array` : `${one}: number`;
  });
  return broken(`export function ${name}(${typed.join(', ')}): ${result} {`);
};
