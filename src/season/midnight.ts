// The books of a day, closed at midnight: deaths, ripe beds, evaporation, extents, warnings.
import { FISH, GUT, LEAF, STATES } from '../model/components';
import { clogging, sludgeFill } from '../model/forcing/solidsForcing';
import { survivors } from '../model/organisms/fish/comfort';
import { ID, PROCESSES } from '../model/processes/catalogue';
import { cutBed, plant } from './livestock';
import { lightOf } from './forcing';
import { lose } from './levels';
import type { FishState, RunState } from './runState';
import { offsetOf } from './runtime';
import type { Runtime } from './runtime';
import { liveIdealDay } from './scoring';
import { evaporate, take } from './transfers';
import type { SeasonEvent } from './trajectory';

/** The day's books: deaths, ripe beds, evaporation, extents, warnings. */
export function closeDay(
  runtime: Runtime,
  state: RunState,
  day: number,
  extents: Float64Array,
  cumulated: ReadonlyMap<FishState, number>,
  events: SeasonEvent[],
): void {
  const { assembly, values, data } = runtime;
  shareGrowth(runtime, state);
  for (const fish of state.fish) {
    const left = survivors(fish.number, cumulated.get(fish) ?? 0);
    const lost = fish.number - left;
    const o = offsetOf(fish.cell);
    if (fish.number > 0 && state.y[o + FISH] > 0) {
      const gone = Math.min(fish.mass * (lost / fish.number), state.y[o + FISH]);
      take(state, fish.cell, GUT, (state.y[o + GUT] * gone) / state.y[o + FISH]);
      take(state, fish.cell, FISH, gone);
      fish.mass -= gone;
    }
    if (Math.round(fish.number) > Math.round(left))
      events.push({
        hour: day * 24 + 23,
        kind: 'fishDied',
        stage: fish.tank,
        amount: Math.round(fish.number) - Math.round(left),
        byPerson: false,
      });
    fish.number = left;
    fish.eatenYesterday = fish.eatenToday;
  }
  for (const bed of state.beds) {
    let leaf = 0;
    for (let c = bed.first; c < bed.first + bed.cells; c++) leaf += state.y[offsetOf(c) + LEAF];
    if (leaf >= bed.plants * values.crops[bed.crop].ripe && bed.replant) {
      const tell = (kind: SeasonEvent['kind'], stage: string, amount: number): void => {
        events.push({ hour: day * 24 + 23, kind, stage, amount, byPerson: false });
      };
      const area = assembly.cells[bed.first].floor * bed.cells;
      cutBed(runtime, state, bed.stage, tell);
      if (values.crops[bed.crop].cutShare >= 1)
        plant(runtime, state, bed.stage, { kind: bed.crop, plants_m2: bed.plants / area, replant: true }, day + 1, () => undefined);
    }
  }
  liveIdealDay(runtime, state, lightOf(runtime, state, day));
  if (!runtime.plan.rig) {
    let drunk = 0;
    for (const bed of state.beds)
      for (let c = bed.first; c < bed.first + bed.cells; c++)
        drunk += extents[c * PROCESSES + ID.leafGrowth] * values.crops[bed.crop].waterUse;
    const volume = (state.evaporated + drunk) / 1000;
    if (runtime.circuit) lose(runtime, state, volume);
    else evaporate(runtime, state, Math.max(0, assembly.sump), Math.min(volume, 0.2 * assembly.cells[Math.max(0, assembly.sump)].volume));
  }
  state.evaporated = 0;
  for (let i = 0; i < extents.length; i++) state.extents[i % PROCESSES] += extents[i];
  for (let i = 0; i < STATES; i++) state.clipped[i] += data.clipped[i];
  for (const amount of data.held) state.held += amount;
  state.h.set(data.h1);
  state.constants.set(data.constants);
  warn(runtime, state, day, events);
}

/** What the fish of a tank gained in the day is shared among its groups by what each ate and burnt. */
function shareGrowth(runtime: Runtime, state: RunState): void {
  for (const cell of new Set(state.fish.map((fish) => fish.cell))) {
    const groups = state.fish.filter((fish) => fish.cell === cell);
    const before = groups.reduce((sum, fish) => sum + fish.mass, 0);
    const now = state.y[offsetOf(cell) + FISH];
    const expected = groups.map(
      (fish) => runtime.values.fish[fish.species].gain * fish.eatenToday - runtime.values.fish[fish.species].basal * fish.mass,
    );
    const rest = now - before - expected.reduce((sum, gain) => sum + gain, 0);
    groups.forEach((fish, i) => {
      fish.mass = Math.max(0, groups.length === 1 ? now : fish.mass + expected[i] + (before > 0 ? (rest * fish.mass) / before : 0));
    });
  }
}

function warn(runtime: Runtime, state: RunState, day: number, events: SeasonEvent[]): void {
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
