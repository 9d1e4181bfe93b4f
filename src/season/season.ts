// season(plan) → trajectory: the one function that lives a season, in day chunks with a checkpoint each midnight.
import { PROCESS_NAMES } from '../model/processes/catalogue';
import { audit, clippedShare } from './audit';
import { designOf } from './design';
import type { Plan } from './plan';
import { Runner } from './runner';
import { copyState } from './runState';
import type { RunState } from './runState';
import { makeRuntime } from './runtime';
import type { Runtime } from './runtime';
import { scoresNow, usualPlantsWeight } from './scoring';
import { startState } from './start';
import { VARIABLES } from './trajectory';
import type { DayChunk, SeasonSummary, StageCells, Trajectory } from './trajectory';

/** What a season can be taken up from: the midnight after `state.day` days, with the outside books of a rig. */
export interface Checkpoint {
  state: RunState;
  received: Float64Array;
  released: Float64Array;
}

export interface SeasonOptions {
  /** stop before this day; default: the plan's days */
  untilDay?: number;
  /** parameters in place of the recorded values, by `group.name` */
  parameters?: Readonly<Record<string, number>>;
  /** relative tolerance of the integrator */
  tolerance?: number;
  /** weight of plants in the harvest score, 0–1; default: see usualPlantsWeight */
  plantsWeight?: number;
}

export class Season {
  readonly runtime: Runtime;
  private readonly start: RunState;
  private readonly runner: Runner;
  private readonly weight: number;

  /** @param from a checkpoint of a plan that is the same up to its day */
  constructor(
    readonly plan: Plan,
    private readonly options: SeasonOptions = {},
    from?: Checkpoint,
  ) {
    this.runtime = makeRuntime(plan, options.parameters, options.tolerance);
    this.start = startState(this.runtime);
    this.weight = options.plantsWeight ?? usualPlantsWeight(plan);
    const state = from ? copyState(from.state) : copyState(this.start);
    if (from) {
      this.runtime.data.received.set(from.received);
      this.runtime.data.released.set(from.released);
    }
    this.runner = new Runner(this.runtime, state, designOf(plan, this.runtime.values), this.weight);
  }

  get day(): number {
    return this.runner.state.day;
  }
  get state(): RunState {
    return this.runner.state;
  }

  liveDay(): DayChunk {
    return this.runner.liveDay();
  }

  checkpoint(): Checkpoint {
    const { received, released } = this.runtime.data;
    return { state: copyState(this.runner.state), received: received.slice(), released: released.slice() };
  }

  /** Rows of the moment before the first day. */
  initialRows(): Float32Array {
    return new Season(this.plan, this.options).runner.initialRows();
  }

  stages(): StageCells[] {
    return this.runtime.assembly.stages.map(({ id, kind, first, cells }) => ({
      id,
      kind,
      first,
      cells,
      volume_m3: this.runtime.assembly.cells.slice(first, first + cells).reduce((sum, cell) => sum + cell.volume, 0),
    }));
  }

  summary(): SeasonSummary {
    const { state } = this.runner;
    return {
      days: state.day,
      scores: scoresNow(this.runtime, state, this.weight),
      ledger: audit(this.runtime, this.start, state),
      clipped: clippedShare(this.runtime, state),
      steps: state.steps,
      rejections: state.rejections,
    };
  }
}

/**
 * Runs a whole season.
 * @throws Error where the plan names kinds outside the catalogue or the integration fails
 */
export function runSeason(plan: Plan, options: SeasonOptions = {}): Trajectory {
  const season = new Season(plan, options);
  const until = Math.min(options.untilDay ?? plan.days, plan.days);
  const initial = season.initialRows();
  const days: DayChunk[] = [];
  while (season.day < until) days.push(season.liveDay());
  return {
    stages: season.stages(),
    cells: season.runtime.assembly.cells.length,
    variables: VARIABLES,
    processNames: [...PROCESS_NAMES],
    initial,
    days,
    summary: season.summary(),
  };
}
