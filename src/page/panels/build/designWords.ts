// Puts what a design gets wrong into words, with its numbers in the reader's units, and says how much it matters.
import type { DesignCheck, Plan } from '../../state/common/contract';
import { PREVENTS_FLOW } from '../../state/common/hints';
import type { Mark } from '../../state/common/state';
import { sayOr } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { figure, withUnit } from '../../../words/units';

export type DesignProblem = DesignCheck['problems'][number];

/** The quantity of each number by the name it carries. */
const QUANTITIES: Readonly<Record<string, string>> = { cm: 'height_cm', L: 'water_L', L_h: 'waterPerHour_L_h' };

const keyOf = (problem: DesignProblem): string => (problem.key.startsWith('design.') ? problem.key : `design.${problem.key}`);

export function problemMark(problem: DesignProblem): Mark {
  return PREVENTS_FLOW.has(keyOf(problem)) ? 'act' : 'watch';
}

export function problemWords(plan: Plan, problem: DesignProblem): string {
  const values = Object.fromEntries(
    Object.entries(problem.values).map(([name, value]) => [
      name,
      QUANTITIES[name] === undefined ? figure(value, 1) : withUnit(QUANTITIES[name], value),
    ]),
  );
  return sayOr(keyOf(problem), 'design.unknown', { ...values, stage: stageName([...plan.loop, ...plan.side], problem.stage) });
}
