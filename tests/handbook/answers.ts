// What the handbook tests share: asking for one water, and reading the tables kept beside them.
import { readFileSync } from 'node:fs';
import { answerLine } from '../../src/tools/waterLine';

export interface Answer {
  pH: number;
  CO2_mg_L: number;
  DIC_mmol_L: number;
  NH3_fraction: number;
  H2S_fraction: number;
  O2_saturation_mg_L: number;
  ionicStrength_mol_L: number;
}

/** Answers one water; a refusal fails the test that asked. */
export function ask(water: Record<string, number>): Answer {
  const answer = JSON.parse(answerLine(JSON.stringify(water))) as Answer | { error: string };
  if ('error' in answer) throw new Error(answer.error);
  return answer;
}

/** Rows of a CSV file in tests/handbook/data, by column name. */
export function table(name: string): Record<string, string>[] {
  const [head, ...rows] = readFileSync(new URL(`./data/${name}`, import.meta.url), 'utf8')
    .trim()
    .split(/\r?\n/);
  const columns = head.split(',');
  return rows.map((row) => {
    const cells = row.split(',');
    return Object.fromEntries(columns.map((column, i) => [column, cells[i] ?? '']));
  });
}

/** How far a value is from the one expected, as a share of it. */
export const apart = (value: number, expected: number): number => Math.abs(value / expected - 1);
