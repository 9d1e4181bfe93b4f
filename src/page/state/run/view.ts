// Joins what the worker answers to what the page holds: days before firstDay stay those of the season before.
import type { SeasonAnswer } from '../../../worker/messages';
import type { SeasonView } from '../common/state';

/**
 * The season with the worker's answer merged in.
 * @throws Error when the answer begins at a day the page has no days before
 */
export function mergeSeason(before: SeasonView | null, answer: SeasonAnswer): SeasonView {
  const kept = answer.firstDay > 0 ? (before?.days ?? []).slice(0, answer.firstDay) : [];
  if (kept.length < answer.firstDay)
    throw new Error(`The season begins at day ${answer.firstDay}, but only ${kept.length} days are known.`);
  const column: Record<string, number> = {};
  answer.variables.forEach((name, index) => {
    column[name] = index;
  });
  return {
    stages: answer.stages,
    cells: answer.cells,
    variables: answer.variables,
    column,
    processNames: answer.processNames,
    initial: answer.initial,
    days: [...kept, ...answer.days],
    summary: answer.summary,
    sky: answer.sky,
  };
}
