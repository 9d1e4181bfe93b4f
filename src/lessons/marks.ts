// From a season's scores to a lesson's result: harvest weighed as the lesson says, and none to three marks.
import { harvestScore } from '../season/scoring';
import type { Scores } from '../season/trajectory';
import type { Lesson } from './lesson';

type Scoring = Pick<Lesson, 'scoring'>;

/** Harvest 0–100 with the lesson's weight w: 100 × (w · plants/plants* + (1−w) · gain/gain*). */
export function harvestFor(scores: Pick<Scores, 'plants_kg' | 'plantsIdeal_kg' | 'gain_kg' | 'gainIdeal_kg'>, lesson: Scoring): number {
  return harvestScore(scores, lesson.scoring.plantsWeight);
}

/** Marks earned, 0–3: the highest whose two thresholds are both reached. */
export function marksFor(scores: Scores, lesson: Scoring): number {
  const harvest = harvestFor(scores, lesson);
  return lesson.scoring.marks.reduce((earned, mark, index) => (scores.fishHealth >= mark.fishHealth && harvest >= mark.harvest ? index + 1 : earned), 0);
}
