// What ties measures, predictions and demonstrations to their lesson: stages that stand there, days within the season, choices that cover
// all numbers once.
import { buildKeys, buildOf } from './buildPlan';
import type { Build, Choice, Consequence, Demonstration, Lesson, Measure, Prediction, Statement } from './lesson';
import type { Report } from './problems';

/** Ids of the stages that a build has. */
function standing(lesson: Lesson, build: Build): string[] {
  return [...build.order, ...lesson.plan.side.map((side) => side.id).filter((id) => !(build.without ?? []).includes(id))];
}

function checkMeasure(lesson: Lesson, builds: readonly Build[], asked: Measure, path: string, report: Report): void {
  const kinds = [asked.variable, asked.process, asked.score].filter((one) => one !== undefined);
  if (kinds.length !== 1) {
    report(path, asked, { code: 'oneMeasure' });
    return;
  }
  if (asked.score === undefined && asked.stage === undefined) report(`${path}.stage`, undefined, { code: 'stageToRead' });
  else if (asked.stage !== undefined && builds.some((build) => !standing(lesson, build).includes(asked.stage ?? '')))
    report(`${path}.stage`, asked.stage, { code: builds.length > 1 ? 'stageInBoth' : 'stageInReference' });
  const { days } = lesson.plan;
  if (asked.fromDay >= days) report(`${path}.fromDay`, asked.fromDay, { code: 'dayInSeason', days });
  if (asked.toDay !== undefined && (asked.toDay <= asked.fromDay || asked.toDay > days))
    report(`${path}.toDay`, asked.toDay, { code: 'dayAfter', day: asked.fromDay, days });
}

function checkLimits(
  stated: Statement & { atLeastTimes?: number; atMostTimes?: number },
  keys: readonly ('atLeast' | 'atMost' | 'atLeastTimes' | 'atMostTimes')[],
  path: string,
  report: Report,
): void {
  if (keys.every((key) => stated[key] === undefined)) report(path, stated, { code: keys.length > 2 ? 'limitsOrTimes' : 'limits' });
}

/** Bands from the lowest to the highest: the first open below, the last open above, each beginning where the one before ends. */
function checkChoices(choices: readonly Choice[], path: string, report: Report): void {
  choices.forEach((choice, index) => {
    const before = choices[index - 1] as Choice | undefined;
    if (choices.findIndex((other) => other.key === choice.key) < index)
      report(`${path}[${index}].key`, choice.key, { code: 'ownChoiceKey' });
    if (before === undefined && choice.atLeast !== undefined) report(`${path}[0].atLeast`, choice.atLeast, { code: 'openBelow' });
    if (before !== undefined && (choice.atLeast === undefined || choice.atLeast !== before.below))
      report(
        `${path}[${index}].atLeast`,
        choice.atLeast,
        before.below === undefined ? { code: 'beginsWhereEnds' } : { code: 'beginsAt', value: before.below },
      );
    const last = index === choices.length - 1;
    if (last && choice.below !== undefined) report(`${path}[${index}].below`, choice.below, { code: 'openAbove' });
    if (!last && (choice.below === undefined || choice.below <= (choice.atLeast ?? -Infinity)))
      report(`${path}[${index}].below`, choice.below, { code: 'aboveAtLeast' });
  });
}

function checkPrediction(lesson: Lesson, prediction: Prediction, path: string, report: Report): void {
  const { days } = lesson.plan;
  if (prediction.dueDay <= prediction.askDay || prediction.dueDay > days)
    report(`${path}.dueDay`, prediction.dueDay, { code: 'dayAfterAsking', day: prediction.askDay, days });
  if (!standing(lesson, lesson.reference).includes(prediction.look)) report(`${path}.look`, prediction.look, { code: 'stageInReference' });
  checkMeasure(lesson, [lesson.reference], prediction.measure, `${path}.measure`, report);
  checkChoices(prediction.choices, `${path}.choices`, report);
  prediction.explanations.forEach((one, index) => {
    checkMeasure(lesson, [lesson.reference], one.evidence, `${path}.explanations[${index}].evidence`, report);
    checkLimits(one.evidence, ['atLeast', 'atMost'], `${path}.explanations[${index}].evidence`, report);
  });
}

function checkDemonstration(lesson: Lesson, shown: Demonstration, path: string, report: Report): void {
  const builds = [shown.left, shown.right]
    .map((key, index) => {
      const build = buildOf(lesson, key);
      if (build === undefined) report(`${path}.${index === 0 ? 'left' : 'right'}`, key, { code: 'oneOf', names: buildKeys(lesson) });
      return build;
    })
    .filter((build) => build !== undefined);
  if (builds.length < 2) return;
  checkMeasure(lesson, builds, shown.measure, `${path}.measure`, report);
  checkMeasure(lesson, builds, { stage: shown.look, variable: 'T_C', statistic: 'mean', fromDay: 0 }, `${path}.look`, report);
  checkChoices(shown.choices, `${path}.choices`, report);
  shown.turningPoints.forEach((moment, index) => {
    if (moment.day >= lesson.plan.days)
      report(`${path}.turningPoints[${index}].day`, moment.day, { code: 'dayInSeason', days: lesson.plan.days });
  });
}

/** A consequence: its measure in both loops, and something asked of it. */
export function checkConsequence(lesson: Lesson, mistake: Build, shown: Consequence, path: string, report: Report): void {
  checkMeasure(lesson, [mistake, lesson.reference], shown, path, report);
  checkLimits(shown, ['atLeastTimes', 'atMostTimes', 'atLeast', 'atMost'], path, report);
}

/** Goals, predictions and demonstrations of a lesson whose builds are sound. */
export function checkMeasures(lesson: Lesson, report: Report): void {
  lesson.scoring.marks.forEach((mark, index) =>
    (mark.goals ?? []).forEach((goal, at) => {
      checkMeasure(lesson, [lesson.reference], goal, `scoring.marks[${index}].goals[${at}]`, report);
      checkLimits(goal, ['atLeast', 'atMost'], `scoring.marks[${index}].goals[${at}]`, report);
    }),
  );
  lesson.predictions.forEach((prediction, index) => {
    if (lesson.predictions.findIndex((other) => other.key === prediction.key) < index)
      report(`predictions[${index}].key`, prediction.key, { code: 'ownPredictionKey' });
    checkPrediction(lesson, prediction, `predictions[${index}]`, report);
  });
  lesson.demonstrations.forEach((shown, index) => {
    if (lesson.demonstrations.findIndex((other) => other.key === shown.key) < index)
      report(`demonstrations[${index}].key`, shown.key, { code: 'ownDemonstrationKey' });
    checkDemonstration(lesson, shown, `demonstrations[${index}]`, report);
  });
}
