// A small trace for paper: axes at round numbers, limits of comfort, the course as a path. Pure; drawn by TraceFigure.
import type { ComfortBand } from '../../state/common/contract';
import { readingAt } from '../../state/run/readings';
import type { SeasonView } from '../../state/common/state';
import { bandApplies } from '../../state/run/troubles';
import { toShown } from '../../../words/units';

export const TRACE_BOX = { width: 200, height: 100, left: 30, right: 4, top: 6, bottom: 16 } as const;
const INNER_WIDTH = TRACE_BOX.width - TRACE_BOX.left - TRACE_BOX.right;
const INNER_HEIGHT = TRACE_BOX.height - TRACE_BOX.top - TRACE_BOX.bottom;
/** More points than this cannot be told apart on paper. */
const MOST_POINTS = 240;
const STEPS = [1, 2, 2.5, 5, 10] as const;
/** Intervals of an axis: two where it begins at nothing. */
const INTERVALS = 2;

export interface PaperTrace {
  path: string;
  low: number;
  high: number;
  last: number;
  /** numbers beside the axis, in the unit shown, and where they stand */
  ticks: { value: number; y: number; decimals: number }[];
  /** limits of comfort within the axis */
  limits: number[];
  days: { day: number; x: number }[];
}

/** A round step that takes the span in few intervals. */
export function roundStep(span: number): number {
  if (!(span > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(span / INTERVALS));
  return (STEPS.find((step) => step * power * INTERVALS >= span * (1 - 1e-9)) ?? 10) * power;
}

/** Round ends of an axis around numbers. @param fromZero whether it begins at nothing */
export function axisOf(low: number, high: number, fromZero: boolean): { bottom: number; top: number; step: number } {
  const step = roundStep(Math.max(high - (fromZero ? 0 : low), 1e-3));
  const bottom = fromZero ? 0 : Math.floor(low / step + 1e-9) * step;
  return { bottom, top: bottom + step * Math.max(INTERVALS, Math.ceil((high - bottom) / step - 1e-9)), step };
}

const decimalsOf = (step: number): number =>
  Math.max(
    0,
    Math.min(
      3,
      -Math.floor(Math.log10(step) + 1e-9)
        + (Number.isInteger(Number((step / 10 ** Math.floor(Math.log10(step) + 1e-9)).toFixed(6))) ? 0 : 1),
    ),
  );

/** @param last_h hours that the axis of days spans */
export function paperTraceOf(
  view: SeasonView,
  comfort: readonly ComfortBand[],
  variable: string,
  stageId: string,
  lived_h: number,
  last_h: number,
): PaperTrace | null {
  const kind = view.stages.find((stage) => stage.id === stageId && stage.cells > 0)?.kind;
  if (kind === undefined || lived_h <= 0) return null;
  const hourStep = Math.max(1, Math.ceil(last_h / MOST_POINTS));
  const hours: number[] = [];
  for (let hour = 0; hour < lived_h; hour += hourStep) hours.push(hour);
  hours.push(lived_h);
  const values = hours.map((hour) => toShown(variable, readingAt(view, stageId, variable, hour, 'inside')));
  if (values.some((value) => !Number.isFinite(value))) return null;
  const low = Math.min(...values);
  const high = Math.max(...values);
  const { bottom, top, step } = axisOf(low, high, variable !== 'pH' && variable !== 'T_C');
  const y = (value: number): number => TRACE_BOX.top + (INNER_HEIGHT * (top - value)) / (top - bottom);
  const x = (hour: number): number => TRACE_BOX.left + (INNER_WIDTH * hour) / last_h;
  const band = comfort.find((one) => one.variable === variable && bandApplies(one, kind));
  const days = last_h / 24;
  return {
    path: values.map((value, index) => `${index === 0 ? 'M' : 'L'}${x(hours[index]).toFixed(1)} ${y(value).toFixed(1)}`).join(''),
    low,
    high,
    last: values[values.length - 1],
    ticks: Array.from({ length: Math.round((top - bottom) / step) + 1 }, (_, n) => ({
      value: bottom + n * step,
      y: y(bottom + n * step),
      decimals: decimalsOf(step),
    })),
    limits: [band?.watchBelow, band?.watchAbove]
      .flatMap((limit) => (limit === undefined ? [] : [toShown(variable, limit)]))
      .filter((limit) => limit > bottom && limit < top)
      .map(y),
    days: [0, Math.round(days / 2), days].map((day) => ({ day, x: x(24 * day) })),
  };
}
