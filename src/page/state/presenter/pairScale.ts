// Two seasons shown side by side share one scale of the tint: it reaches as far as the water of either ever does. Pure.
import { TINTS, type Tint } from '../common/tints';
import type { TintId, SeasonView } from '../common/state';

/** Ends of a scale within a power of ten: numbers that people can halve in their heads. */
const ENDS = [1, 1.5, 2, 3, 4, 5, 6, 8, 10];
/** The usual scale stays as long as the water fills at least this share of it. */
const FILLED = 0.5;

/** The largest number the tint shows in any water of a season, at any hour. */
function largest(view: SeasonView, tint: Tint): number {
  const columns = tint.variables.map((variable) => view.column[variable]);
  const width = view.variables.length;
  let most = -Infinity;
  for (const { hourly } of view.days) {
    for (let row = 0; row < hourly.length; row += width) {
      let sum = 0;
      for (const column of columns) sum += hourly[row + column];
      if (sum > most) most = sum;
    }
  }
  return most;
}

/** The smallest end of a scale that a number does not pass. */
export function endFor(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most) + 1e-9);
  return (ENDS.find((end) => end * power >= most * (1 - 1e-9)) ?? 10) * power;
}

/** Decimals that a number needs beside others up to this size. */
export function decimalsFor(most: number): number {
  return most < 1 ? 2 : most < 50 ? 1 : 0;
}

/** The tint with a scale for both seasons. One that does not begin at nothing (pH) keeps its usual ends. */
export function sharedScale(id: TintId, seasons: readonly SeasonView[]): Tint {
  const tint = TINTS[id];
  const most = Math.max(...seasons.map((season) => largest(season, tint)));
  if (tint.low !== 0 || !(most > 0) || (most <= tint.high && most >= FILLED * tint.high)) return tint;
  const high = endFor(most);
  return { ...tint, high, decimals: decimalsFor(high) };
}
