// Fish and plants put in and taken out: stocked, fished, planted, cut. Every gram is booked.
import { FISH, GUT, LEAF, MF, MI, MS, ROOT, ROT, STATES, STORES } from '../model/components';
import { cropAt } from '../model/organisms/plants/cropAt';
import type { CropKind, SpeciesKind } from './plan';
import type { FishState, RunState } from './runState';
import type { Runtime } from './runtime';
import { put, take } from './transfers';
import type { EventKind } from './trajectory';

export type Tell = (kind: EventKind, stage: string, amount: number) => void;

/** Stocks a tank, or one of its identical units; without a unit every unit gets the same. */
export function stock(
  runtime: Runtime,
  state: RunState,
  { tank, species, number, mass_g, unit }: { tank: string; species: SpeciesKind; number: number; mass_g: number; unit?: number },
  tell: Tell,
): void {
  const stage = runtime.assembly.stages.find((entry) => entry.id === tank);
  if (!stage) return;
  const which = unit ?? 0;
  let group: FishState | undefined = state.fish.find((fish) => fish.tank === tank && fish.unit === which && fish.species === species);
  if (!group) {
    group = {
      tank,
      unit: which,
      species,
      cell: stage.first,
      mass: 0,
      since: state.day,
      number: 0,
      stocked: 0,
      stockedMass: 0,
      takenMass: 0,
      takenNumber: 0,
      idealMass: 0,
      idealTaken: 0,
      welfareHours: 0,
      hours: 0,
      welfareNow: 1,
      eatenToday: 0,
      eatenYesterday: 0,
    };
    state.fish.push(group);
  }
  const all = which > 0 ? number : number * stage.count;
  group.since = state.day;
  put(state, stage.first, FISH, all * mass_g);
  group.mass += all * mass_g;
  group.number += all;
  group.stocked += all;
  group.stockedMass += all * mass_g;
  group.idealMass += all * mass_g;
  tell('stocked', tank, all);
}

/** Takes fish alive, of one unit or of all. */
export function takeFish(state: RunState, { tank, number, unit }: { tank: string; number: number; unit?: number }, tell: Tell): void {
  const groups = state.fish.filter((fish) => fish.tank === tank && (unit === undefined || fish.unit === unit) && fish.number > 0);
  const there = groups.reduce((sum, fish) => sum + fish.number, 0);
  if (there <= 0) return;
  const share = Math.min(1, number / there);
  for (const group of groups) {
    const o = group.cell * STATES;
    const mass = group.mass * share;
    take(state, group.cell, GUT, state.y[o + FISH] > 0 ? (state.y[o + GUT] * mass) / state.y[o + FISH] : 0);
    take(state, group.cell, FISH, Math.min(mass, state.y[o + FISH]));
    group.mass -= mass;
    group.takenMass += mass;
    group.takenNumber += group.number * share;
    group.idealTaken += group.idealMass * share;
    group.idealMass *= 1 - share;
    group.number *= 1 - share;
  }
  tell('fishTaken', tank, there * share);
}

/** Plants a bed anew; what stands is cleared first. */
export function plant(
  runtime: Runtime,
  state: RunState,
  id: string,
  { kind, plants_m2, replant }: { kind: CropKind; plants_m2: number; replant: boolean },
  day: number,
  tell: Tell,
): void {
  const stage = runtime.assembly.stages.find((entry) => entry.id === id);
  if (!stage) return;
  let bed = state.beds.find((it) => it.stage === id);
  if (bed) cutBed(runtime, state, id, tell, true);
  else {
    bed = {
      stage: id,
      crop: kind,
      first: stage.first,
      cells: stage.cells,
      plants: 0,
      replant,
      ideal: 0,
      idealCut: 0,
      cut: 0,
      planted: day,
    };
    state.beds.push(bed);
  }
  const area = runtime.assembly.cells[stage.first].floor * stage.cells;
  bed.crop = kind;
  const crop = runtime.values.crops[kind];
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

/**
 * Cuts a bed: a crop that comes again keeps its roots and part of its leaf; one that does not is lifted with its roots and what sits on
 * them.
 * @param whole whether the bed is cleared, whatever the crop; then nothing is told
 */
export function cutBed(runtime: Runtime, state: RunState, id: string, tell: Tell, whole = false): void {
  const bed = state.beds.find((it) => it.stage === id);
  if (!bed) return;
  const crop = runtime.values.crops[bed.crop];
  const share = whole ? 1 : crop.cutShare;
  let dry = 0;
  for (let c = bed.first; c < bed.first + bed.cells; c++) {
    dry += state.y[c * STATES + LEAF] * share;
    for (const part of [LEAF, ...STORES]) take(state, c, part, state.y[c * STATES + part] * share);
    // A bed of gravel keeps what it caught, and a crop that comes again its roots.
    if (share < 1) continue;
    state.y[c * STATES + ROOT] = 1;
    state.y[c * STATES + ROT] *= runtime.values.kinetics.rotCarried;
    if (runtime.assembly.cells[c].mediaArea > 0) continue;
    for (const component of [MF, MI, MS]) take(state, c, component, state.y[c * STATES + component] * runtime.values.practice.rootsTaken);
  }
  const sold = dry * crop.harvestShare;
  bed.cut += sold;
  state.work_h += 0.3;
  if (!whole) tell('harvested', id, sold / crop.dryShare / 1000);
}
