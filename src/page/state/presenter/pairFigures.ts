// The two large numbers under each of two loops shown side by side: what the question is about, and what else parts them most. Pure.
import type { Measure } from '../../../lessons/lesson';
import type { Plan } from '../../../season/plan';
import type { Scores } from '../../../season/trajectory';
import { TINTS } from '../common/tints';
import { fishTankOf } from '../build/planEdits';
import { readingAt } from '../run/readings';
import { scoresAt } from '../common/selectors';
import type { TintId, SeasonView } from '../common/state';

/** A number of a season at any moment: variables of a stage (summed), or a score as it accrues. */
export type Figure =
  { kind: 'reading'; name: string; variables: readonly string[]; stage: string } | { kind: 'score'; score: keyof Scores };

/** The number at a moment; NaN where there is none yet. */
export function figureAt(figure: Figure, view: SeasonView, now_h: number): number {
  if (figure.kind === 'score') return scoresAt(view, now_h)?.[figure.score] ?? NaN;
  return figure.variables.reduce((sum, variable) => sum + readingAt(view, figure.stage, variable, now_h, 'inside'), 0);
}

/** How far a number parts two seasons at their ends: 0 for not at all. */
function apart(figure: Figure, seasons: readonly [SeasonView, SeasonView]): number {
  const [left, right] = seasons.map((view) => figureAt(figure, view, view.days.length * 24));
  if (!(left > 0) || !(right > 0)) return left === right ? 0 : Infinity;
  return Math.abs(Math.log(right / left));
}

/** Fish alive, the health of the fish and the harvest: one of them shows what a difference meant to the living. */
function lives(plan: Plan, seasons: readonly [SeasonView, SeasonView]): Figure {
  const tank = fishTankOf(plan);
  const fish: Figure[] =
    tank === null || plan.fish.length === 0
      ? []
      : [
          { kind: 'reading', name: 'number', variables: ['number'], stage: tank },
          { kind: 'score', score: 'fishHealth' },
        ];
  const all: Figure[] = [...fish, { kind: 'score', score: 'plants_kg' }];
  return all.reduce((best, one) => (Number.isNaN(apart(one, seasons)) || apart(one, seasons) <= apart(best, seasons) ? best : one));
}

/** @param look the stage that the eyes are led to */
export function figuresOf(shown: {
  measure: Measure;
  tint: TintId;
  look: string;
  plan: Plan;
  seasons: readonly [SeasonView, SeasonView];
}): [Figure, Figure] {
  const { measure, look, plan, seasons } = shown;
  const tint = TINTS[shown.tint];
  const coloured: Figure = { kind: 'reading', name: tint.judged[0], variables: tint.variables, stage: look };
  const asked: Figure =
    measure.score !== undefined
      ? { kind: 'score', score: measure.score }
      : measure.variable !== undefined
        ? { kind: 'reading', name: measure.variable, variables: [measure.variable], stage: measure.stage ?? look }
        : coloured;
  const same = asked.kind === 'reading' && asked.stage === look && tint.variables.includes(asked.variables[0]);
  return [asked, same ? lives(plan, seasons) : coloured];
}
