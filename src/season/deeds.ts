// What a person does, done: each deed changes settings or moves matter at a cut, and is told as an event.
import { CL, FE, FISH, GUT, LEAF, MF, MI, MS, NA, ROOT, STATES, STORES } from '../model/components';
import { cropAt } from '../model/organisms/plants/cropAt';
import type { CropKind, Deed, SpeciesKind } from './plan';
import type { FishState, RunState } from './runState';
import type { Runtime } from './runtime';
import { disturb, drain, exchange, put, rinse, take } from './transfers';
import type { EventKind, SeasonEvent } from './trajectory';

export interface Place { hour: number; byPerson: boolean; events: SeasonEvent[] }

/** Does one deed. Unknown stages were refused when the plan was read; here they are passed over. */
export function doDeed(runtime: Runtime, state: RunState, deed: Deed, place: Place): void {
  const tell = (kind: EventKind, stage: string, amount: number): void => { place.events.push({ hour: place.hour, kind, stage, amount, byPerson: place.byPerson }); };
  const cellsOf = (id: string): number[] => {
    const stage = runtime.assembly.stages.find((entry) => entry.id === id);
    return stage ? Array.from({ length: stage.cells }, (_, i) => stage.first + i) : [];
  };
  switch (deed.do) {
    case 'feed': {
      const feed = { tank: deed.tank, g_d: deed.g_d, meals_h: deed.meals_h?.length ? [...deed.meals_h] : [8, 12, 16] };
      state.feeds = [...state.feeds.filter((other) => other.tank !== deed.tank), feed];
      return tell('fed', deed.tank, deed.g_d);
    }
    case 'air':
      state.air[deed.stage] = deed.L_min;
      return tell('airSet', deed.stage, deed.L_min);
    case 'pump':
    case 'power': {
      const ran = running(state);
      if (deed.do === 'pump') state.pumpOn = deed.on;
      else state.powerOn = deed.on;
      // Water set moving again stirs the beds that lay still.
      if (!ran && running(state)) for (const cell of runtime.assembly.cells) if (cell.bedThickness > 0) disturb(runtime, state, cell.index);
      return tell(deed.do === 'pump' ? (deed.on ? 'pumpOn' : 'pumpOff') : deed.on ? 'powerOn' : 'powerOff', '', deed.on ? 1 : 0);
    }
    case 'flow':
      state.flow_m3_d = deed.flow_m3_h * 24;
      return tell('flowSet', '', deed.flow_m3_h);
    case 'drain': {
      let volume = 0;
      for (const cell of cellsOf(deed.stage)) volume += drain(runtime, state, cell);
      return tell('drained', deed.stage, volume * 1000);
    }
    case 'rinse': {
      let volume = 0;
      for (const cell of cellsOf(deed.stage)) volume += rinse(runtime, state, cell);
      return tell('rinsed', deed.stage, volume * 1000);
    }
    case 'base':
      state.base = { kind: deed.base ?? state.base.kind, g_d: deed.g_d, targetPH: deed.targetPH ?? state.base.targetPH, level: state.base.level };
      return tell('baseSet', runtime.assembly.dosing?.id ?? '', deed.g_d);
    case 'salt':
      for (const cell of cellsOf(deed.stage).slice(0, 1)) {
        put(state, cell, NA, deed.g * 0.3934);
        put(state, cell, CL, deed.g * 0.6066);
      }
      return tell('salted', deed.stage, deed.g);
    case 'iron':
      for (const cell of cellsOf(deed.stage).slice(0, 1)) put(state, cell, FE, deed.g);
      return tell('ironAdded', deed.stage, deed.g);
    case 'exchange': {
      let volume = 0;
      for (const cell of cellsOf(deed.stage)) volume += exchange(runtime, state, cell, Math.min(1, Math.max(0, deed.fraction)));
      return tell('exchanged', deed.stage, volume * 1000);
    }
    case 'stock':
      return stock(runtime, state, deed, tell);
    case 'takeFish':
      return takeFish(state, deed.tank, deed.number, tell);
    case 'plant':
      return plant(runtime, state, deed.stage, { kind: deed.crop, plants_m2: deed.plants_m2, replant: deed.replant }, place.hour / 24, tell);
    case 'cut':
      return cutBed(runtime, state, deed.stage, tell);
  }
}

export const running = (state: RunState): boolean => state.pumpOn && state.powerOn;

type Tell = (kind: EventKind, stage: string, amount: number) => void;

function stock(runtime: Runtime, state: RunState, { tank, species, number, mass_g }: { tank: string; species: SpeciesKind; number: number; mass_g: number }, tell: Tell): void {
  const stage = runtime.assembly.stages.find((entry) => entry.id === tank);
  if (!stage) return;
  let group: FishState | undefined = state.fish.find((fish) => fish.tank === tank);
  if (!group) {
    group = { tank, species, cell: stage.first, since: state.day, number: 0, stocked: 0, stockedMass: 0, takenMass: 0, idealMass: 0, idealTaken: 0, welfareHours: 0, hours: 0, welfareNow: 1, eatenToday: 0, eatenYesterday: 0 };
    state.fish.push(group);
  }
  const all = number * stage.count;
  group.since = state.day;
  put(state, stage.first, FISH, all * mass_g);
  group.number += all;
  group.stocked += all;
  group.stockedMass += all * mass_g;
  group.idealMass += all * mass_g;
  tell('stocked', tank, all);
}

function takeFish(state: RunState, tank: string, number: number, tell: Tell): void {
  const group = state.fish.find((fish) => fish.tank === tank);
  if (!group || group.number <= 0) return;
  const share = Math.min(1, number / group.number);
  const mass = state.y[group.cell * STATES + FISH] * share;
  take(state, group.cell, FISH, mass);
  take(state, group.cell, GUT, state.y[group.cell * STATES + GUT] * share);
  group.takenMass += mass;
  group.idealTaken += group.idealMass * share;
  group.idealMass *= 1 - share;
  tell('fishTaken', tank, group.number * share);
  group.number *= 1 - share;
}

/** Plants a bed anew; what stands is cut first. */
export function plant(runtime: Runtime, state: RunState, id: string, { kind, plants_m2, replant }: { kind: CropKind; plants_m2: number; replant: boolean }, day: number, tell: Tell): void {
  const stage = runtime.assembly.stages.find((entry) => entry.id === id);
  if (!stage) return;
  let bed = state.beds.find((it) => it.stage === id);
  if (bed) cutBed(runtime, state, id, tell, false);
  else {
    bed = { stage: id, crop: kind, first: stage.first, cells: stage.cells, plants: 0, replant, ideal: 0, idealCut: 0, cut: 0, planted: day };
    state.beds.push(bed);
  }
  const area = runtime.assembly.cells[stage.first].floor * stage.cells;
  bed.crop = kind;
  const crop = runtime.values[kind];
  bed.plants = plants_m2 * area;
  bed.replant = replant;
  bed.planted = day;
  const each = (bed.plants / stage.cells) * crop.transplant;
  const at = cropAt(runtime.values, kind);
  for (let c = stage.first; c < stage.first + stage.cells; c++) {
    put(state, c, LEAF, each);
    // seedlings come with full stores
    [at.roomN, at.roomP, at.roomK, at.roomCa, at.roomFe].forEach((room, i) => put(state, c, STORES[i], each * room));
  }
  if (bed.ideal === 0) bed.ideal = bed.plants * crop.transplant;
  tell('planted', id, bed.plants);
}

/** Cuts a bed's leaves; roots and what sits on them go with the old plants. */
export function cutBed(runtime: Runtime, state: RunState, id: string, tell: Tell, told = true): void {
  const bed = state.beds.find((it) => it.stage === id);
  if (!bed) return;
  let dry = 0;
  for (let c = bed.first; c < bed.first + bed.cells; c++) {
    const amount = state.y[c * STATES + LEAF];
    for (const part of [LEAF, ...STORES]) take(state, c, part, state.y[c * STATES + part]);
    dry += amount;
    for (const component of [MF, MI, MS]) take(state, c, component, state.y[c * STATES + component] * runtime.values.practice.rootsTaken);
    state.y[c * STATES + ROOT] = 1;
  }
  bed.cut += dry;
  state.work_h += 0.3;
  if (told) tell('cut', id, dry / runtime.values[bed.crop].dryShare / 1000);
}
