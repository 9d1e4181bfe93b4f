// What the season command does: runs a plan and prints its table.
import { readPlan } from '../lessons/readPlan';
import { MODEL_REVISION } from '../season/plan';
import { ensemble } from '../season/ensemble';
import type { Plan } from '../season/plan';
import type { Trajectory } from '../season/trajectory';
import { CommandError, exampleNames, exampleText, oldFileText, readText, refused } from './planText';
import { bandTable } from './bandTable';
import { seasonTable } from './seasonTable';
import type { Every } from './seasonTable';
import { csvText, jsonText } from './tableText';
import { say } from '../words/say';

/** What the command understands, beside the name of a plan and --help. */
const OPTIONS = ['--every', '--csv', '--json', '--ensemble', '--preset'];

/** A value that an option cannot take. */
function refusedValue(option: string, got: string | undefined, expected: string): CommandError {
  return new CommandError(got === undefined ? say('command.gotNothingFor', { option, expected }) : say('command.gotFor', { option, got, expected }), 2);
}

interface Wish { plan: string | null; every: Every; json: boolean; preset: string | null; ensemble: number | null; help: boolean }

/** Reads the command line; throws a CommandError with exit code 2 where it makes no sense. */
export function readWish(words: readonly string[]): Wish {
  const wish: Wish = { plan: null, every: 'day', json: false, preset: null, ensemble: null, help: false };
  for (let at = 0; at < words.length; at += 1) {
    const word = words[at];
    if (word === '--help' || word === '-h') wish.help = true;
    else if (word === '--csv') wish.json = false;
    else if (word === '--json') wish.json = true;
    else if (word === '--every' || word.startsWith('--every=')) {
      const value = word === '--every' ? words[(at += 1)] : word.slice('--every='.length);
      if (value !== 'day' && value !== 'hour') throw refusedValue('--every', value, say('command.every'));
      wish.every = value;
    } else if (word === '--ensemble' || word.startsWith('--ensemble=')) {
      const value = word === '--ensemble' ? words[(at += 1)] : word.slice('--ensemble='.length);
      if (!/^[1-9]\d{0,3}$/.test(value ?? '')) throw refusedValue('--ensemble', value, say('command.draws'));
      wish.ensemble = Number(value);
    } else if (word === '--preset' || word.startsWith('--preset=')) {
      const next = words[at + 1];
      const follows = word === '--preset' && next !== undefined && !next.startsWith('-');
      wish.preset = follows ? next : word.slice('--preset='.length);
      if (follows) at += 1;
    } else if (word.startsWith('-') && word !== '-') throw new CommandError(say('command.option', { got: word, names: OPTIONS }), 2);
    else if (wish.plan !== null) throw new CommandError(say('command.onePlan', { got: word, plan: wish.plan }), 2);
    else wish.plan = word;
  }
  return wish;
}

/** Where the command writes, and the engine it runs. */
export interface SeasonSurroundings { print: (text: string) => void; note: (text: string) => void; run: (plan: Plan) => Trajectory }

/** Runs the command and returns its exit code. */
export function seasonCommand(words: readonly string[], { print, note, run }: SeasonSurroundings): number {
  const wish = readWish(words);
  if (wish.help) print(say('command.seasonHelp'));
  else if (wish.preset !== null) print(wish.preset === '' ? exampleNames().map((name) => `${name}\n`).join('') : exampleText(wish.preset));
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
  for (const { draw, reason } of spread.failed) note(`${say('command.drawFailed', { draw: draw + 1, draws, reason })}\n`);
  const table = bandTable(spread);
  print(json ? jsonText(table, { draws, failed: spread.failed }) : csvText(table));
}
