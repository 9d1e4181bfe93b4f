// What the lesson command does: checks a lesson file, then plays its reference, its mistakes and an idle player.
import { buildKeys, buildOf, buildPlan } from '../lessons/buildPlan';
import type { Build, Lesson } from '../lessons/lesson';
import { playLesson } from '../lessons/playLesson';
import { readLesson } from '../lessons/readLesson';
import type { Plan } from '../season/plan';
import type { Trajectory } from '../season/trajectory';
import { readCommandLine } from './commandLine';
import { CommandError, oldFileText, readText, refused } from './planText';
import { playedText } from './playedText';

const HELP = `Checks a lesson file and plays it.

  npm run -s lesson -- levels/NN-name.json               (or - for standard input)
  npm run -s lesson -- levels/NN-name.json --plan KEY    prints the plan of the reference or of a mistake instead

Exit code 0: the reference earns three marks, every listed mistake shows its consequences, an idle player earns no mark;
1: something of that fails, or the file cannot be used; 2: the command cannot be understood.
`;

function buildNamed(lesson: Lesson, key: string): Build {
  const build = buildOf(lesson, key);
  if (build === undefined) throw new CommandError(`--plan: got ${key || 'nothing'}; expected one of ${buildKeys(lesson).join(', ')}`, 2);
  return build;
}

/** Where the command writes, and the engine it runs. */
export interface LessonSurroundings { print: (text: string) => void; note: (text: string) => void; run: (plan: Plan) => Trajectory }

/** Runs the command and returns its exit code. */
export function lessonCommand(words: readonly string[], { print, note, run }: LessonSurroundings): number {
  const { flags, rest } = readCommandLine(words, { plan: 'text', help: 'flag' });
  if (flags.help) {
    print(HELP);
    return 0;
  }
  const [file, ...more] = rest.map(({ word }) => word);
  if (file === undefined || more.length > 0) throw new CommandError(`got "${words.join(' ')}"; expected one lesson file\n\n${HELP}`, 2);
  const read = readLesson(readText(file));
  if ('problems' in read) throw refused(file, read.problems);
  if (read.old !== undefined) note(oldFileText(read.old));
  if (flags.plan) {
    print(`${JSON.stringify(buildPlan(read.lesson, buildNamed(read.lesson, flags.plan.value)), null, 2)}\n`);
    return 0;
  }
  const played = playLesson(read.lesson, run);
  print(`${read.lesson.title}\n${playedText(played)}`);
  return played.every((one) => one.passes) ? 0 : 1;
}
