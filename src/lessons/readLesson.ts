// The gate for lesson files: text in, a lesson whose every build can be run or the list of what is wrong out. Never throws.
import { parseJson } from './jsonText';
import type { Build, Lesson, Mistake } from './lesson';
import type { Problem } from './problem';
import { checkLesson } from './lessonChecks';
import { lessonSchema } from './lessonSchema';
import { minutesOf } from './minutes';
import { problemsOf } from './problems';
import { quantiseAction, quantiseStage } from './quantise';
import { complete, unresolved } from './readPlan';

export function readLesson(text: string): { lesson: Lesson } | { problems: Problem[] } {
  const parsed = parseJson(text);
  if ('problems' in parsed) return parsed;
  const shape = lessonSchema.safeParse(parsed.value);
  if (!shape.success) return { problems: problemsOf(shape.error, parsed.value) };
  const read = { ...shape.data };
  delete read.$schema;
  const stepped = <B extends Build>(build: B): B => ({ ...build, actions: build.actions.map(quantiseAction) });
  const built = {
    ...read, plan: complete(read.plan), shelf: read.shelf.map(quantiseStage), reference: stepped(read.reference), mistakes: read.mistakes.map(stepped<Mistake>),
  };
  const lesson: Lesson = { ...built, minutes: read.minutes ?? minutesOf(built) };
  const problems = [...unresolved(shape.data.plan).map((problem) => ({ ...problem, path: `plan.${problem.path}` })), ...checkLesson(lesson)];
  return problems.length > 0 ? { problems } : { lesson };
}
