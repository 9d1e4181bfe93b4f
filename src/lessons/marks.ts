// From a season's scores to a lesson's result: harvest weighed as the lesson says, goals measured, and none to three marks.
import { harvestScore } from '../season/scoring';
import type { Scores } from '../season/trajectory';
import { givenOrder } from './buildPlan';
import type { Goal, Lesson } from './lesson';
import { holds, measure } from './measure';
import type { Lived } from './measure';
import { movesBetween } from './moves';

type Scoring = Pick<Lesson, 'scoring'>;

/** Harvest 0–100 with the lesson's weight w: 100 × (w · plants/plants* + (1−w) · gain/gain*). */
export function harvestFor(scores: Pick<Scores, 'plants_kg' | 'plantsIdeal_kg' | 'gain_kg' | 'gainIdeal_kg'>, lesson: Scoring): number {
  return harvestScore(scores, lesson.scoring.plantsWeight);
}

export interface GoalMet {
  goal: Goal;
  value: number;
  met: boolean;
}
/** One mark and what it asked for. moves is null where the mark does not count them. */
export interface MarkMet {
  fishHealth: boolean;
  harvest: boolean;
  goals: GoalMet[];
  moves: { made: number; met: boolean } | null;
  earned: boolean;
}

/** What each mark asks for and whether the season met it. A mark is earned with all those below it. */
export function marksMet(
  scores: Scores,
  lived: Lived,
  order: readonly string[],
  lesson: Pick<Lesson, 'scoring' | 'given' | 'plan'>,
): MarkMet[] {
  const harvest = harvestFor(scores, lesson);
  const made = movesBetween(givenOrder(lesson), order);
  let soFar = true;
  return lesson.scoring.marks.map((mark) => {
    const goals = (mark.goals ?? []).map((goal) => {
      const value = measure(lived, goal);
      return { goal, value, met: holds(value, goal) };
    });
    const moves = mark.moves === undefined ? null : { made, met: made <= mark.moves };
    const met = { fishHealth: scores.fishHealth >= mark.fishHealth, harvest: harvest >= mark.harvest };
    soFar = soFar && met.fishHealth && met.harvest && goals.every((goal) => goal.met) && (moves?.met ?? true);
    return { ...met, goals, moves, earned: soFar };
  });
}

/** Marks earned, 0–3. */
export function marksFor(
  scores: Scores,
  lived: Lived,
  order: readonly string[],
  lesson: Pick<Lesson, 'scoring' | 'given' | 'plan'>,
): number {
  return marksMet(scores, lived, order, lesson).filter((mark) => mark.earned).length;
}
