// A meal: what is eaten goes to the gut, the rest sinks as coarse solids.
import { FISH, GUT, STATES } from '../model/components';
import { appetite, discomforts, fullRation, warmthOfAppetite, welfare } from '../model/organisms/fish/comfort';
import { fishWater, readCell } from './reading';
import type { FeedState, FishState, RunState } from './runState';
import type { Runtime } from './runtime';

/** How crowded and how hungry the fish of a tank are. */
export function wellbeing(runtime: Runtime, state: RunState, fish: FishState): { density: number; hunger: number } {
  const mass = state.y[fish.cell * STATES + FISH];
  const f = runtime.values[fish.species];
  const need = (f.basal / f.gain) * mass;
  const hunger = state.day > fish.since && need > 0 ? Math.max(0, 1 - fish.eatenYesterday / need) : 0;
  return { density: mass / 1000 / runtime.assembly.cells[fish.cell].volume, hunger };
}

/** Offers one meal of a tank's daily feed. @returns g eaten */
export function meal(runtime: Runtime, state: RunState, feed: FeedState, fish: FishState): number {
  const { values, uneaten } = runtime;
  const o = fish.cell * STATES;
  const offered = feed.g_d / feed.meals_h.length;
  state.put[GUT] += offered;
  let eaten = 0;
  if (fish.number > 0.5) {
    const mass = state.y[o + FISH] / fish.number;
    const water = fishWater(readCell(runtime, state.y, fish.cell), state.T_C);
    const f = values[fish.species];
    const wish = fullRation(f, mass) * state.y[o + FISH] * warmthOfAppetite(f, state.T_C) * appetite(f, water, welfare(discomforts(f, water, wellbeing(runtime, state, fish))));
    eaten = Math.min(offered, (values.practice.mealStretch * wish) / feed.meals_h.length);
  }
  state.y[o + GUT] += eaten;
  fish.eatenToday += eaten;
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
  const f = runtime.values[fish.species];
  if (number <= 0) return 0;
  const mass = fish.idealMass / number;
  const eaten = Math.min(feed_g, runtime.values.practice.mealStretch * fullRation(f, mass) * fish.idealMass * warmthOfAppetite(f, T_C));
  return f.gain * eaten - f.basal * fish.idealMass;
}
