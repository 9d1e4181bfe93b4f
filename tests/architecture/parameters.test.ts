// No number stands bare: every constant of the model says its unit, its range, its source and how sure it is.
import { describe, expect, it } from 'vitest';

const FLAGS = new Set(['published', 'derived', 'memory', 'calibrated', 'assumption']);
const said = (value: unknown): boolean => typeof value === 'string' && value.trim() !== '';

/** What is wrong with a value exported from a parameter file, by path. Functions are not values; plain text is a name. */
function faultsOf(path: string, value: unknown, seen: ReadonlySet<object> = new Set()): string[] {
  if (typeof value === 'number') return [`${path}: a bare number`];
  if (typeof value !== 'object' || value === null || seen.has(value)) return [];
  const record = value as Record<string, unknown>;
  if ('value' in record) return [...documented(path, record), ...ranged(path, record)];
  if ('coefficients' in record) return [...documented(path, record), ...correlated(path, record)];
  const within = new Set(seen).add(value);
  return Object.entries(record).flatMap(([key, inner]) => faultsOf(`${path}.${key}`, inner, within));
}

function documented(path: string, record: Record<string, unknown>): string[] {
  const faults: string[] = [];
  if (!said(record['unit'])) faults.push(`${path}: no unit`);
  if (!said(record['source'])) faults.push(`${path}: no source`);
  if (!FLAGS.has(String(record['flag']))) faults.push(`${path}: flag ${String(record['flag'])}`);
  return faults;
}

function ranged(path: string, { value, low, high }: Record<string, unknown>): string[] {
  const inside =
    typeof value === 'number'
    && typeof low === 'number'
    && typeof high === 'number'
    && Number.isFinite(low)
    && Number.isFinite(high)
    && low <= value
    && value <= high;
  return inside ? [] : [`${path}: ${String(value)} is not a finite number from ${String(low)} to ${String(high)}`];
}

function correlated(path: string, record: Record<string, unknown>): string[] {
  const { coefficients, from_C, to_C } = record;
  const finite = Array.isArray(coefficients) && coefficients.length > 0 && coefficients.every(Number.isFinite);
  const range = typeof from_C === 'number' && typeof to_C === 'number' && from_C < to_C;
  return [
    ...(finite ? [] : [`${path}: coefficients`]),
    ...(range ? [] : [`${path}: range`]),
    ...(said(record['formula']) ? [] : [`${path}: no formula`]),
  ];
}

const recorded = Object.entries(import.meta.glob<Record<string, unknown>>('../../src/model/parameters/*.ts', { eager: true })).map(
  ([path, module]) => [path.replace(/^.*parameters\//, ''), module] as const,
);
// a stage's science is functions; crops, fish and a kind's own constants are numbers
const ofKinds = Object.entries(
  import.meta.glob<Record<string, unknown>>(
    ['../../src/catalogue/{crops,species}/*/science.ts', '../../src/catalogue/stages/*/constants.ts'],
    { eager: true },
  ),
).map(([path, module]) => [path.replace(/^.*catalogue\//, ''), module] as const);
const modules = [...recorded, ...ofKinds];

describe('the constants of the model', () => {
  it('are there', () => {
    const paths = modules.map(([path]) => path);
    for (const path of ['chemistry.ts', 'crops/lettuce/science.ts', 'species/tilapia/science.ts']) expect(paths).toContain(path);
  });

  it.each(modules)('%s: each has a finite value inside its range, a unit, a source and a flag', (_path, module) => {
    expect(Object.entries(module).flatMap(([name, value]) => faultsOf(name, value))).toEqual([]);
  });
});

describe('the search for bare numbers', () => {
  const good = { value: 1, unit: 'g', low: 0, high: 2, source: 'a book', flag: 'published' };

  it('lets a whole record pass', () => {
    expect(faultsOf('x', { group: { good } })).toEqual([]);
  });

  it.each([
    ['a number alone', 3],
    ['no unit', { ...good, unit: '' }],
    ['no source', { ...good, source: ' ' }],
    ['an unknown flag', { ...good, flag: 'sure' }],
    ['a value above its range', { ...good, value: 3 }],
    ['no number', { ...good, value: NaN }],
    ['an endless range', { ...good, high: Infinity }],
    ['a formula without coefficients', { ...good, coefficients: [], value: undefined }],
  ])('finds %s', (_what, value) => {
    expect(faultsOf('x', { group: value })).not.toEqual([]);
  });
});
