// Water and matter moved by hand at a cut: drained, rinsed, exchanged, topped up. Every gram is booked.
import { BA, BH, BN, CLOG, FLOWING, MF, MI, MS, PO, PS, S2, SF, SI, SL, SS, STATES } from '../model/components';
import { clogging } from '../model/forcing/solidsForcing';
import type { RunState } from './runState';
import type { Runtime } from './runtime';

const offset = (cell: number): number => cell * STATES;

/** Takes an amount of one component out of a cell and books it as gone. */
export function take(state: RunState, cell: number, component: number, amount: number): void {
  state.y[offset(cell) + component] -= amount;
  state.taken[component] += amount;
}

/** Puts an amount of one component into a cell from outside. */
export function put(state: RunState, cell: number, component: number, amount: number): void {
  state.y[offset(cell) + component] += amount;
  state.put[component] += amount;
}

/** Element content of what a person discharges, for stewardship. */
function discharge(runtime: Runtime, state: RunState, component: number, amount: number): void {
  state.discharged.nitrogen += runtime.content[component][1] * amount;
  state.discharged.solids += (runtime.dry[component] ?? 0) * amount;
}

/** Removes a volume of a cell's water (m³), to the drain or into another cell; the cell's own volume is left to be refilled. */
function drawOff(runtime: Runtime, state: RunState, cell: number, volume: number, into: number): void {
  const share = volume / runtime.assembly.cells[cell].volume;
  for (let i = 0; i < FLOWING; i++) {
    const amount = state.y[offset(cell) + i] * share;
    if (into >= 0) {
      state.y[offset(cell) + i] -= amount;
      state.y[offset(into) + i] += amount;
    } else {
      take(state, cell, i, amount);
      discharge(runtime, state, i, amount);
    }
  }
}

/** Share of the smallest tank on the way that water is passed on in at a time, and the most times it is. */
const SLICE = 0.2,
  SLICES = 200;

/** Passes a volume of water along a way of cells, first to last, in slices that none of them is emptied by; `ends` are given each slice. */
function passAlong(runtime: Runtime, state: RunState, way: readonly number[], volume: number, ends: (slice: number) => void): void {
  const { cells } = runtime.assembly;
  const smallest = Math.min(...way.map((c) => cells[c].volume));
  const slices = Math.min(SLICES, Math.max(1, Math.ceil(volume / (SLICE * smallest))));
  for (let n = 0; n < slices; n++) {
    for (let k = way.length - 1; k > 0; k--) {
      const share = Math.min(1, volume / slices / cells[way[k - 1]].volume);
      for (let i = 0; i < FLOWING; i++) {
        const amount = state.y[offset(way[k - 1]) + i] * share;
        state.y[offset(way[k - 1]) + i] -= amount;
        state.y[offset(way[k]) + i] += amount;
      }
    }
    ends(volume / slices);
  }
}

/** Cells along the loop from one to another, in flow order; the first alone where the other is not reached. */
function wayTo(runtime: Runtime, from: number, to: number): number[] {
  const { order } = runtime.assembly;
  const at = order.indexOf(from);
  if (at < 0 || !order.includes(to)) return [from];
  const way = [from];
  for (let k = 1; way[way.length - 1] !== to; k++) way.push(order[(at + k) % order.length]);
  return way;
}

/**
 * Fills a volume back from upstream, stage by stage to the pump's tank, which is topped up with source water unless it gets other water.
 */
export function refill(runtime: Runtime, state: RunState, cell: number, volume: number, topped = true): void {
  const { sump } = runtime.assembly;
  // Where there is no sump upstream, or to the side, source water enters here.
  const way = sump >= 0 && runtime.assembly.order.includes(cell) ? wayTo(runtime, sump, cell) : [cell];
  passAlong(runtime, state, way, volume, (slice) => {
    if (topped) topUp(runtime, state, way[0], slice);
  });
}

/** Water over a rim to the ground, with all that flows in it, m³. */
export function spillFrom(runtime: Runtime, state: RunState, cell: number, volume: number): void {
  drawOff(runtime, state, cell, volume, -1);
  state.water.taken += volume;
}

/** Source water into a cell, m³; its volume is the caller's to mind. */
export function topUp(runtime: Runtime, state: RunState, cell: number, volume: number): void {
  for (let i = 0; i < FLOWING; i++) put(state, cell, i, runtime.source[i] * volume);
  state.water.put += volume;
  state.waterUsed += volume;
}

/** A component that leaves a stage: which, what share of it, and what it is where it comes to rest. */
type Leaving = readonly [component: number, share: number, becomes: number];

/** Lets water and what lies in a stage out, to the mineralisation tank that takes from it, else to the drain. */
function letOut(runtime: Runtime, state: RunState, cell: number, volume: number, leaving: readonly Leaving[]): void {
  const { mineral, cells, stages } = runtime.assembly;
  const takes = mineral?.takes.includes(cells[cell].stage) ?? false;
  const into = takes ? (stages.find((stage) => stage.id === mineral?.id)?.first ?? -1) : -1;
  drawOff(runtime, state, cell, volume, into);
  for (const [component, share, becomes] of leaving) {
    const amount = state.y[offset(cell) + component] * share;
    if (into >= 0) {
      state.y[offset(cell) + component] -= amount;
      state.y[offset(into) + becomes] += amount;
    } else {
      take(state, cell, component, amount);
      discharge(runtime, state, component, amount);
    }
  }
  refill(runtime, state, cell, volume, into < 0);
  if (into < 0) state.water.taken += volume;
  else displace(runtime, state, into, volume);
}

/** Opens a cone's valve: the sludge and a little water leave, to the drain or the mineralisation tank. @returns m³ drained */
export function drain(runtime: Runtime, state: RunState, cell: number): number {
  const { assembly, values } = runtime;
  const it = assembly.cells[cell];
  const o = offset(cell);
  const dry = values.matter.organicDry * (state.y[o + SF] + state.y[o + SL]) + values.matter.inertDry * state.y[o + SI];
  const volume = Math.min(0.6 * it.volume, dry / (values.kinetics.sludgeDensity * 1000) + Math.min(0.01, 0.05 * it.volume));
  disturb(runtime, state, cell);
  letOut(
    runtime,
    state,
    cell,
    volume,
    [SF, SL, SI, PO, PS].map((component): Leaving => [component, values.practice.drainedShare, component]),
  );
  state.work_h += 0.1;
  return volume;
}

/**
 * What a side tank receives pushes as much of its water back into the loop, where a person said, and on down to the pump's tank, which gave
 * it.
 */
function displace(runtime: Runtime, state: RunState, mineral: number, volume: number): void {
  const { assembly } = runtime;
  const target = assembly.stages.find((stage) => stage.id === assembly.mineral?.returnsTo);
  if (!target) return;
  passAlong(runtime, state, [mineral, ...wayTo(runtime, target.first, assembly.sump)], volume, () => undefined);
}

/** A share of the pore water of a disturbed bed gets into the water above it. */
export function disturb(runtime: Runtime, state: RunState, cell: number): void {
  const o = offset(cell);
  const share = runtime.values.kinetics.disturbance;
  const organics = state.y[o + PO] * share;
  const sulfide = state.y[o + PS] * share;
  state.y[o + PO] -= organics;
  state.y[o + SS] += organics;
  state.y[o + PS] -= sulfide;
  state.y[o + S2] += sulfide;
}

/**
 * Rinses a filter: caught solids leave with half its water, to the drain or the mineralisation tank; some film goes too.
 * @returns m³ used
 */
export function rinse(runtime: Runtime, state: RunState, cell: number): number {
  const it = runtime.assembly.cells[cell];
  const { practice } = runtime.values;
  const type = runtime.assembly.stages.find(({ id }) => id === it.stage)?.type;
  const way = type?.cleaned?.(runtime.values) ?? {
    water: practice.rinseWater,
    solids: practice.rinsedShare,
    nitrifiers: practice.rinsedNitrifiers,
    heterotrophs: practice.rinsedHeterotrophs,
  };
  const volume = way.water * it.volume;
  letOut(runtime, state, cell, volume, [
    [MF, way.solids, SF],
    [MS, way.solids, SL],
    [MI, way.solids, SI],
    [BA, way.nitrifiers, BA],
    [BN, way.nitrifiers, BN],
    [BH, way.heterotrophs, BH],
  ]);
  state.y[offset(cell) + CLOG] *= 1 - way.solids;
  if (!type?.cleanedBy?.byItself) state.work_h += 0.25;
  return volume;
}

/** Swaps a share of a cell's water for source water. */
export function exchange(runtime: Runtime, state: RunState, cell: number, share: number): number {
  const volume = runtime.assembly.cells[cell].volume * share;
  drawOff(runtime, state, cell, volume, -1);
  state.water.taken += volume;
  topUp(runtime, state, cell, volume);
  state.work_h += 0.2;
  return volume;
}

/** Pure water leaves as vapour and source water makes it up, at the sump (or the given cell). */
export function evaporate(runtime: Runtime, state: RunState, cell: number, volume: number): void {
  state.water.taken += volume;
  topUp(runtime, state, cell, volume);
}

/** Stages that clean themselves do so once they begin to block. */
export function cleanByThemselves(runtime: Runtime, state: RunState): void {
  for (const stage of runtime.assembly.stages) {
    if (!stage.type.cleanedBy?.byItself || !state.powerOn) continue;
    for (let c = stage.first; c < stage.first + stage.cells; c++) {
      if (clogging(runtime.assembly.cells[c], state.y, offset(c), runtime.values) > CLEANS_FROM) rinse(runtime, state, c);
    }
  }
}

/** Blockage from which a stage that cleans itself does: well before it lets water past. */
const CLEANS_FROM = 0.1;
