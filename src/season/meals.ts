// A meal: what is eaten goes to the gut, the rest sinks as coarse solids.
import { FISH, GUT, STATES } from '../model/components';
import { appetite, discomforts, fullRation, warmthOfAppetite, welfare } from '../model/organisms/fish/comfort';
import { fishWater, readCell } from './reading';
import type { FeedState, FishState, RunState } from './runState';
import type { Runtime } from './runtime';

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
    const wish = fullRation(values, mass) * state.y[o + FISH] * warmthOfAppetite(values, state.T_C) * appetite(values, water, welfare(discomforts(values, water)));
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
  const { values } = runtime;
  if (number <= 0) return 0;
  const mass = fish.idealMass / number;
  const eaten = Math.min(feed_g, values.practice.mealStretch * fullRation(values, mass) * fish.idealMass * warmthOfAppetite(values, T_C));
  return values.tilapia.gain * eaten - values.tilapia.basal * fish.idealMass;
}
