// Whether a number matters: the mark beside it, from the comfort bands of whoever lives in that water.
import type { Mark } from '../store/state';
import { bandApplies, verdictOf } from '../store/troubles';
import type { ComfortBand } from './terms';

const RANK: Readonly<Record<Mark, number>> = { fine: 0, watch: 1, act: 2 };

/**
 * Worst mark over the judged variables at a stage.
 * @param read value of a variable at the stage, in the unit its name carries
 * @returns null where nobody lives or no band speaks of these variables: a high value that is normal there is not marked
 */
export function markOf(bands: readonly ComfortBand[], kind: string, judged: readonly string[], read: (variable: string) => number): Mark | null {
  let worst: Mark | null = null;
  for (let i = 0; i < bands.length; i += 1) {
    const band = bands[i];
    if (!bandApplies(band, kind) || !judged.includes(band.variable)) continue;
    const { mark } = verdictOf(band, read(band.variable));
    if (worst === null || RANK[mark] > RANK[worst]) worst = mark;
  }
  return worst;
}

/**
 * How far a value of the fish's water is from ease towards danger: 0 at the watch limit or better, 1 at the act limit or worse.
 * @param variable one that a band of the fish gives both limits for; without such a band the answer is 0
 */
export function fishDistress(bands: readonly ComfortBand[], variable: string, value: number): number {
  let worst = 0;
  for (let i = 0; i < bands.length; i += 1) {
    const band = bands[i];
    if (band.applies !== 'fish' || band.variable !== variable) continue;
    worst = Math.max(worst, between(band.watchAbove, band.actAbove, value), between(band.watchBelow, band.actBelow, value));
  }
  return worst;
}

function between(watch: number | undefined, act: number | undefined, value: number): number {
  if (watch === undefined || act === undefined || watch === act) return 0;
  return Math.max(0, Math.min(1, (value - watch) / (act - watch)));
}
