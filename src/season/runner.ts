// One day of a season: cut at every jump of forcing, integrated between cuts, read every hour, booked at midnight.
import { FISH, GUT, LEAF, STATES } from '../model/components';
import { setGasForcing } from '../model/forcing/gasForcing';
import { activeProcesses, clogging, setSolidsForcing, sludgeFill } from '../model/forcing/solidsForcing';
import { discomforts, hazard, survivors, welfare } from '../model/organisms/fish/comfort';
import { fixDiagonals } from '../model/network/blockSolve';
import { workLists } from '../model/network/workLists';
import { acidityFactor, lightGrowth, plateau } from '../model/organisms/plants/growth';
import { PROCESSES, ID } from '../model/processes/catalogue';
import { METHANE_COD_PER_L } from '../model/processes/sludge';
import { log10 } from '../numerics/elementary';
import { setActivities } from './activities';
import { airNow, lightNow, waterAfter } from './climate';
import { cutBed, doDeed, plant, running } from './deeds';
import type { Design } from './design';
import { meal } from './meals';
import { writeRows } from './output';
import { fishWater } from './reading';
import type { Reading } from './reading';
import type { RunState } from './runState';
import { offsetOf, warmTo } from './runtime';
import type { Runtime } from './runtime';
import { dueOn } from './schedule';
import type { Due } from './schedule';
import { liveIdealDay, scoresNow } from './scoring';
import { evaporate, take } from './transfers';
import { VARIABLES } from './trajectory';
import type { DayChunk, SeasonEvent } from './trajectory';


export class Runner {
  private readonly levels: Float64Array;

  constructor(readonly runtime: Runtime, readonly state: RunState, design: Design, private readonly plantsWeight: number) {
    const level = new Map(design.stages.map((stage) => [stage.id, stage.level_m]));
    this.levels = Float64Array.from(runtime.assembly.cells, (cell) => level.get(cell.stage) ?? 0);
    runtime.data.h.set(state.h);
    runtime.data.h1.set(state.h);
    runtime.data.constants.set(state.constants);
  }

  /** Rows of the state as it stands, for the moment before the first day. */
  initialRows(): Float32Array {
    const out = new Float32Array(this.runtime.assembly.cells.length * VARIABLES.length);
    this.refresh(0, 0);
    writeRows(this.runtime, this.state, this.state.y, this.levels, out, 0);
    return out;
  }

  /** Lives one day and returns its chunk. */
  liveDay(): DayChunk {
    const { runtime, state } = this;
    const { plan, data, weather, assembly } = runtime;
    const day = state.day;
    const events: SeasonEvent[] = [];
    const hourly = new Float32Array(24 * assembly.cells.length * VARIABLES.length);
    const due = dueOn(plan, day);
    this.plantOnDay(day, events);
    const before = data.extents;
    before.fill(0);
    data.clipped.fill(0);
    data.held.fill(0);
    for (const fish of state.fish) fish.eatenToday = 0;
    const cuts = this.cuts(due);
    const cumulated = new Map<string, number>();
    let dayExtents: Float64Array | null = null;
    for (let s = 0; s + 1 < cuts.length; s++) {
      const [from, to] = [cuts[s], cuts[s + 1]];
      for (const { hour, deed, byPerson } of due) if (hour === from) doDeed(runtime, state, deed, { hour: day * 24 + hour, byPerson, events });
      for (const feed of state.feeds) if (feed.meals_h.includes(from)) for (const fish of state.fish) if (fish.tank === feed.tank) meal(runtime, state, feed, fish);
      state.T_C = plan.rig?.hold?.T_C ?? waterAfter(plan.climate, state.T_C, airNow(plan.climate, weather, day, (from + to) / 2), to - from);
      this.refresh(day, from);
      this.integrate(day, from, to, hourly, cumulated);
      dayExtents = data.extents;
      this.useEnergy(to - from);
    }
    const extents = (dayExtents ?? data.extents).slice();
    this.midnight(day, extents, cumulated, events);
    state.day = day + 1;
    return { day, hourly, extents, scores: scoresNow(runtime, state, this.plantsWeight), events };
  }

  /** Hours at which forcing jumps: midnight, meals, deeds. Light rises and falls without a jump. */
  private cuts(due: readonly Due[]): number[] {
    const hours = [0, 24, ...due.map(({ hour }) => hour)];
    for (const feed of this.state.feeds) hours.push(...feed.meals_h);
    for (const { deed } of due) if (deed.do === 'feed') hours.push(...(deed.meals_h ?? [8, 12, 16]));
    return [...new Set(hours)].filter((hour) => hour >= 0 && hour <= 24).sort((a, b) => a - b);
  }

  private plantOnDay(day: number, events: SeasonEvent[]): void {
    for (const stage of this.runtime.assembly.stages) {
      const crop = 'crop' in stage.sizes ? stage.sizes.crop : undefined;
      if (crop && crop.plantedDay === day) {
        plant(this.runtime, this.state, stage.id, crop.plants_m2, crop.replant, day, (kind, id, amount) => events.push({ hour: day * 24, kind, stage: id, amount, byPerson: false }));
      }
    }
  }

  /** Sets all forcing for what follows: temperature, flow, gas, solids, light, dosing, activities. */
  private refresh(day: number, hour: number): void {
    const { runtime, state } = this;
    const { data, assembly, plan, values } = runtime;
    warmTo(runtime, state.T_C);
    const flow = plan.rig || running(state) ? state.flow_m3_d : 0;
    for (const link of data.links) link.flow = flow;
    const light = runtime.weather.light[Math.min(day, runtime.weather.light.length - 1)];
    data.light = (t) => lightNow(plan.climate, (t - Math.floor(t + 1e-9)) * 24);
    data.r0.fill(0); data.r1.fill(0); data.g.fill(0); data.d0.fill(0); data.d1.fill(0);
    for (const stage of assembly.stages) {
      for (let c = stage.first; c < stage.first + stage.cells; c++) {
        const cell = assembly.cells[c];
        cell.flow = stage.side ? 0 : flow;
        const fall = assembly.steps.find((step) => step.to === c)?.fall ?? 0;
        const air = state.powerOn ? ((state.air[stage.id] ?? 0) * stage.count) / stage.cells : 0;
        setGasForcing(cell, values, runtime.at.gas, air, fall, cell.flow);
        setSolidsForcing(cell, stage.type, state.y, offsetOf(c), values, state.gas[c], 'outlet' in stage.sizes ? stage.sizes.outlet ?? 'bottomLift' : 'bottomLift');
        setActivities(runtime, state.y, c);
        if (cell.bed) {
          const pH = 3 - log10(data.h[c]);
          cell.growth = state.beds.some((bed) => c >= bed.first && c < bed.first + bed.cells)
            ? lightGrowth(values, state.y[offsetOf(c) + LEAF] / cell.floor, light, state.T_C) * cell.floor * acidityFactor(values, pH) : 0;
          const crop = values.lettuce;
          cell.rootTarget = 0.3 + 0.7 * plateau(state.T_C, crop.coldStop, crop.optimumLow - 3, crop.optimumHigh + 3, crop.hotStop);
        }
        cell.doseCa = 0;
        cell.doseK = 0;
      }
    }
    this.setDosing(hour);
    for (const cell of assembly.cells) {
      const active = activeProcesses(cell, data.matrix.alone);
      if (active === cell.active) continue;
      cell.active = active;
      cell.work = workLists(data.matrix, active);
    }
    fixDiagonals(data);
  }

  /** Base trickles in at a rate that follows the pH with a lag, up to the cap. */
  private setDosing(hour: number): void {
    const { runtime, state } = this;
    const side = runtime.assembly.dosing;
    if (!side) return;
    const stage = runtime.assembly.stages.find((entry) => entry.id === side.into);
    if (!stage) return;
    const { dosingBand, dosingLag } = runtime.values.practice;
    const pH = 3 - log10(runtime.data.h[stage.first]);
    const wish = Math.min(1, Math.max(0, (state.base.targetPH + dosingBand / 2 - pH) / dosingBand));
    // First-order lag over the time since the last cut, about four hours.
    const share = Math.min(1, (hour === 0 ? 2 : 4) / 24 / dosingLag);
    state.base.level += (wish - state.base.level) * share;
    const rate = state.base.g_d * state.base.level;
    const cell = runtime.assembly.cells[stage.first];
    if (state.base.kind === 'Ca(OH)2') cell.doseCa = rate;
    else cell.doseK = rate;
  }

  private integrate(day: number, from: number, to: number, hourly: Float32Array, cumulated: Map<string, number>): void {
    const { runtime, state } = this;
    const { data, solver, assembly } = runtime;
    const width = assembly.cells.length * VARIABLES.length;
    const key = Math.floor(from * 4);
    const hours: number[] = [];
    for (let hour = Math.floor(from) + 1; hour <= to; hour++) hours.push(hour);
    const inner = hours.filter((hour) => hour < to);
    const gasBefore = assembly.cells.map((cell) => data.extents[cell.index * PROCESSES + ID.sludgeMethaneGas]);
    const read = (hour: number, y: Float64Array): void => {
      const readings = writeRows(runtime, state, y, this.levels, hourly, (hour - 1) * width);
      this.liveFishHour(readings, cumulated);
    };
    const outcome = solver.integrate(day + from / 24, day + to / 24, state.y, { firstStep: state.firstSteps[key], minStep: 1e-9, maxStep: 0.25 }, inner.map((hour) => day + hour / 24), (i, y) => read(inner[i], y));
    state.firstSteps[key] = outcome.firstAccepted;
    state.steps += outcome.steps;
    state.rejections += outcome.rejections;
    const length = (to - from) / 24;
    for (const cell of assembly.cells) state.gas[cell.index] = (data.extents[cell.index * PROCESSES + ID.sludgeMethaneGas] - gasBefore[cell.index]) / length / METHANE_COD_PER_L;
    if (hours.includes(to)) read(to, state.y);
  }

  private liveFishHour(readings: readonly Reading[], cumulated: Map<string, number>): void {
    const { runtime, state } = this;
    for (const fish of state.fish) {
      const water = fishWater(readings[fish.cell], state.T_C);
      fish.welfareNow = welfare(discomforts(runtime.values, water));
      fish.welfareHours += fish.welfareNow * fish.number;
      fish.hours += fish.number;
      cumulated.set(fish.tank, (cumulated.get(fish.tank) ?? 0) + hazard(runtime.values, water) / 24);
    }
  }

  private useEnergy(hours: number): void {
    const { state, runtime } = this;
    if (!state.powerOn) return;
    const { airPower, pumpPower } = runtime.values.practice;
    const air = runtime.assembly.stages.reduce((sum, stage) => sum + (state.air[stage.id] ?? 0) * stage.count, 0);
    const pump = running(state) && !runtime.plan.rig ? (state.flow_m3_d / 24) * pumpPower : 0;
    state.energy_kWh += ((air * airPower + pump) * hours) / 1000;
  }

  /** The day's books: deaths, ripe beds, evaporation, extents, warnings. */
  private midnight(day: number, extents: Float64Array, cumulated: Map<string, number>, events: SeasonEvent[]): void {
    const { runtime, state } = this;
    const { assembly, values, data } = runtime;
    for (const fish of state.fish) {
      const left = survivors(fish.number, cumulated.get(fish.tank) ?? 0);
      const lost = fish.number - left;
      if (fish.number > 0) {
        const share = lost / fish.number;
        take(state, fish.cell, FISH, state.y[offsetOf(fish.cell) + FISH] * share);
        take(state, fish.cell, GUT, state.y[offsetOf(fish.cell) + GUT] * share);
      }
      if (Math.round(fish.number) > Math.round(left)) events.push({ hour: day * 24 + 23, kind: 'fishDied', stage: fish.tank, amount: Math.round(fish.number) - Math.round(left), byPerson: false });
      fish.number = left;
      fish.eatenYesterday = fish.eatenToday;
    }
    for (const bed of state.beds) {
      let leaf = 0;
      for (let c = bed.first; c < bed.first + bed.cells; c++) leaf += state.y[offsetOf(c) + LEAF];
      if (leaf >= bed.plants * values.lettuce.ripe && bed.replant) {
        const tell = (kind: SeasonEvent['kind'], stage: string, amount: number): void => { events.push({ hour: day * 24 + 23, kind, stage, amount, byPerson: false }); };
        const area = assembly.cells[bed.first].floor * bed.cells;
        cutBed(runtime, state, bed.stage, tell);
        plant(runtime, state, bed.stage, bed.plants / area, true, day + 1, () => undefined);
      }
    }
    liveIdealDay(runtime, state, runtime.weather.light[Math.min(day, runtime.weather.light.length - 1)]);
    if (!runtime.plan.rig) {
      const surface = assembly.cells.reduce((sum, cell) => sum + cell.surface, 0);
      let grown = 0;
      for (let c = 0; c < assembly.cells.length; c++) grown += extents[c * PROCESSES + ID.leafGrowthNitrate] + extents[c * PROCESSES + ID.leafGrowthAmmonium];
      const volume = (values.practice.evaporation * surface + values.lettuce.waterUse * grown) / 1000;
      evaporate(runtime, state, assembly.sump >= 0 ? assembly.sump : 0, Math.min(volume, 0.2 * assembly.cells[Math.max(0, assembly.sump)].volume));
    }
    for (let i = 0; i < extents.length; i++) state.extents[i % PROCESSES] += extents[i];
    for (let i = 0; i < STATES; i++) state.clipped[i] += data.clipped[i];
    for (const amount of data.held) state.held += amount;
    state.h.set(data.h);
    state.constants.set(data.constants);
    this.warn(day, events);
  }

  private warn(day: number, events: SeasonEvent[]): void {
    const { runtime, state } = this;
    for (const cell of runtime.assembly.cells) {
      const o = offsetOf(cell.index);
      const signs: [SeasonEvent['kind'], boolean][] = [
        ['sludgeFull', cell.cone && sludgeFill(cell, state.y, o, runtime.values) > 0.85],
        ['filterBlocked', cell.filter && clogging(cell, state.y, o, runtime.values) > 1],
      ];
      for (const [kind, on] of signs) {
        const key = `${kind} ${cell.stage}`;
        const known = state.warned.includes(key);
        if (on && !known) {
          state.warned.push(key);
          events.push({ hour: day * 24 + 23, kind, stage: cell.stage, amount: 0, byPerson: false });
        } else if (!on && known) state.warned = state.warned.filter((other) => other !== key);
      }
    }
  }
}
