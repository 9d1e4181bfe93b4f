// What a stage shows at a moment: one number made from its cells.
import type { StageCells, Trajectory, Variable } from './trajectory';

/** Amounts that add up over a long bed's cells; all else is per volume or per area and is averaged. */
const SUMMED: ReadonlySet<string> = new Set<Variable>([
  'sludge_g',
  'number',
  'eaten_g_d',
  'cut_kg',
  'caught_g',
  'gas_L_d',
  'air_L_min',
  'dose_g_d',
  'spill_m3_d',
]);
/** What is read where the water leaves. */
const AT_OUTLET: ReadonlySet<string> = new Set<Variable>(['flow_m3_d', 'level_m']);

/**
 * Reads one variable of one stage from a block [cells][variables] starting at `offset`.
 * Cells of a stage have equal volumes, so the mean over volume is the plain mean. A stage without cells gives NaN.
 */
export function stageReading(
  block: Float32Array,
  offset: number,
  variables: readonly string[],
  stage: StageCells,
  variable: string,
): number {
  const column = variables.indexOf(variable);
  if (column < 0 || stage.cells === 0) return Number.NaN;
  const at = (cell: number): number => block[offset + cell * variables.length + column];
  if (AT_OUTLET.has(variable)) return at(stage.first + stage.cells - 1);
  let sum = 0;
  for (let cell = stage.first; cell < stage.first + stage.cells; cell += 1) sum += at(cell);
  return SUMMED.has(variable) ? sum : sum / stage.cells;
}

/** The hourly course of one variable at one stage from the start of a day (counted from 0) to the start of another, or the season's end. */
export function stageCourse(
  trajectory: Pick<Trajectory, 'stages' | 'cells' | 'variables' | 'days'>,
  stageId: string,
  variable: string,
  fromDay: number,
  toDay = Infinity,
): number[] {
  const stage = trajectory.stages.find((candidate) => candidate.id === stageId);
  if (stage === undefined) return [];
  const hourBlock = trajectory.cells * trajectory.variables.length;
  return trajectory.days
    .filter((chunk) => chunk.day >= fromDay && chunk.day < toDay)
    .flatMap((chunk) => {
      const hours = hourBlock === 0 ? 0 : Math.floor(chunk.hourly.length / hourBlock);
      return Array.from({ length: hours }, (_, hour) =>
        stageReading(chunk.hourly, hour * hourBlock, trajectory.variables, stage, variable),
      );
    });
}
