// A meal: what is eaten goes to the gut, the rest sinks as coarse solids.
import { GUT, STATES } from '../model/components';
import { appetite, discomforts, fullRation, warmthOfAppetite } from '../model/organisms/fish/comfort';
import type { FishWater } from '../model/organisms/fish/comfort';
import { fishWater, readCell } from './reading';
import type { FeedState, FishState, RunState } from './runState';
import type { Runtime } from './runtime';

/** How crowded and how hungry the fish of a group are. */
export function wellbeing(runtime: Runtime, state: RunState, fish: FishState): { density: number; hunger: number } {
  const { assembly, values } = runtime;
  const f = values.fish[fish.species];
  const need = (f.basal / f.gain) * fish.mass;
  const hunger = state.day > fish.since && need > 0 ? Math.max(0, 1 - fish.eatenYesterday / need) : 0;
  // A unit's fish crowd in their unit; fish that are alike everywhere share the tank with all others.
  const units = fish.unit > 0 ? (assembly.stages.find(({ id }) => id === fish.tank)?.count ?? 1) : 1;
  const mass = fish.unit > 0 ? fish.mass : state.fish.reduce((sum, other) => sum + (other.tank === fish.tank ? other.mass : 0), 0);
  return { density: (mass / 1000) * (units / assembly.cells[fish.cell].volume), hunger };
}

/** What a group would eat in a day as it is now, g. */
function wishOf(runtime: Runtime, state: RunState, fish: FishState, water: FishWater): number {
  if (fish.number <= 0.5) return 0;
  const f = runtime.values.fish[fish.species];
  const parts = discomforts(f, water, wellbeing(runtime, state, fish));
  return fullRation(f, fish.mass / fish.number) * fish.mass * warmthOfAppetite(f, state.T_C) * appetite(f, water, parts);
}

/** Offers one meal of a tank's daily feed to all its fish; what they leave sinks, and in a tank without fish all of it. @returns g eaten */
export function meal(runtime: Runtime, state: RunState, feed: FeedState): number {
  const { values, uneaten } = runtime;
  const tank = runtime.assembly.stages.find(({ id }) => id === feed.tank);
  if (tank === undefined) return 0;
  const groups = state.fish.filter((fish) => fish.tank === feed.tank);
  const cell = tank.first;
  const o = cell * STATES;
  const offered = feed.g_d / feed.meals_h.length;
  state.put[GUT] += offered;
  const water = fishWater(readCell(runtime, state.y, cell), state.T_C);
  const wishes = groups.map((fish) => wishOf(runtime, state, fish, water));
  const wish = wishes.reduce((sum, one) => sum + one, 0);
  const eaten = wish > 0 ? Math.min(offered, (values.practice.mealStretch * wish) / feed.meals_h.length) : 0;
  state.y[o + GUT] += eaten;
  groups.forEach((fish, i) => {
    fish.eatenToday += wish > 0 ? (eaten * wishes[i]) / wish : 0;
  });
  const left = offered - eaten;
  if (left > 0) {
    uneaten.rows.forEach((row, i) => {
      // the column's own gut entry stands for the feed, which was never in the gut
      if (row !== GUT) state.y[o + row] += uneaten.coefficients[i] * left;
    });
  }
  return eaten;
}

/** g/d that the fish of a tank would eat and gain with nothing limiting but temperature. */
export function idealGain(runtime: Runtime, fish: FishState, feed_g: number, T_C: number, number: number): number {
  const f = runtime.values.fish[fish.species];
  if (number <= 0) return 0;
  const mass = fish.idealMass / number;
  const eaten = Math.min(feed_g, runtime.values.practice.mealStretch * fullRation(f, mass) * fish.idealMass * warmthOfAppetite(f, T_C));
  return f.gain * eaten - f.basal * fish.idealMass;
}
