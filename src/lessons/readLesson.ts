// The gate for lesson files: text in, a lesson whose every build can be run or the list of what is wrong out. Never throws.
import { parseJson } from './jsonText';
import type { Build, Lesson, Mistake } from './lesson';
import type { Problem } from './problem';
import { checkLesson } from './lessonChecks';
import { lessonSchema } from './lessonSchema';
import { minutesOf } from './minutes';
import type { OldFile } from './oldFormats';
import { asWritten, lessonOfToday } from './oldFormats';
import { problemsOf } from './problems';
import { quantiseAction, quantiseStage } from './quantise';
import { complete, unresolved } from './readPlan';
import { inOneLanguage, USUAL_LANGUAGE } from './texts';

/**
 * @param language tag of the language whose texts are wanted, where a file has several. `old`: the file was of an older format, and what
 * was changed in it.
 */
export function readLesson(text: string, language = USUAL_LANGUAGE): { lesson: Lesson; old?: OldFile } | { problems: Problem[] } {
  const parsed = parseJson(text);
  if ('problems' in parsed) return parsed;
  const { value, old } = lessonOfToday(parsed.value);
  const shape = lessonSchema.safeParse(value);
  if (!shape.success) return { problems: asWritten(problemsOf(shape.error, value), old) };
  const read = { ...inOneLanguage(shape.data, language) };
  delete read.$schema;
  const stepped = <B extends Build>(build: B): B => ({ ...build, actions: build.actions.map(quantiseAction) });
  const built = {
    ...read,
    plan: complete(read.plan),
    shelf: read.shelf.map(quantiseStage),
    reference: stepped(read.reference),
    mistakes: read.mistakes.map(stepped<Mistake>),
  };
  const lesson: Lesson = { ...built, minutes: read.minutes ?? minutesOf(built) };
  const problems = [
    ...unresolved(shape.data.plan).map((problem) => ({ ...problem, path: `plan.${problem.path}` })),
    ...checkLesson(lesson),
  ];
  if (problems.length > 0) return { problems: asWritten(problems, old) };
  return old === undefined ? { lesson } : { lesson, old };
}
