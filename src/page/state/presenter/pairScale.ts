// Two seasons shown side by side share one scale of the lens: it reaches as far as the water of either ever does. Pure.
import { LENSES, type Lens } from '../common/lenses';
import type { LensId, SeasonView } from '../common/state';

/** Ends of a scale within a power of ten: numbers that people can halve in their heads. */
const ENDS = [1, 1.5, 2, 3, 4, 5, 6, 8, 10];
/** The usual scale stays as long as the water fills at least this share of it. */
const FILLED = 0.5;

/** The largest number the lens shows in any water of a season, at any hour. */
function largest(view: SeasonView, lens: Lens): number {
  const columns = lens.variables.map((variable) => view.column[variable]);
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

/** The lens with a scale for both seasons. One that does not begin at nothing (pH) keeps its usual ends. */
export function sharedScale(id: LensId, seasons: readonly SeasonView[]): Lens {
  const lens = LENSES[id];
  const most = Math.max(...seasons.map((season) => largest(season, lens)));
  if (lens.low !== 0 || !(most > 0) || (most <= lens.high && most >= FILLED * lens.high)) return lens;
  const high = endFor(most);
  return { ...lens, high, decimals: decimalsFor(high) };
}
