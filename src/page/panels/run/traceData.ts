// Turns the lived part of one quantity into the points and the comfort band of a small trace. Pure.
import type { ComfortBand } from '../../state/common/contract';
import { TINTS } from '../../state/common/tints';
import { readingAt } from '../../state/run/readings';
import { bandApplies } from '../../state/run/troubles';
import type { TintId, SeasonView } from '../../state/common/state';

export interface Trace {
  /** SVG path in a box 0…1000 by 0…100, y downwards */
  path: string;
  /** the branch it is compared with, in the same box; empty where there is none */
  ghostPath: string;
  low: number;
  high: number;
  /** the fine zone, as shares of the height from the top, or null where no band speaks */
  ease: { top: number; bottom: number } | null;
  /** values at the upper and lower edge of the box */
  top: number;
  bottom: number;
}

/** More points than this cannot be told apart in a small multiple. */
const MOST_POINTS = 240;

/** Value of a tint quantity at a stage: the sum of its variables, mean over the stage. */
export function tintReading(view: SeasonView, tint: TintId, stageId: string, hour: number): number {
  return TINTS[tint].variables.reduce((sum, variable) => sum + readingAt(view, stageId, variable, hour, 'inside'), 0);
}

/** Hours between the points of a course; nothing in a trace changes before another one is full. */
export function traceStep(last_h: number): number {
  return Math.max(1, Math.ceil(last_h / MOST_POINTS));
}

/** Where a value lies in the box of a trace: share of the height from the top. */
export function heightIn(trace: Pick<Trace, 'top' | 'bottom'>, value: number): number {
  return Math.min(1, Math.max(0, (trace.top - value) / (trace.top - trace.bottom)));
}

interface Course {
  hours: number[];
  values: number[];
}

/** Samples of the lived hours, no closer than can be told apart. */
function courseOf(view: SeasonView, tint: TintId, stageId: string, lived_h: number, last_h: number): Course {
  const step = traceStep(last_h);
  const hours: number[] = [];
  for (let hour = 0; hour < lived_h; hour += step) hours.push(hour);
  hours.push(lived_h);
  return { hours, values: hours.map((hour) => tintReading(view, tint, stageId, hour)) };
}

/** @param ghost another branch, as far as it was lived; both lines share one scale */
export function traceOf(
  view: SeasonView,
  comfort: readonly ComfortBand[],
  tint: TintId,
  stageId: string,
  lived_h: number,
  last_h: number,
  ghost: { season: SeasonView; lived_h: number } | null = null,
): Trace | null {
  const kind = view.stages.find((stage) => stage.id === stageId && stage.cells > 0)?.kind;
  if (kind === undefined) return null;
  const course = courseOf(view, tint, stageId, lived_h, last_h);
  const other = ghost === null ? null : courseOf(ghost.season, tint, stageId, ghost.lived_h, last_h);
  const low = Math.min(...course.values);
  const high = Math.max(...course.values);
  const least = Math.min(low, ...(other?.values ?? []));
  const most = Math.max(high, ...(other?.values ?? []));
  const band = comfort.find(
    (one) => bandApplies(one, kind) && (one.variable === TINTS[tint].variables[0] || (one.variable === 'solids' && tint === 'solids')),
  );
  const floor = tint === 'pH' || tint === 'oxygen' ? Math.min(least, band?.watchBelow ?? least) : 0;
  const ceiling = Math.max(most, band?.watchAbove ?? 0, tint === 'oxygen' ? TINTS.oxygen.high : 0, tint === 'pH' ? least + 0.5 : 0);
  const pad = Math.max(0.08 * (ceiling - floor), 1e-3);
  const bottom = tint === 'pH' || tint === 'oxygen' ? floor - pad : 0;
  const top = ceiling + pad;
  const y = (value: number): number => heightIn({ top, bottom }, value);
  const pathOf = ({ hours, values }: Course): string =>
    values
      .map((value, index) => `${index === 0 ? 'M' : 'L'}${((1000 * hours[index]) / last_h).toFixed(1)} ${(100 * y(value)).toFixed(1)}`)
      .join('');
  return {
    path: pathOf(course),
    ghostPath: other === null ? '' : pathOf(other),
    low,
    high,
    ease: band === undefined ? null : { top: y(band.watchAbove ?? top), bottom: y(band.watchBelow ?? bottom) },
    top,
    bottom,
  };
}
