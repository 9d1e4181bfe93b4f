// Whether a number matters: the mark beside it, from the comfort bands of whoever lives in that water.
import type { Mark } from '../store/state';
import { bandApplies, markAgainst } from '../store/troubles';
import type { ComfortBand } from './terms';

const RANK: Readonly<Record<Mark, number>> = { fine: 0, watch: 1, act: 2 };

/**
 * Worst mark over the judged variables at a stage.
 * @param values readings in the units that the names of the variables carry
 * @param places where the variable of each name stands in them
 * @returns null where nobody lives or no band speaks of these variables: a high value that is normal there is not marked
 */
export function markOf(bands: readonly ComfortBand[], kind: string, judged: readonly string[], values: Float64Array, places: ReadonlyMap<string, number>): Mark | null {
  let worst: Mark | null = null;
  for (let i = 0; i < bands.length; i += 1) {
    const band = bands[i];
    const place = places.get(band.variable);
    if (place === undefined || !bandApplies(band, kind) || !judged.includes(band.variable)) continue;
    const mark = markAgainst(band, values[place]);
    if (worst === null || RANK[mark] > RANK[worst]) worst = mark;
  }
  return worst;
}

/**
 * How far a value of the fish's water is from ease towards danger, in whole hundredths: 0 at the watch limit or better, 100 at the act limit or worse.
 * @param values readings, of which one is asked about
 * @param variable one that a band of the fish gives both limits for; without such a band the answer is 0
 */
export function fishDistress(bands: readonly ComfortBand[], variable: string, values: Float64Array, place: number): number {
  let worst = 0;
  for (let i = 0; i < bands.length; i += 1) {
    const band = bands[i];
    if (band.applies !== 'fish' || band.variable !== variable) continue;
    worst = Math.max(worst, past(band, 'watchAbove', 'actAbove', values, place), past(band, 'watchBelow', 'actBelow', values, place));
  }
  return worst;
}

type Limit = 'watchAbove' | 'actAbove' | 'watchBelow' | 'actBelow';

function past(band: ComfortBand, first: Limit, second: Limit, values: Float64Array, place: number): number {
  const watch = band[first];
  const act = band[second];
  if (watch === undefined || act === undefined || watch === act) return 0;
  return Math.round(100 * Math.max(0, Math.min(1, (values[place] - watch) / (act - watch)))) | 0;
}
