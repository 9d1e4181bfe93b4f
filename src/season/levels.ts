// Water finds its level: what the pump's tank gains and loses, what runs down when the pump stops, what spills over a rim, when the pump
// draws air.
import { drawsAir, leastWater_m3 } from '../model/hydraulics/pump';
import { FLOWING, STATES } from '../model/components';
import { clogging } from '../model/forcing/solidsForcing';
import type { StageEntry } from './assemble';
import { runCircuit, usualCurve } from './circuit';
import type { CircuitStage } from './circuit';
import type { RunState } from './runState';
import type { Runtime } from './runtime';
import { spillFrom, topUp } from './transfers';
import type { SeasonEvent } from './trajectory';

const known = new WeakMap<StageEntry, readonly number[]>();

function cellsOf(entry: StageEntry): readonly number[] {
  const found = known.get(entry);
  if (found) return found;
  const made = Array.from({ length: entry.cells }, (_, i) => entry.first + i);
  known.set(entry, made);
  return made;
}

/** The tank that the pump stands in; none on a bench. */
const pumpTankOf = (runtime: Runtime): StageEntry | undefined => runtime.circuit?.stages.at(-1)?.entry;

/** m³/d that runs over all rims now. */
export const spilling_m3_d = (state: RunState): number => state.run.spill_m3_d.reduce((sum, spill) => sum + spill, 0);

function volumeOf(runtime: Runtime, entry: StageEntry): number {
  let sum = 0;
  for (let c = entry.first; c < entry.first + entry.cells; c++) sum += runtime.assembly.cells[c].volume;
  return sum;
}

/** Makes a tank larger or smaller by a volume of water whose matter has been moved, m³; its cells share it. */
function resize(runtime: Runtime, state: RunState, entry: StageEntry, volume: number): void {
  for (const c of cellsOf(entry)) {
    const cell = runtime.assembly.cells[c];
    cell.volume += volume / entry.cells;
    state.volumes[c] = cell.volume;
  }
}

/** What flows along in one pouring. */
const moved = new Float64Array(FLOWING);

/** Water with all that flows in it, from one tank to another, m³. */
function pour(runtime: Runtime, state: RunState, from: StageEntry, to: StageEntry, volume: number): void {
  moved.fill(0);
  for (const c of cellsOf(from)) {
    const share = volume / from.cells / runtime.assembly.cells[c].volume;
    for (let i = 0; i < FLOWING; i++) {
      const amount = state.y[c * STATES + i] * share;
      state.y[c * STATES + i] -= amount;
      moved[i] += amount;
    }
  }
  for (const c of cellsOf(to)) for (let i = 0; i < FLOWING; i++) state.y[c * STATES + i] += moved[i] / to.cells;
  resize(runtime, state, from, -volume);
  resize(runtime, state, to, volume);
}

/** Loses water from the pump's tank without its matter (vapour), or with matter booked elsewhere (what flowed off and spilled), m³. */
export function lose(runtime: Runtime, state: RunState, volume: number): void {
  const tank = pumpTankOf(runtime);
  if (!tank || volume === 0) return;
  const least = BELOW_INTAKE * runtime.usualVolume;
  const lost = Math.min(volume, Math.max(0, volumeOf(runtime, tank) - least));
  resize(runtime, state, tank, -lost);
  if (lost < volume) state.drewAir = true;
  state.water.taken += lost;
}

/** The float valve gives source water until the pump's tank stands as usual. @param days since it last could */
export function floatFill(runtime: Runtime, state: RunState, days: number): void {
  const tank = pumpTankOf(runtime);
  if (!tank || !state.floatValve) return;
  const missing = runtime.usualVolume - volumeOf(runtime, tank);
  if (missing > 1e-9) fill(runtime, state, tank, Math.min(missing, runtime.values.hydraulics.floatRate * days));
}

/** Source water into a tank, m³; its level rises where it is the pump's, elsewhere it runs on to that. */
export function fill(runtime: Runtime, state: RunState, entry: StageEntry, volume: number): void {
  const tank = pumpTankOf(runtime) ?? entry;
  const cells = cellsOf(entry);
  for (const c of cells) topUp(runtime, state, c, volume / cells.length);
  resize(runtime, state, entry, volume);
  if (tank !== entry) pour(runtime, state, entry, tank, volume);
}

/** Share of the pump tank's usual water that lies below the pump's intake and stays. */
const BELOW_INTAKE = 0.12;
/** Share of a tank's usual water that never runs out of it by its outlet. */
const KEPT = 0.4;

/** Water in the pump's tank against its usual, m. */
function tankLevel(runtime: Runtime, tank: CircuitStage): number {
  return (volumeOf(runtime, tank.entry) - runtime.usualVolume) / tank.area_m2;
}

/**
 * Lets the pump and the levels settle for what is now: turned on or off, clogged or rinsed, tank full or low.
 * A pump that drew air stays off until somebody looks after the loop: at midnight's round, or when something is done.
 * @param on whether pump and power are on
 * @param attended whether somebody looks after it now
 */
export function settle(runtime: Runtime, state: RunState, on: boolean, attended: boolean, hour: number, events: SeasonEvent[]): void {
  const { circuit } = runtime;
  if (!circuit) return;
  const { stages } = circuit;
  const tank = stages[stages.length - 1];
  const held = volumeOf(runtime, tank.entry);
  if ((state.drewAir || drawsAir(held, runtime.usualVolume, runtime.values.hydraulics)) && on && !state.dry) {
    state.dry = true;
    events.push({ hour, kind: 'pumpDry', stage: tank.entry.id, amount: held * 1000, byPerson: false });
  } else if (state.dry && attended && held > runtime.values.hydraulics.dryRestart * runtime.usualVolume) state.dry = false;
  state.drewAir = false;
  const curve = on && !state.dry ? usualCurve(circuit, state.flow_m3_d) : { maxHead_m: 0, maxFlow_m3_h: 0 };
  const clog = stages.map(({ entry }) =>
    entry.cells === 0 ? 0 : clogging(runtime.assembly.cells[entry.first], state.y, entry.first * STATES, runtime.values),
  );
  // Nothing moves water while the pump, the tank's level, blockage and warmth are as they were.
  const key = [
    curve.maxHead_m,
    curve.maxFlow_m3_h,
    Math.round(100 * tankLevel(runtime, tank)),
    Math.round(state.T_C / 4),
    ...clog.map((share) => Math.round(50 * share)),
  ].join(' ');
  if (key === state.settledFor) return;
  state.settledFor = key;
  const now = runCircuit(circuit, curve, tankLevel(runtime, tank), clog, state.T_C);
  // What stands higher or lower than before comes from the pump's tank or goes to it, as far as it has water.
  stages.slice(0, -1).forEach((stage, i) => {
    const rise = (now.level_m[i] - state.run.level_m[i]) * stage.area_m2;
    const spare =
      rise > 0
        ? Math.max(0, volumeOf(runtime, tank.entry) - BELOW_INTAKE * runtime.usualVolume)
        : Math.max(0, volumeOf(runtime, stage.entry) - KEPT * stage.entry.type.volume(stage.entry.sizes, runtime.values));
    const moved = Math.min(Math.abs(rise), spare);
    if (moved < 1e-9) now.level_m[i] = state.run.level_m[i];
    else if (rise > 0) pour(runtime, state, tank.entry, stage.entry, moved);
    else pour(runtime, state, stage.entry, tank.entry, moved);
    if (moved >= 1e-9) now.level_m[i] = state.run.level_m[i] + (rise > 0 ? moved : -moved) / stage.area_m2;
  });
  now.level_m[stages.length - 1] = tank.lip_m + tankLevel(runtime, tank);
  const over = volumeOf(runtime, tank.entry) - runtime.usualVolume - (tank.rim_m - tank.lip_m) * tank.area_m2;
  if (over > 1e-9) {
    for (const c of cellsOf(tank.entry)) spillFrom(runtime, state, c, over / tank.entry.cells);
    resize(runtime, state, tank.entry, -over);
    now.level_m[stages.length - 1] = tank.rim_m;
    events.push({ hour, kind: 'spilled', stage: tank.entry.id, amount: over * 1000, byPerson: false });
  }
  stages.forEach((stage, i) => {
    if (now.spill_m3_d[i] > 1e-6 && !(state.run.spill_m3_d[i] > 1e-6))
      events.push({ hour, kind: 'spilled', stage: stage.entry.id, amount: (now.spill_m3_d[i] / 24) * 1000, byPerson: false });
  });
  state.run = {
    flow_m3_d: now.flow_m3_d,
    level_m: now.level_m,
    arriving_m3_d: now.arriving_m3_d,
    spill_m3_d: now.spill_m3_d,
    power_W: now.power_W,
  };
}

/** Hours until the pump's tank runs dry by what spills; whole quarters, at least one. */
export function hoursToTurn(runtime: Runtime, state: RunState): number {
  const tank = pumpTankOf(runtime);
  if (!tank) return Infinity;
  const held = volumeOf(runtime, tank);
  const gains = (state.floatValve ? runtime.values.hydraulics.floatRate : 0) - spilling_m3_d(state);
  if (state.dry || gains >= 0) return Infinity;
  const days = (0.9 * leastWater_m3(runtime.usualVolume, runtime.values.hydraulics) - held) / gains;
  return Math.max(1, Math.floor(days * 96)) / 4;
}
