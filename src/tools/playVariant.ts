// Plays one variant of a loop and brings home what the table of sequences tells: scores and marks, and what the engine recorded of trouble.
import { can } from '../catalogue/can';
import { checkPlan } from '../lessons/planChecks';
import type { Lesson } from '../lessons/lesson';
import { marksFor } from '../lessons/marks';
import { checkDesign } from '../season/designCheck';
import type { Design } from '../season/design';
import type { Plan } from '../season/plan';
import { harvestScore } from '../season/scoring';
import { stageCourse } from '../season/stageReading';
import type { EventKind, Scores, Trajectory, Variable } from '../season/trajectory';
import { troubleHours } from '../season/troubleHours';
import type { TroubleHours } from '../season/troubleHours';
import { liveVariant } from '../season/variants';
import { faultWords } from '../words/faultWords';
import { problemText } from '../words/problemWords';

/** What all variants have in common. lesson: null where a plan is its own reference. */
export interface Ground {
  lesson: Pick<Lesson, 'scoring' | 'given' | 'plan'> | null;
  plantsWeight: number;
}

export interface Result {
  fishHealth: number;
  harvest: number;
  /** points of harvest short of all that plants and fish could have brought */
  short: { plants: number; gain: number };
  marks: number | null;
  work_h: number;
  /** hours lived */
  hours: number;
}
/** What went wrong with water and parts: kinds of event with the day of the first. */
export interface Mishap {
  kind: EventKind;
  stage: string;
  day: number;
}
/** The mean over the season of what plants or fish answer to. */
export interface Standing {
  stage: string;
  variable: Variable;
  mean: number;
}
/** A variant as it was played, or why it could not be: a code with its words. */
export interface Outcome {
  result: Result | null;
  refused: { code: string; words: string } | null;
  design: Design['problems'];
  mishaps: Mishap[];
  standings: Standing[];
  troubles: TroubleHours[];
}

/** Events that are harm to the loop itself. */
const MISHAPS: ReadonlySet<EventKind> = new Set<EventKind>(['pumpDry', 'spilled', 'filterBlocked', 'sludgeFull', 'powerOff']);

const refusedBy = (code: string, words: string): Outcome => ({
  result: null,
  refused: { code, words },
  design: [],
  mishaps: [],
  standings: [],
  troubles: [],
});

/** What leaves grow by, and what fish grow by. */
const OF_BEDS: readonly Variable[] = ['rootHealth', 'leafStore'];
const OF_FISH: readonly Variable[] = ['eaten_g_d'];

function standingsOf(trajectory: Trajectory): Standing[] {
  return trajectory.stages.flatMap(({ id, kind, cells }) => {
    const variables = cells === 0 ? [] : can(kind, 'grows') ? OF_BEDS : can(kind, 'keepsFish') ? OF_FISH : [];
    return variables.map((variable) => {
      const course = stageCourse(trajectory, id, variable, 0);
      return { stage: id, variable, mean: course.reduce((sum, value) => sum + value, 0) / Math.max(1, course.length) };
    });
  });
}

function resultOf(scores: Scores, plantsWeight: number): Omit<Result, 'marks' | 'hours'> {
  const none = { plants_kg: 0, plantsIdeal_kg: 0, gain_kg: 0, gainIdeal_kg: 0 };
  const { plants_kg, plantsIdeal_kg, gain_kg, gainIdeal_kg } = scores;
  return {
    fishHealth: scores.fishHealth,
    harvest: harvestScore(scores, plantsWeight),
    short: {
      plants: 100 * plantsWeight - harvestScore({ ...none, plants_kg, plantsIdeal_kg }, plantsWeight),
      gain: 100 * (1 - plantsWeight) - harvestScore({ ...none, gain_kg, gainIdeal_kg }, plantsWeight),
    },
    work_h: scores.work_h,
  };
}

/** Never throws for what a variant is: a plan that the gate refuses and a season that cannot be lived are told. */
export function playVariant({ lesson, plantsWeight }: Ground, plan: Plan): Outcome {
  const [problem] = checkPlan(plan);
  if (problem !== undefined) return refusedBy(problem.expected.code, problemText(problem));
  const lived = liveVariant(plan, plantsWeight);
  if ('fault' in lived) return refusedBy(lived.fault.code, faultWords(lived.fault));
  const { trajectory } = lived;
  const { scores } = trajectory.summary;
  const order = plan.loop.map((stage) => stage.id);
  const mishaps = new Map<string, Mishap>();
  for (const { kind, stage, hour } of trajectory.days.flatMap((chunk) => chunk.events))
    if (MISHAPS.has(kind) && !mishaps.has(`${kind} ${stage}`)) mishaps.set(`${kind} ${stage}`, { kind, stage, day: Math.floor(hour / 24) });
  return {
    result: {
      ...resultOf(scores, plantsWeight),
      marks: lesson === null ? null : marksFor(scores, trajectory, order, lesson),
      hours: 24 * trajectory.days.length,
    },
    refused: null,
    design: checkDesign(plan).problems,
    mishaps: [...mishaps.values()],
    standings: standingsOf(trajectory),
    troubles: troubleHours(plan, trajectory),
  };
}
