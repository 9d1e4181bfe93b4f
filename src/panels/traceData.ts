// Turns the lived part of one quantity into the points and the comfort band of a small trace. Pure.
import type { ComfortBand } from '../store/contract';
import { LENSES } from '../store/lenses';
import { readingAt } from '../store/readings';
import { bandApplies } from '../store/troubles';
import type { LensId, SeasonView } from '../store/state';

export interface Trace {
  /** SVG path in a box 0…1000 by 0…100, y downwards */
  path: string;
  low: number;
  high: number;
  /** the fine zone, as shares of the height from the top, or null where no band speaks */
  ease: { top: number; bottom: number } | null;
  /** the present value, and where it lies: shares of width and height */
  now: { value: number; x: number; y: number };
}

/** More points than this cannot be told apart in a small multiple. */
const MOST_POINTS = 240;

/** Value of a lens quantity at a stage: the sum of its variables, mean over the stage. */
export function lensReading(view: SeasonView, lens: LensId, stageId: string, hour: number): number {
  return LENSES[lens].variables.reduce((sum, variable) => sum + readingAt(view, stageId, variable, hour, 'inside'), 0);
}

export function traceOf(view: SeasonView, comfort: readonly ComfortBand[], lens: LensId, stageId: string, lived_h: number, now_h: number, last_h: number): Trace | null {
  const kind = view.stages.find((stage) => stage.id === stageId && stage.cells > 0)?.kind;
  if (kind === undefined) return null;
  const step = Math.max(1, Math.ceil(last_h / MOST_POINTS));
  const hours: number[] = [];
  for (let hour = 0; hour < lived_h; hour += step) hours.push(hour);
  hours.push(lived_h);
  const values = hours.map((hour) => lensReading(view, lens, stageId, hour));
  const low = Math.min(...values);
  const high = Math.max(...values);
  const band = comfort.find((one) => bandApplies(one, kind) && (one.variable === LENSES[lens].variables[0] || one.variable === 'solids' && lens === 'solids'));
  const floor = lens === 'pH' || lens === 'oxygen' ? Math.min(low, band?.watchBelow ?? low) : 0;
  const ceiling = Math.max(high, band?.watchAbove ?? 0, lens === 'oxygen' ? LENSES.oxygen.high : 0, lens === 'pH' ? low + 0.5 : 0);
  const pad = Math.max(0.08 * (ceiling - floor), 1e-3);
  const bottom = lens === 'pH' || lens === 'oxygen' ? floor - pad : 0;
  const top = ceiling + pad;
  const y = (value: number): number => Math.min(1, Math.max(0, (top - value) / (top - bottom)));
  const path = values.map((value, index) => `${index === 0 ? 'M' : 'L'}${((1000 * hours[index]) / last_h).toFixed(1)} ${(100 * y(value)).toFixed(1)}`).join('');
  const present = lensReading(view, lens, stageId, now_h);
  return {
    path, low, high,
    ease: band === undefined ? null : { top: y(band.watchAbove ?? top), bottom: y(band.watchBelow ?? bottom) },
    now: { value: present, x: now_h / last_h, y: y(present) },
  };
}
