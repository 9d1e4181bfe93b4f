// The books of a day, closed at midnight: deaths, ripe beds, evaporation, extents, warnings.
import { FISH, GUT, LEAF, STATES } from '../model/components';
import { clogging, sludgeFill } from '../model/forcing/solidsForcing';
import { survivors } from '../model/organisms/fish/comfort';
import { ID, PROCESSES } from '../model/processes/catalogue';
import { cutBed, plant } from './deeds';
import type { RunState } from './runState';
import { offsetOf } from './runtime';
import type { Runtime } from './runtime';
import { liveIdealDay } from './scoring';
import { evaporate, take } from './transfers';
import type { SeasonEvent } from './trajectory';

/** The day's books: deaths, ripe beds, evaporation, extents, warnings. */
export function closeDay(runtime: Runtime, state: RunState, day: number, extents: Float64Array, cumulated: ReadonlyMap<string, number>, events: SeasonEvent[]): void {
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
    if (leaf >= bed.plants * values[bed.crop].ripe && bed.replant) {
      const tell = (kind: SeasonEvent['kind'], stage: string, amount: number): void => { events.push({ hour: day * 24 + 23, kind, stage, amount, byPerson: false }); };
      const area = assembly.cells[bed.first].floor * bed.cells;
      cutBed(runtime, state, bed.stage, tell);
      plant(runtime, state, bed.stage, { kind: bed.crop, plants_m2: bed.plants / area, replant: true }, day + 1, () => undefined);
    }
  }
  liveIdealDay(runtime, state, runtime.weather.light[Math.min(day, runtime.weather.light.length - 1)]);
  if (!runtime.plan.rig) {
    const surface = assembly.cells.reduce((sum, cell) => sum + cell.surface, 0);
    let drunk = 0;
    for (const bed of state.beds) for (let c = bed.first; c < bed.first + bed.cells; c++) drunk += extents[c * PROCESSES + ID.leafGrowth] * values[bed.crop].waterUse;
    const volume = (values.practice.evaporation * surface + drunk) / 1000;
    evaporate(runtime, state, assembly.sump >= 0 ? assembly.sump : 0, Math.min(volume, 0.2 * assembly.cells[Math.max(0, assembly.sump)].volume));
  }
  for (let i = 0; i < extents.length; i++) state.extents[i % PROCESSES] += extents[i];
  for (let i = 0; i < STATES; i++) state.clipped[i] += data.clipped[i];
  for (const amount of data.held) state.held += amount;
  state.h.set(data.h);
  state.constants.set(data.constants);
  warn(runtime, state, day, events);
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
