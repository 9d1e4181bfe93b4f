// The coefficients of all columns, told apart by what they hang on: those that no parameter moves are literals, the others places in
// a table that each season fills. Found by closing the columns anew with every parameter moved in turn, whatever its range.
import { STATES } from '../../components';
import { contentTable } from '../../content';
import type { Column } from '../../continuity';
import { groupsWith, valuesOf } from '../../parameters/values';
import type { Values } from '../../parameters/values';
import type { Definition } from '../../processes/definition';
import { closedColumns } from '../../processes/definitions';

/** A coefficient without its sign: a literal ('' for one), or the name of its place in the table. */
export interface Coefficient {
  sign: 1 | -1;
  text: string;
}
export interface Coefficients {
  /** process → component → coefficient; every one that is not nothing under some parameter */
  of: readonly ReadonlyMap<number, Coefficient>[];
  /** what stands in the table, in order: the process and component whose coefficient it is, and its name */
  table: readonly { process: number; row: number; name: string }[];
}

/** Moves a value by a share that differs from place to place, so that no two moves undo each other; nothing becomes something. */
const moved = (value: number, place: number): number => (value === 0 ? 0.03125 : value * (1.0625 + 0.001 * place));

/** What lives in a loop, and kinds of stages, have numbers of their own, but no column is closed from them. */
const NOTHING_LIVES = { fish: {}, crops: {}, kinds: {} };

/** The recorded values with some moved, also those that no run may replace. */
function valuesMoved(moves: readonly (readonly [group: string, name: string, value: number])[]): Values {
  const values = valuesOf(NOTHING_LIVES);
  const numbers = values as unknown as Record<string, Record<string, number>>;
  for (const [group, name, value] of moves) numbers[group][name] = value;
  return values;
}

/** Every set of values that the columns are closed for: as recorded, each parameter moved alone, and all moved at once. */
function samples(): Values[] {
  const all = Object.entries(groupsWith(NOTHING_LIVES)).flatMap(([group, parameters]) => (
    Object.entries(parameters).map(([name, { value }]) => [group, name, value] as const)));
  return [
    valuesMoved([]), ...all.map(([group, name, value]) => valuesMoved([[group, name, moved(value, 0)]])),
    valuesMoved(all.map(([group, name, value], i) => [group, name, moved(value, i % 41)])),
  ];
}

/** The columns under every sample that differs in what they are closed from. */
function closedTables(definitions: readonly Definition[]): Column[][] {
  const seen = new Set<string>();
  return samples().flatMap((values) => {
    const content = contentTable(values);
    const from = JSON.stringify([content, definitions.map(({ fixed }) => fixed(values))]);
    if (seen.has(from)) return [];
    seen.add(from);
    return [closedColumns(values, content)];
  });
}

/** What is left of a coefficient that cancels, by rounding alone. */
const DUST = 1e-14;

/** @param nameOf the name of a place in the table */
export function findCoefficients(definitions: readonly Definition[], nameOf: (process: number, row: number) => string): Coefficients {
  const tables = closedTables(definitions);
  const known = new Map<string, string>();
  const table: { process: number; row: number; name: string }[] = [];
  const of = definitions.map((_, process) => {
    const rows = new Set(tables.flatMap((columns) => Array.from(columns[process].rows)).filter((row) => row < STATES));
    return new Map(
      [...rows]
        .sort((a, b) => a - b)
        .flatMap((row): [number, Coefficient][] => {
          const series = tables.map((columns) => columns[process].coefficients[columns[process].rows.indexOf(row)] ?? 0);
          if (series.every((value) => Math.abs(value) < DUST)) return [];
          const sign = (series.find((value) => value !== 0) ?? 1) < 0 ? -1 : 1;
          const sizes = series.map((value) => value * sign);
          if (sizes.every((size) => size === sizes[0])) return [[row, { sign, text: sizes[0] === 1 ? '' : String(sizes[0]) }]];
          // Coefficients that move together, of either sign, share a place.
          const found = known.get(sizes.join());
          if (found !== undefined) return [[row, { sign, text: found }]];
          const turned = known.get(sizes.map((size) => -size).join());
          if (turned !== undefined) return [[row, { sign: sign === 1 ? -1 : 1, text: turned }]];
          const name = nameOf(process, row);
          // The place holds the coefficient itself, with its sign.
          known.set(series.join(), name);
          table.push({ process, row, name });
          return [[row, { sign: 1, text: name }]];
        }),
    );
  });
  return { of, table };
}
