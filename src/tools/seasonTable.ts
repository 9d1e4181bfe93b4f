// The table a season prints: a column `day`, the columns of each stage, scores and ledger; one row a day or an hour.
import { can } from '../catalogue/can';
import type { DayChunk, LedgerLine, Scores, StageCells, Trajectory, Variable } from '../season/trajectory';
import type { Plan } from '../season/plan';
import { stageReading } from '../season/stageReading';

export type Every = 'day' | 'hour';
export interface Column {
  name: string;
  values: number[];
}

const WATER: readonly Variable[] = [
  'TAN_mgN_L',
  'NO2_mgN_L',
  'NO3_mgN_L',
  'NH3_mgN_L',
  'O2_mg_L',
  'CO2_mg_L',
  'pH',
  'alkalinity_meq_L',
  'H2S_ug_L',
  'CH4_mg_L',
  'organics_mgCOD_L',
  'solidsCoarse_mg_L',
  'solidsFine_mg_L',
  'PO4_mgP_L',
  'K_mg_L',
  'Ca_mg_L',
  'Fe_mg_L',
  'sludge_g',
  'T_C',
  'flow_m3_d',
  'level_m',
];
const FISH: readonly Variable[] = ['number', 'mass_g', 'eaten_g_d', 'welfare'];
const BED: readonly Variable[] = ['leafDry_g_m2', 'rootHealth', 'rootMat_g_m2', 'cut_kg'];
const LEDGER: readonly LedgerLine['element'][] = ['N', 'P', 'C', 'S', 'COD', 'water'];
const SCORES: readonly (keyof Scores & ('fishHealth' | 'harvest' | 'stewardship'))[] = ['fishHealth', 'harvest', 'stewardship'];

/** The stages in flow order, as the plan has them; columns stand in this order. */
export type Layout = Pick<Plan, 'loop' | 'side'>;

/** A moment of the season: time in days, where its cells stand, and the scores reached by then. */
interface Moment {
  day: number;
  block: Float32Array;
  offset: number;
  scores: Scores | null;
  /** the day that ends here, for daily means */
  whole: DayChunk | null;
}

/**
 * Day 0 is the start; then the end of each day or hour. A stage of several cells shows the mean of its water, the sum of its
 * sludge and crop cut, and flow and level where the water leaves; a pump, which holds no water, shows what it lifts.
 * `eaten_g_d` of a daily row is the day's mean. Hours show the scores of the last midnight; the ledger is the whole season's.
 */
export function seasonTable(trajectory: Trajectory, every: Every, plan: Layout): Column[] {
  const moments = momentsOf(trajectory, every);
  const columns: Column[] = [{ name: 'day', values: moments.map((moment) => moment.day) }];
  [...plan.loop, ...plan.side].forEach((part, index) => {
    const isPump = can(part.kind, 'pumps');
    const water = isPump ? liftedBy(trajectory.stages, plan.loop, index) : wet(trajectory.stages, part.id);
    if (water === undefined) return;
    for (const variable of variablesOf(part.kind)) {
      const values = moments.map((moment) => (isPump && variable === 'sludge_g' ? 0 : readMoment(trajectory, moment, water, variable)));
      columns.push({ name: `${part.id}.${variable}`, values });
    }
  });
  for (const score of SCORES)
    columns.push({ name: `score.${score}`, values: moments.map((moment) => moment.scores?.[score] ?? Number.NaN) });
  for (const element of LEDGER) {
    const closure = trajectory.summary.ledger.find((line) => line.element === element)?.closure ?? Number.NaN;
    columns.push({ name: `ledger.${element}`, values: moments.map(() => closure) });
  }
  columns.push({ name: 'ledger.clipped', values: moments.map(() => trajectory.summary.clipped) });
  return columns;
}

function variablesOf(kind: string): readonly Variable[] {
  if (can(kind, 'keepsFish')) return [...WATER, ...FISH];
  return can(kind, 'grows') ? [...WATER, ...BED] : WATER;
}

function wet(stages: readonly StageCells[], id: string): StageCells | undefined {
  return stages.find((stage) => stage.id === id && stage.cells > 0);
}

/** The outlet of the stage whose water a pump lifts: the nearest before it that holds water. */
function liftedBy(stages: readonly StageCells[], loop: Layout['loop'], pump: number): StageCells | undefined {
  const before = loop
    .slice(0, pump)
    .reverse()
    .map((part) => wet(stages, part.id))
    .find((stage) => stage !== undefined);
  return before === undefined ? undefined : { ...before, first: before.first + before.cells - 1, cells: 1 };
}

function momentsOf(trajectory: Trajectory, every: Every): Moment[] {
  const size = trajectory.cells * trajectory.variables.length;
  const moments: Moment[] = [{ day: 0, block: trajectory.initial, offset: 0, scores: null, whole: null }];
  let before: Scores | null = null;
  for (const chunk of trajectory.days) {
    const hours = hoursOf(chunk, size);
    for (let hour = every === 'day' ? hours : 1; hour <= hours; hour += 1) {
      moments.push({
        day: chunk.day + hour / hours,
        block: chunk.hourly,
        offset: (hour - 1) * size,
        scores: hour === hours ? chunk.scores : before,
        whole: every === 'day' ? chunk : null,
      });
    }
    before = chunk.scores;
  }
  return moments;
}

function hoursOf(chunk: DayChunk, size: number): number {
  return size === 0 ? 24 : Math.floor(chunk.hourly.length / size);
}

function readMoment(trajectory: Trajectory, moment: Moment, stage: StageCells, variable: Variable): number {
  if (variable !== 'eaten_g_d' || moment.whole === null)
    return stageReading(moment.block, moment.offset, trajectory.variables, stage, variable);
  const size = trajectory.cells * trajectory.variables.length;
  const hours = hoursOf(moment.whole, size);
  let sum = 0;
  for (let hour = 0; hour < hours; hour += 1) sum += stageReading(moment.whole.hourly, hour * size, trajectory.variables, stage, variable);
  return sum / hours;
}
