// One day of a season: cut at every jump of forcing, integrated between cuts, read every hour, booked at midnight.
import { STATES } from '../model/components';
import { discomforts, hazard, welfare } from '../model/organisms/fish/comfort';
import { PROCESSES, ID } from '../model/processes/catalogue';
import { IntegrationError } from '../numerics/rosenbrock';
import type { Outcome } from '../numerics/rosenbrock';
import { doDeed, running } from './deeds';
import type { Design } from './design';
import { refreshForcing } from './forcing';
import { floatFill, hoursToTurn, lose, settle, spilling_m3_d } from './levels';
import { plant } from './livestock';
import { meal, wellbeing } from './meals';
import { closeDay } from './midnight';
import { Rows } from './output';
import { fishWater } from './reading';
import type { Reading } from './reading';
import type { FishState, RunState } from './runState';
import type { Runtime } from './runtime';
import { SeasonError } from './seasonError';
import { dueOn } from './schedule';
import type { Due } from './schedule';
import { scoresNow } from './scoring';
import { cleanByThemselves } from './transfers';
import type { DayChunk, SeasonEvent } from './trajectory';
import { liveWarmth } from './warmth';

export class Runner {
  private readonly levels: Float64Array;
  private readonly rows: Rows;

  constructor(
    readonly runtime: Runtime,
    readonly state: RunState,
    design: Design,
    private readonly plantsWeight: number,
  ) {
    const level = new Map(design.stages.map((stage) => [stage.id, stage.level_m]));
    this.levels = Float64Array.from(runtime.assembly.cells, (cell) => level.get(cell.stage) ?? 0);
    runtime.assembly.cells.forEach((cell, c) => {
      cell.volume = state.volumes[c];
    });
    this.rows = new Rows(runtime);
    this.readLevels();
    runtime.data.h.set(state.h);
    runtime.data.h1.set(state.h);
    runtime.data.constants.set(state.constants);
  }

  /** Rows of the state as it stands, for the moment before the first day. */
  initialRows(): Float32Array {
    const out = new Float32Array(this.rows.width);
    refreshForcing(this.runtime, this.state, 0, 0);
    this.rows.fix(this.state, this.levels);
    this.rows.write(this.state, this.state.y, out, 0);
    return out;
  }

  /** Lives one day and returns its chunk. */
  liveDay(): DayChunk {
    const { runtime, state } = this;
    const { plan, data } = runtime;
    const day = state.day;
    const events: SeasonEvent[] = [];
    const hourly = new Float32Array(24 * this.rows.width);
    const due = dueOn(plan, day);
    this.plantOnDay(day, events);
    const before = data.extents;
    before.fill(0);
    data.clipped.fill(0);
    data.held.fill(0);
    for (const fish of state.fish) fish.eatenToday = 0;
    const cuts = this.cuts(due);
    const cumulated = new Map<FishState, number>();
    let dayExtents: Float64Array | null = null;
    for (let s = 0; s + 1 < cuts.length; s++) {
      const from = cuts[s];
      let to = cuts[s + 1];
      for (const { hour, deed, byPerson } of due)
        if (hour === from) doDeed(runtime, state, deed, { hour: day * 24 + hour, byPerson, events });
      for (const feed of state.feeds) if (feed.meals_h.includes(from)) meal(runtime, state, feed);
      const acted = due.some(({ hour }) => hour === from);
      cleanByThemselves(runtime, state);
      if (from === 0 || acted || state.dry || spilling_m3_d(state) > 0)
        settle(runtime, state, running(state), from === 0 || acted, day * 24 + from, events);
      this.readLevels();
      const soonest = from + hoursToTurn(runtime, state);
      if (soonest < to) {
        to = soonest;
        cuts.splice(s + 1, 0, to);
      }
      liveWarmth(runtime, state, day, from, to);
      refreshForcing(runtime, state, day, from);
      this.rows.fix(state, this.levels);
      this.integrate(day, from, to, hourly, cumulated);
      dayExtents = data.extents;
      this.useEnergy(to - from);
      if (runtime.circuit) {
        lose(runtime, state, (spilling_m3_d(state) * (to - from)) / 24);
        floatFill(runtime, state, (to - from) / 24);
      }
    }
    const extents = (dayExtents ?? data.extents).slice();
    closeDay(runtime, state, day, extents, cumulated, events);
    state.day = day + 1;
    return { day, hourly, extents, scores: scoresNow(runtime, state, this.plantsWeight), events };
  }

  /** Levels of the circuit, where there is one. */
  private readLevels(): void {
    const { circuit } = this.runtime;
    circuit?.stages.forEach(({ entry }, i) => this.levels.fill(this.state.run.level_m[i], entry.first, entry.first + entry.cells));
  }

  /** Hours at which forcing jumps: midnight, meals, deeds. Light rises and falls without a jump. */
  private cuts(due: readonly Due[]): number[] {
    const hours = [0, 24, ...due.map(({ hour }) => hour)];
    if (!this.state.powerOn) hours.push(this.state.powerOffAt + (this.runtime.plan.backupAir_h ?? 0) - this.state.day * 24);
    for (const { hour, deed } of due) if (deed.do === 'power' && !deed.on) hours.push(hour + (this.runtime.plan.backupAir_h ?? 0));
    for (const feed of this.state.feeds) hours.push(...feed.meals_h);
    for (const { deed } of due) if (deed.do === 'feed') hours.push(...(deed.meals_h ?? [8, 12, 16]));
    return [...new Set(hours)].filter((hour) => hour >= 0 && hour <= 24).sort((a, b) => a - b);
  }

  private plantOnDay(day: number, events: SeasonEvent[]): void {
    for (const stage of this.runtime.assembly.stages) {
      const crop = 'crop' in stage.sizes ? stage.sizes.crop : undefined;
      if (crop && crop.plantedDay === day) {
        plant(this.runtime, this.state, stage.id, crop, day, (kind, id, amount) =>
          events.push({ hour: day * 24, kind, stage: id, amount, byPerson: false }),
        );
      }
    }
  }

  private integrate(day: number, from: number, to: number, hourly: Float32Array, cumulated: Map<FishState, number>): void {
    const { runtime, state } = this;
    const { data, solver, assembly } = runtime;
    const key = Math.floor(from * 4);
    const hours: number[] = [];
    for (let hour = Math.floor(from) + 1; hour <= to; hour++) hours.push(hour);
    const inner = hours.filter((hour) => hour < to);
    const gasBefore = assembly.cells.map((cell) => data.extents[cell.index * PROCESSES + ID.sludgeMethaneGas]);
    const read = (hour: number, y: Float64Array): void => {
      const readings = this.rows.write(state, y, hourly, (hour - 1) * this.rows.width);
      this.liveFishHour(readings, cumulated);
    };
    const control = { firstStep: state.firstSteps[key], minStep: 1e-9, maxStep: 0.25 };
    const outcome = this.orFault(() =>
      solver.integrate(
        day + from / 24,
        day + to / 24,
        state.y,
        control,
        inner.map((hour) => day + hour / 24),
        (i, y) => read(inner[i], y),
      ),
    );
    state.firstSteps[key] = outcome.firstAccepted;
    state.steps += outcome.steps;
    state.rejections += outcome.rejections;
    const length = (to - from) / 24;
    for (const cell of assembly.cells)
      state.gas[cell.index] =
        (data.extents[cell.index * PROCESSES + ID.sludgeMethaneGas] - gasBefore[cell.index]) / length / runtime.values.kinetics.gasMethane;
    if (hours.includes(to)) read(to, state.y);
  }

  /** Tells of an integration that fails by stage, day and hour. @throws SeasonError */
  private orFault(integrate: () => Outcome): Outcome {
    try {
      return integrate();
    } catch (error) {
      if (!(error instanceof IntegrationError)) throw error;
      const { code, t, place } = error;
      const stage = this.runtime.assembly.cells[Math.floor(place / STATES)]?.stage ?? '';
      throw new SeasonError({ code, stage, day: Math.floor(t) + 1, hour: Math.round((t - Math.floor(t)) * 240) / 10 }, error);
    }
  }

  private liveFishHour(readings: Readonly<Record<number, Reading>>, cumulated: Map<FishState, number>): void {
    const { runtime, state } = this;
    for (const fish of state.fish) {
      const water = fishWater(readings[fish.cell], state.T_C);
      const f = runtime.values.fish[fish.species];
      fish.welfareNow = welfare(f, discomforts(f, water, wellbeing(runtime, state, fish)));
      fish.welfareHours += fish.welfareNow * fish.number;
      fish.hours += fish.number;
      cumulated.set(fish, (cumulated.get(fish) ?? 0) + hazard(f, water, fish.welfareNow) / 24);
    }
  }

  private useEnergy(hours: number): void {
    const { state, runtime } = this;
    if (!state.powerOn) return;
    const { airPower, lampLoss } = runtime.values.practice;
    const air = runtime.assembly.stages.reduce((sum, stage) => sum + (state.air[stage.id] ?? 0) * stage.count, 0);
    const pump = running(state) ? state.run.power_W : 0;
    const lamps = runtime.assembly.stages.reduce((sum, stage) => sum + (state.lamps[stage.id] ?? 0) * stage.count, 0);
    state.energy_kWh += ((air * airPower + pump + lamps * lampLoss) * hours) / 1000;
  }
}
