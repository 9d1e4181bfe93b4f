// What ties a lesson's parts together: builds that keep the fixed stages in order, marks that ascend, plans that can be run.
import { can } from '../catalogue/can';
import { buildPlan, idleBuild } from './buildPlan';
import type { Build, Lesson, MarkRule } from './lesson';
import { checkConsequence, checkMeasures } from './measureChecks';
import { checkPlan } from './planChecks';
import { describe, PROBLEMS_MAX } from './problems';
import type { Report } from './problems';
import type { Problem } from './problem';

/** All problems found, at most PROBLEMS_MAX; none means every listed build can be run. */
export function checkLesson(lesson: Lesson): Problem[] {
  const problems: Problem[] = [];
  const report: Report = (path, got, expected) => {
    problems.push({ path, got: describe(got), expected });
  };
  if (lesson.plan.rig !== null) report('plan.rig', lesson.plan.rig, { code: 'noRig' });
  problems.push(
    ...checkPlan(lesson.plan, { shelf: lesson.shelf }).map((problem) => ({
      ...problem,
      path: problem.path.startsWith('shelf') ? problem.path : `plan.${problem.path}`,
    })),
  );
  checkMarks(lesson, report);
  checkKeys(lesson, report);
  checkOffers(lesson, report);
  // Builds are checked against a sound lesson only: otherwise each fault would be told once more for every build.
  if (problems.length > 0) return problems.slice(0, PROBLEMS_MAX);
  problems.push(...checkBuild(lesson, lesson.reference, 'reference'));
  if (lesson.given !== undefined)
    problems.push(
      ...checkBuild(lesson, idleBuild(lesson), 'given').map((problem) => ({
        ...problem,
        path: problem.path.replace('given.order', 'given'),
      })),
    );
  lesson.mistakes.forEach((mistake, index) => {
    problems.push(...checkBuild(lesson, mistake, `mistakes[${index}]`));
    mistake.shows.forEach((consequence, at) => checkConsequence(lesson, mistake, consequence, `mistakes[${index}].shows[${at}]`, report));
  });
  if (problems.length === 0) checkMeasures(lesson, report);
  return problems.slice(0, PROBLEMS_MAX);
}

function checkMarks(lesson: Lesson, report: Report): void {
  lesson.scoring.marks.forEach((mark, index) => {
    const before = lesson.scoring.marks[index - 1];
    if (before === undefined) return;
    if (mark.fishHealth < before.fishHealth)
      report(`scoring.marks[${index}].fishHealth`, mark.fishHealth, { code: 'asMarkBefore', value: before.fishHealth });
    if (mark.harvest < before.harvest)
      report(`scoring.marks[${index}].harvest`, mark.harvest, { code: 'asMarkBefore', value: before.harvest });
    if (mark.fishHealth === before.fishHealth && mark.harvest === before.harvest && !asksMore(mark, before))
      report(`scoring.marks[${index}]`, mark, { code: 'higherMark' });
  });
}

/** Scores may stand still from mark to mark where the lesson's own goals ask for more. */
function asksMore(mark: MarkRule, before: MarkRule): boolean {
  return JSON.stringify(mark.goals ?? []) !== JSON.stringify(before.goals ?? []) || (mark.moves ?? Infinity) < (before.moves ?? Infinity);
}

/** Sizes and fish that the lesson offers belong to something that is there. */
function checkOffers(lesson: Lesson, report: Report): void {
  const stages = [...lesson.plan.loop, ...lesson.shelf, ...lesson.plan.side];
  lesson.sizes.forEach(({ stage: id, size, from, to }, index) => {
    const stage = stages.find((one) => one.id === id);
    if (stage === undefined) report(`sizes[${index}].stage`, id, { code: 'oneOf', names: stages.map((one) => one.id) });
    else if (size !== 'stand_m' && size !== 'count' && (stage as unknown as Record<string, unknown>)[size] === undefined)
      report(`sizes[${index}].size`, size, { code: 'sizeOf', stage: id });
    if (to <= from) report(`sizes[${index}].to`, to, { code: 'above', value: from });
  });
  lesson.stocks.forEach(({ tank }, index) => {
    if (!lesson.plan.loop.some((stage) => stage.id === tank && can(stage.kind, 'keepsFish')))
      report(`stocks[${index}].tank`, tank, { code: 'fishTankOfLoop' });
  });
}

function checkKeys(lesson: Lesson, report: Report): void {
  const seen = new Set<string>();
  lesson.mistakes.forEach((mistake, index) => {
    if (seen.has(mistake.key)) report(`mistakes[${index}].key`, mistake.key, { code: 'ownMistakeKey' });
    seen.add(mistake.key);
  });
}

function checkBuild(lesson: Lesson, build: Build, path: string): Problem[] {
  const problems: Problem[] = [];
  const fixed = lesson.plan.loop.map((stage) => stage.id);
  const known = new Set([...fixed, ...lesson.shelf.map((stage) => stage.id)]);
  build.order.forEach((id, index) => {
    if (!known.has(id))
      problems.push({ path: `${path}.order[${index}]`, got: describe(id), expected: { code: 'oneOf', names: [...known] } });
    else if (build.order.indexOf(id) < index)
      problems.push({ path: `${path}.order[${index}]`, got: describe(id), expected: { code: 'eachOnce' } });
  });
  const kept = build.order.filter((id, index) => fixed.includes(id) && build.order.indexOf(id) === index);
  if (kept.join() !== fixed.join()) {
    problems.push({
      path: `${path}.order`,
      got: kept.length === 0 ? { code: 'noFixedStages' } : { code: 'fixedStages', names: kept },
      expected: { code: 'fixedInOrder', names: fixed },
    });
  }
  const stages = [...lesson.plan.loop, ...lesson.shelf, ...lesson.plan.side];
  (build.sizes ?? []).forEach(({ stage: id }, index) => {
    if (!stages.some((stage) => stage.id === id))
      problems.push({
        path: `${path}.sizes[${index}].stage`,
        got: describe(id),
        expected: { code: 'oneOf', names: stages.map((stage) => stage.id) },
      });
  });
  (build.without ?? []).forEach((id, index) => {
    if (!lesson.plan.side.some((side) => side.id === id))
      problems.push({
        path: `${path}.without[${index}]`,
        got: describe(id),
        expected: { code: 'sideOfLesson', names: lesson.plan.side.map((side) => side.id) },
      });
  });
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
