// Sums of products as text: terms with the same coefficient are put together, and sums that recur get a name of their own.

/** ± coefficient × factor; a coefficient of '' is one. */
export interface Term {
  sign: 1 | -1;
  coefficient: string;
  factor: string;
}
/** A place that is added to (or set), and what it is. */
export interface Sum {
  target: string;
  terms: readonly Term[];
}

interface Group {
  coefficient: string;
  parts: { sign: 1 | -1; factor: string }[];
}

function grouped(terms: readonly Term[]): Group[] {
  const groups: Group[] = [];
  for (const { sign, coefficient, factor } of terms) {
    const found = groups.find((group) => group.coefficient === coefficient);
    // What is taken and given back is neither.
    const against = found?.parts.findIndex((part) => part.factor === factor && part.sign !== sign) ?? -1;
    if (against >= 0) found?.parts.splice(against, 1);
    else if (found) found.parts.push({ sign, factor });
    else groups.push({ coefficient, parts: [{ sign, factor }] });
  }
  return groups.filter(({ parts }) => parts.length > 0);
}

/** Whether anything is left of a sum. */
export const isEmpty = (terms: readonly Term[]): boolean => grouped(terms).length === 0;

const signed = (parts: Group['parts']): string =>
  parts.map(({ sign, factor }, i) => (i === 0 ? (sign < 0 ? `-${factor}` : factor) : `${sign < 0 ? ' - ' : ' + '}${factor}`)).join('');

/** Positive parts first, since a leading minus costs an operation; where all are negative the group is. */
function ordered(parts: Group['parts']): { sign: 1 | -1; parts: Group['parts'] } {
  const all = parts.every(({ sign }) => sign < 0);
  const turned = all ? parts.map(({ factor }) => ({ sign: 1 as const, factor })) : parts;
  return { sign: all ? -1 : 1, parts: [...turned.filter(({ sign }) => sign > 0), ...turned.filter(({ sign }) => sign < 0)] };
}

/** Names for sums that recur among several. */
export class Recurring {
  private readonly counts = new Map<string, number>();
  private readonly names = new Map<string, string>();
  readonly lines: string[] = [];

  constructor(sums: readonly Sum[], taken: readonly string[]) {
    for (const { terms } of sums)
      for (const group of grouped(terms)) {
        if (group.coefficient === '' || group.parts.length < 2) continue;
        const text = signed(ordered(group.parts).parts);
        this.counts.set(text, (this.counts.get(text) ?? 0) + 1);
        if (this.counts.get(text) !== 2) continue;
        const name = nameFor(
          group.parts.map(({ factor }) => factor),
          [...taken, ...this.names.values()],
        );
        this.names.set(text, name);
        this.lines.push(`const ${name} = ${text};`);
      }
  }

  /** Signed addends of a sum, the positive ones first. */
  private addends(terms: readonly Term[]): { sign: 1 | -1; text: string }[] {
    const out = grouped(terms).flatMap(({ coefficient, parts }): { sign: 1 | -1; text: string }[] => {
      if (coefficient === '') return parts.map(({ sign, factor }) => ({ sign, text: factor }));
      const { sign, parts: inside } = ordered(parts);
      const text = signed(inside);
      const factor = this.names.get(text) ?? (inside.length > 1 ? `(${text})` : text);
      return [{ sign, text: `${coefficient} * ${factor}` }];
    });
    return [...out.filter(({ sign }) => sign > 0), ...out.filter(({ sign }) => sign < 0)];
  }

  /** `target = sum` */
  set({ target, terms }: Sum): string {
    return `${target} = ${this.value(terms)};`;
  }

  /** `target += sum` or, where all is taken off, `target -= sum` */
  add({ target, terms }: Sum): string {
    const all = this.addends(terms);
    const off = all.every(({ sign }) => sign < 0);
    return `${target} ${off ? '-' : '+'}= ${joined(off ? all.map(({ text }) => ({ sign: 1, text })) : all)};`;
  }

  /** The sum alone. */
  value(terms: readonly Term[]): string {
    return isEmpty(terms) ? '0' : joined(this.addends(terms));
  }
}

const joined = (addends: readonly { sign: 1 | -1; text: string }[]): string =>
  addends.map(({ sign, text }, i) => (i === 0 ? (sign < 0 ? `-${text}` : text) : `${sign < 0 ? ' - ' : ' + '}${text}`)).join('');

/** A name for a sum, from how its parts' names begin. */
function nameFor(names: readonly string[], taken: readonly string[]): string {
  let common = names[0];
  for (const name of names) while (!name.startsWith(common)) common = common.slice(0, -1);
  const stem = common.length > 3 ? common.replace(/[^A-Za-z0-9]+$/, '') : 'sum';
  for (let n = 0; ; n++) {
    const name = `${stem}${stem === 'sum' ? '' : 'All'}${n === 0 ? '' : n + 1}`;
    if (!taken.includes(name) && !names.includes(name)) return name;
  }
}
