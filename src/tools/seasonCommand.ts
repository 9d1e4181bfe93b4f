// What the season command does: runs a plan and prints its table.
import { readPlan } from '../lessons/readPlan';
import { MODEL_REVISION } from '../season/plan';
import { ensemble } from '../season/ensemble';
import type { Plan } from '../season/plan';
import type { Trajectory } from '../season/trajectory';
import { faultWords } from '../words/faultWords';
import { readCommandLine } from './commandLine';
import { CommandError, exampleNames, exampleText, oldFileText, readText, refused } from './planText';
import { bandTable } from './bandTable';
import { seasonTable } from './seasonTable';
import type { Every } from './seasonTable';
import { csvText, jsonText } from './tableText';
import { say } from '../words/say';

/** What the command understands, beside the name of a plan and --help. */
/** A value that an option cannot take. */
function refusedValue(option: string, got: string | undefined, expected: string): CommandError {
  return new CommandError(
    got === undefined ? say('command.gotNothingFor', { option, expected }) : say('command.gotFor', { option, got, expected }),
    2,
  );
}

interface Wish {
  plan: string | null;
  every: Every;
  json: boolean;
  preset: string | null;
  ensemble: number | null;
  help: boolean;
}

const FLAGS = { every: 'text', csv: 'flag', json: 'flag', ensemble: 'text', preset: 'flag' } as const;

/** Reads the command line; throws a CommandError with exit code 2 where it makes no sense. */
export function readWish(words: readonly string[]): Wish {
  const { flags, rest } = readCommandLine(words, FLAGS);
  const every = flags.every?.value ?? 'day';
  if (every !== 'day' && every !== 'hour') throw refusedValue('--every', every || undefined, say('command.every'));
  const draws = flags.ensemble?.value;
  if (draws !== undefined && !/^[1-9]\d{0,3}$/.test(draws)) throw refusedValue('--ensemble', draws || undefined, say('command.draws'));
  // The name of an example may follow its flag as a word of its own.
  const { preset } = flags;
  const named = preset?.value === '' ? rest.find(({ word, at }) => at === preset.at + 1 && !word.startsWith('-')) : undefined;
  const [plan, more] = rest.filter((one) => one !== named).map(({ word }) => word);
  if (more !== undefined) throw new CommandError(say('command.onePlan', { got: more, plan }), 2);
  return {
    plan: plan ?? null,
    every,
    json: (flags.json?.at ?? -1) > (flags.csv?.at ?? -1),
    preset: preset ? (named?.word ?? preset.value) : null,
    ensemble: draws === undefined ? null : Number(draws),
    help: flags.help !== undefined,
  };
}

/** Where the command writes, and the engine it runs. */
export interface SeasonSurroundings {
  print: (text: string) => void;
  note: (text: string) => void;
  run: (plan: Plan) => Trajectory;
}

/** Runs the command and returns its exit code. */
export function seasonCommand(words: readonly string[], { print, note, run }: SeasonSurroundings): number {
  const wish = readWish(words);
  if (wish.help) print(say('command.seasonHelp'));
  else if (wish.preset !== null)
    print(
      wish.preset === ''
        ? exampleNames()
            .map((name) => `${name}\n`)
            .join('')
        : exampleText(wish.preset),
    );
  else if (wish.plan === null) throw new CommandError(`${say('command.noPlan')}\n\n${say('command.seasonHelp')}`, 2);
  else {
    const read = readPlan(readText(wish.plan));
    if ('problems' in read) throw refused(wish.plan, read.problems);
    if (read.old !== undefined) note(oldFileText(read.old));
    if (read.plan.model !== MODEL_REVISION) note(`${say('command.otherModel', { written: read.plan.model, now: MODEL_REVISION })}\n`);
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
  for (const { draw, reason, fault } of spread.failed)
    note(`${say('command.drawFailed', { draw: draw + 1, draws, reason: fault ? faultWords(fault) : reason })}\n`);
  const table = bandTable(spread);
  print(json ? jsonText(table, { draws, failed: spread.failed }) : csvText(table));
}
