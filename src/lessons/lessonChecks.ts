// What ties a lesson's parts together: builds that keep the fixed stages in order, marks that ascend, plans that can be run.
import { buildPlan } from './buildPlan';
import type { Build, Consequence, Lesson, Problem } from './lesson';
import { checkPlan } from './planChecks';
import { describe, PROBLEMS_MAX } from './problems';

type Report = (path: string, got: unknown, expected: string) => void;

/** All problems found, at most PROBLEMS_MAX; none means every listed build can be run. */
export function checkLesson(lesson: Lesson): Problem[] {
  const problems: Problem[] = [];
  const report: Report = (path, got, expected) => {
    problems.push({ path, got: describe(got), expected });
  };
  if (lesson.plan.rig !== null) report('plan.rig', lesson.plan.rig, 'null: a lesson plays a loop');
  problems.push(...checkPlan(lesson.plan, { shelf: lesson.shelf }).map((problem) => ({ ...problem, path: problem.path.startsWith('shelf') ? problem.path : `plan.${problem.path}` })));
  checkMarks(lesson, report);
  checkKeys(lesson, report);
  // Builds are checked against a sound lesson only: otherwise each fault would be told once more for every build.
  if (problems.length > 0) return problems.slice(0, PROBLEMS_MAX);
  problems.push(...checkBuild(lesson, lesson.reference, 'reference'));
  lesson.mistakes.forEach((mistake, index) => {
    problems.push(...checkBuild(lesson, mistake, `mistakes[${index}]`));
    mistake.shows.forEach((consequence, at) => checkConsequence(lesson, mistake, consequence, `mistakes[${index}].shows[${at}]`, report));
  });
  return problems.slice(0, PROBLEMS_MAX);
}

function checkMarks(lesson: Lesson, report: Report): void {
  lesson.scoring.marks.forEach((mark, index) => {
    const before = lesson.scoring.marks[index - 1];
    if (before === undefined) return;
    if (mark.fishHealth < before.fishHealth) report(`scoring.marks[${index}].fishHealth`, mark.fishHealth, `at least ${before.fishHealth}, as the mark before`);
    if (mark.harvest < before.harvest) report(`scoring.marks[${index}].harvest`, mark.harvest, `at least ${before.harvest}, as the mark before`);
    if (mark.fishHealth === before.fishHealth && mark.harvest === before.harvest) report(`scoring.marks[${index}]`, mark, 'a threshold higher than the mark before');
  });
}

function checkKeys(lesson: Lesson, report: Report): void {
  const seen = new Set<string>();
  lesson.mistakes.forEach((mistake, index) => {
    if (seen.has(mistake.key)) report(`mistakes[${index}].key`, mistake.key, 'a key no other mistake has');
    seen.add(mistake.key);
  });
}

function checkBuild(lesson: Lesson, build: Build, path: string): Problem[] {
  const problems: Problem[] = [];
  const fixed = lesson.plan.loop.map((stage) => stage.id);
  const known = new Set([...fixed, ...lesson.shelf.map((stage) => stage.id)]);
  build.order.forEach((id, index) => {
    if (!known.has(id)) problems.push({ path: `${path}.order[${index}]`, got: describe(id), expected: `one of ${[...known].join(', ')}` });
    else if (build.order.indexOf(id) < index) problems.push({ path: `${path}.order[${index}]`, got: describe(id), expected: 'each stage once' });
  });
  const kept = build.order.filter((id, index) => fixed.includes(id) && build.order.indexOf(id) === index);
  if (kept.join() !== fixed.join()) {
    problems.push({ path: `${path}.order`, got: kept.length === 0 ? 'none of the fixed stages' : `the fixed stages ${kept.join(', ')}`, expected: `all fixed stages in this order: ${fixed.join(', ')}` });
  }
  if (problems.length > 0) return problems;
  const own = lesson.plan.actions.length;
  return checkPlan(buildPlan(lesson, build)).map((problem) => ({ ...problem, path: placeInBuild(problem.path, path, own) }));
}

/** A plan's path as the lesson file has it: the build's actions follow the lesson's own. */
function placeInBuild(path: string, build: string, own: number): string {
  const action = /^actions\[(\d+)\](.*)$/.exec(path);
  if (action !== null) {
    const index = Number(action[1]);
    return index < own ? `plan.${path}` : `${build}.actions[${index - own}]${action[2]}`;
  }
  return path.startsWith('loop') ? `${build}.order` : `plan.${path}`;
}

function checkConsequence(lesson: Lesson, mistake: Build, shown: Consequence, path: string, report: Report): void {
  const side = lesson.plan.side.map((stage) => stage.id);
  const inBoth = (id: string): boolean => side.includes(id) || (mistake.order.includes(id) && lesson.reference.order.includes(id));
  if (!inBoth(shown.stage)) report(`${path}.stage`, shown.stage, 'a stage that stands both in this loop and in the reference, to compare');
  if (shown.fromDay >= lesson.plan.days) report(`${path}.fromDay`, shown.fromDay, `a day before the season ends (${lesson.plan.days} days)`);
  if (shown.atLeastTimes === undefined && shown.atMostTimes === undefined) report(path, shown, 'atLeastTimes or atMostTimes, against the reference');
}
