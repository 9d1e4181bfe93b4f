// What the processes of one stage did in one whole day: sums of their extents, and what those did to a quantity of the water. Pure.
import type { Limit, ProcessFacts, WaterQuantity } from '../../../worker/messages';
import { readingAt } from './readings';
import type { SeasonView } from '../common/state';

export interface DaySums {
  stage: string;
  kind: string;
  day: number;
  /** sum of the extents of processes over the stage's cells, in each process's own unit */
  extent(processes: readonly string[]): number;
  /** what these processes did to a quantity of the stage's water, g (eq, g COD, g dry): above 0 they brought it */
  effect(processes: readonly string[], quantity: WaterQuantity): number;
  /** mean of a variable over the day at the stage */
  mean(variable: string): number;
}

/** The last whole day lived at a moment; −1 within the first. */
export function lastWholeDay(now_h: number): number {
  return Math.floor(now_h / 24 + 1e-9) - 1;
}

/** @returns null for a stage without water of its own, or a day the season does not hold */
export function daySums(view: SeasonView, facts: ProcessFacts, stageId: string, day: number): DaySums | null {
  const stage = view.stages.find((one) => one.id === stageId);
  const chunk = view.days[day];
  if (stage === undefined || stage.cells === 0 || chunk === undefined) return null;
  const width = view.processNames.length;
  const sumOf = (name: string): number => {
    const p = view.processNames.indexOf(name);
    let sum = 0;
    if (p >= 0) for (let cell = stage.first; cell < stage.first + stage.cells; cell += 1) sum += chunk.extents[cell * width + p] ?? 0;
    return sum;
  };
  return {
    stage: stageId,
    kind: stage.kind,
    day,
    extent: (processes) => processes.reduce((sum, name) => sum + sumOf(name), 0),
    effect: (processes, quantity) => processes.reduce((sum, name) => sum + sumOf(name) * (facts.effects[name]?.[quantity] ?? 0), 0),
    mean(variable) {
      let sum = 0;
      for (let hour = 1; hour <= 24; hour += 1) sum += readingAt(view, stageId, variable, day * 24 + hour, 'inside');
      return sum / 24;
    },
  };
}

/** What slowed a process down most that day, where anything slowed it below three quarters of its rate. */
export function heldBackBy(
  sums: DaySums,
  limits: readonly Limit[] | undefined,
): { by: Limit['by']; variable: string; reading: number; share: number } | null {
  let worst: { by: Limit['by']; variable: string; reading: number; share: number } | null = null;
  for (const { by, variables, half, shape } of limits ?? []) {
    const reading = variables.reduce((sum, variable) => sum + sums.mean(variable), 0);
    const share = shape === 'acid' ? 1 / (1 + 10 ** (2 * (half - reading))) : Math.max(0, reading) / (half + Math.max(0, reading));
    if (share < 0.75 && share < (worst?.share ?? 1)) worst = { by, variable: variables[0], reading, share };
  }
  return worst;
}
