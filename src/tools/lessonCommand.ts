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
import { say } from '../words/say';

function buildNamed(lesson: Lesson, key: string): Build {
  const build = buildOf(lesson, key);
  if (build === undefined) {
    const expected = say('command.oneOf', { names: buildKeys(lesson) });
    throw new CommandError(
      key === ''
        ? say('command.gotNothingFor', { option: '--plan', expected })
        : say('command.gotFor', { option: '--plan', got: key, expected }),
      2,
    );
  }
  return build;
}

/** Where the command writes, and the engine it runs. */
export interface LessonSurroundings {
  print: (text: string) => void;
  note: (text: string) => void;
  run: (plan: Plan) => Trajectory;
}

/** Runs the command and returns its exit code. */
export function lessonCommand(words: readonly string[], { print, note, run }: LessonSurroundings): number {
  const { flags, rest } = readCommandLine(words, { plan: 'text' });
  if (flags.help) {
    print(say('command.lessonHelp'));
    return 0;
  }
  const [file, ...more] = rest.map(({ word }) => word);
  if (file === undefined || more.length > 0) {
    throw new CommandError(`${say('command.oneLesson', { got: words.join(' ') })}\n\n${say('command.lessonHelp')}`, 2);
  }
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
