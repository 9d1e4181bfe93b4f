// Writes the factorising of d I − W of one cell: only what can be filled, in an order that fills little.
import { FAST, FLOWING, O2 } from '../../components';
import { carriedPlace, factorPlan, key, restingPlace } from './factorPlan';
import { fileOf, imported, indented, opening, signature } from './lines';
import { conditionOf, row } from './kernelPlan';
import type { KernelPlan } from './kernelPlan';

/** Inverted diagonals of what is solved alone; where its sinks do not run, it goes as water carries it. */
function loneLines(plan: KernelPlan): string[] {
  return plan.diagonals.map(({ component, losses, diagonal }) => {
    const base = component < FLOWING ? 'carried' : 'resting';
    const conditions = [...new Set(losses.map(({ process }) => conditionOf(plan.definitions[process])))];
    const inverse = `1 / (d + own[oo + ${diagonal}])`;
    const named = plan.lones
      .filter((lone) => lone.diagonal === diagonal)
      .map((lone) => row(lone.component))
      .join(', ');
    const any = conditions.map((one) => (conditions.length > 1 && one.includes('&&') ? `(${one})` : one)).join(' || ');
    return `lu[lo + ${diagonal}] = ${conditions.includes('') ? inverse : `${any} ? ${inverse} : ${base}`}; // ${named}`;
  });
}

export function factorText(plan: KernelPlan): string {
  const { steps, changed, places } = factorPlan(plan);
  const entry = (r: number, c: number): string => `a_${row(r)}_${row(c)}`;
  const inBlock = (r: number, c: number): number => plan.block.indexOf(r * FAST + c);
  const fromW = (r: number, c: number): string => (inBlock(r, c) < 0 ? '0' : `-w[wo + ${inBlock(r, c)}]`);
  const known = new Set<string>();
  const lines: string[] = [];
  /** The first value of an entry, where it is first needed. */
  const first = (r: number, c: number): string => {
    if (r === O2) return c === r ? `held ? d : d + outflow - w[wo + ${inBlock(r, c)}]` : `held ? 0 : ${fromW(r, c)}`;
    return c === r ? `d + outflow - w[wo + ${inBlock(r, c)}]` : fromW(r, c);
  };
  const read = (r: number, c: number): string => {
    if (!known.has(key(r, c))) {
      known.add(key(r, c));
      lines.push(`${changed.has(key(r, c)) ? 'let' : 'const'} ${entry(r, c)} = ${first(r, c)};`);
    }
    return entry(r, c);
  };
  for (const { pivot, below, right } of steps) {
    lines.push(`// --- ${row(pivot)}`);
    const own = read(pivot, pivot);
    lines.push(
      `if (!(${own} > LEAST || ${own} < -LEAST)) return false;`,
      `const inverse_${row(pivot)} = 1 / ${own};`,
      `lu[lo + ${places.get(`D ${pivot}`)}] = inverse_${row(pivot)};`,
    );
    for (const c of right) if (changed.has(key(pivot, c))) lines.push(`lu[lo + ${places.get(`U ${key(pivot, c)}`)}] = ${read(pivot, c)};`);
    for (const r of below) {
      lines.push(
        `const l_${row(r)}_${row(pivot)} = (${read(r, pivot)}) * inverse_${row(pivot)};`.replace(/\((\w+)\)/, '$1'),
        `lu[lo + ${places.get(`L ${key(r, pivot)}`)}] = l_${row(r)}_${row(pivot)};`,
      );
      for (const c of right) {
        const target = read(r, c);
        const by = read(pivot, c);
        lines.push(`${target} -= l_${row(r)}_${row(pivot)} * ${by};`);
      }
    }
  }
  return fileOf([
    ...opening('Factorises d I − W of one cell, without pivoting: its diagonal is dominant.'),
    ...imported(['Cell'], '../cell', true),
    '',
    '/** No pivot may be smaller. */',
    'const LEAST = 1e-300;',
    '',
    '/**',
    ' * Writes inverted diagonals and factors to `lu` from `lo`.',
    ' * @param outflow 1/d that water carries off @param held whether a rig holds oxygen',
    ' * @returns false where a pivot vanishes; the caller then shortens its step',
    ' */',
    ...signature('factorCell', ['cell: Cell', 'outflow', 'd', 'held: boolean', 'own[]', 'oo', 'w[]', 'wo', 'lu[]', 'lo'], 'boolean'),
    ...indented([
      'const carried = 1 / (d + outflow), resting = 1 / d;',
      `lu[lo + ${carriedPlace(plan)}] = carried;`,
      `lu[lo + ${restingPlace(plan)}] = resting;`,
      ...loneLines(plan),
      ...lines,
      'return true;',
    ]),
    '}',
  ]);
}
