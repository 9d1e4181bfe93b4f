// What the season command does: runs a plan and prints its table.
import { readPlan } from '../lessons/readPlan';
import { MODEL_REVISION } from '../season/plan';
import { ensemble } from '../season/ensemble';
import type { Plan } from '../season/plan';
import type { Trajectory } from '../season/trajectory';
import { readCommandLine } from './commandLine';
import { CommandError, exampleNames, exampleText, oldFileText, readText, refused } from './planText';
import { bandTable } from './bandTable';
import { seasonTable } from './seasonTable';
import type { Every } from './seasonTable';
import { csvText, jsonText } from './tableText';

const HELP = `Runs a plan and prints the season as a table.

  npm run -s season -- PLAN.json [--every day|hour] [--csv|--json]
  npm run -s season -- PLAN.json --ensemble N     N seasons with every parameter drawn from its range; same plan, same bands
  npm run -s season -- -                 reads the plan from standard input
  npm run -s season -- --preset          lists the example plans
  npm run -s season -- --preset NAME     prints one, ready to be changed or piped back in

Rows: day 0 is the start, then the end of each day (or hour). Columns: day, then <stage>.<variable>, scores, ledger.
A stage of several cells shows the mean of its water, the sum of its sludge, and flow and level where the water leaves.
A pump shows the water it lifts. eaten_g_d of a daily row is the day's mean. Hourly rows carry the scores of the last
midnight; before the first there are none (NaN). The ledger columns are the relative closures of the whole season, clipped the mass cut off at zero.
An ensemble has columns <stage>.<variable>.p10, .p50 and .p90, a row a day; draws that could not be lived are told on standard error.
Exit code 0: printed; 1: the plan cannot be used; 2: the command cannot be understood.
`;

interface Wish { plan: string | null; every: Every; json: boolean; preset: string | null; ensemble: number | null; help: boolean }

const FLAGS = { every: 'text', csv: 'flag', json: 'flag', ensemble: 'text', preset: 'flag', help: 'flag' } as const;

/** Reads the command line; throws a CommandError with exit code 2 where it makes no sense. */
export function readWish(words: readonly string[]): Wish {
  const { flags, rest } = readCommandLine(words, FLAGS);
  const every = flags.every?.value ?? 'day';
  if (every !== 'day' && every !== 'hour') throw new CommandError(`--every: got ${every || 'nothing'}; expected hour or day`, 2);
  const draws = flags.ensemble?.value;
  if (draws !== undefined && !/^[1-9]\d{0,3}$/.test(draws)) throw new CommandError(`--ensemble: got ${draws || 'nothing'}; expected a number of draws from 1 to 9999`, 2);
  // The name of an example may follow its flag as a word of its own.
  const { preset } = flags;
  const named = preset?.value === '' ? rest.find(({ word, at }) => at === preset.at + 1 && !word.startsWith('-')) : undefined;
  const [plan, more] = rest.filter((one) => one !== named).map(({ word }) => word);
  if (more !== undefined) throw new CommandError(`got ${more} after ${plan}; expected one plan`, 2);
  return {
    plan: plan ?? null, every, json: (flags.json?.at ?? -1) > (flags.csv?.at ?? -1), preset: preset ? named?.word ?? preset.value : null,
    ensemble: draws === undefined ? null : Number(draws), help: flags.help !== undefined,
  };
}

/** Where the command writes, and the engine it runs. */
export interface SeasonSurroundings { print: (text: string) => void; note: (text: string) => void; run: (plan: Plan) => Trajectory }

/** Runs the command and returns its exit code. */
export function seasonCommand(words: readonly string[], { print, note, run }: SeasonSurroundings): number {
  const wish = readWish(words);
  if (wish.help) print(HELP);
  else if (wish.preset !== null) print(wish.preset === '' ? exampleNames().map((name) => `${name}\n`).join('') : exampleText(wish.preset));
  else if (wish.plan === null) throw new CommandError(`no plan given\n\n${HELP}`, 2);
  else {
    const read = readPlan(readText(wish.plan));
    if ('problems' in read) throw refused(wish.plan, read.problems);
    if (read.old !== undefined) note(oldFileText(read.old));
    if (read.plan.model !== MODEL_REVISION) note(`written for model ${read.plan.model}, run with model ${MODEL_REVISION}: results may differ\n`);
    if (wish.ensemble !== null) printBands(read.plan, wish.ensemble, wish.json, { print, note });
    else {
      const trajectory = run(read.plan);
      const table = seasonTable(trajectory, wish.every, read.plan);
      print(wish.json ? jsonText(table, trajectory.summary) : csvText(table));
    }
  }
  return 0;
}

function printBands(plan: Plan, draws: number, json: boolean, { print, note }: Pick<SeasonSurroundings, 'print' | 'note'>): void {
  const spread = ensemble(plan, draws);
  for (const { draw, reason } of spread.failed) note(`draw ${draw + 1} of ${draws} could not be lived: ${reason}\n`);
  const table = bandTable(spread);
  print(json ? jsonText(table, { draws, failed: spread.failed }) : csvText(table));
}
