// Whether a number matters: the mark beside it, and how far fish are from ease, from the comfort bands of whoever lives in that water.
import type { Mark } from '../../state/common/state';
import { bandApplies } from '../../state/run/troubles';
import type { ComfortBand } from '../kit/terms';

/** Marks from the best to the worst; what stands for none. */
const MARKS = ['fine', 'watch', 'act'] as const;
const NONE = -1;

/** The limits that hold for one number in the picture, as plain lists, so that judging it each time makes nothing anew. */
export class Limits {
  private readonly places: Int32Array;
  private readonly watchBelow: Float64Array;
  private readonly actBelow: Float64Array;
  private readonly watchAbove: Float64Array;
  private readonly actAbove: Float64Array;

  /**
   * @param kind of the stage that the number belongs to: a value that is normal where nobody lives is not marked
   * @param judged variables behind the tint
   * @param places where the reading of each variable stands among the values
   */
  constructor(bands: readonly ComfortBand[], kind: string, judged: readonly string[], places: ReadonlyMap<string, number>) {
    const held = bands.filter((band) => bandApplies(band, kind) && judged.includes(band.variable) && places.has(band.variable));
    this.places = Int32Array.from(held, ({ variable }) => places.get(variable) ?? 0);
    this.watchBelow = Float64Array.from(held, (band) => band.watchBelow ?? -Infinity);
    this.actBelow = Float64Array.from(held, (band) => band.actBelow ?? -Infinity);
    this.watchAbove = Float64Array.from(held, (band) => band.watchAbove ?? Infinity);
    this.actAbove = Float64Array.from(held, (band) => band.actAbove ?? Infinity);
  }

  /** Worst mark over the limits. @returns null where there are none */
  mark(values: Float64Array): Mark | null {
    let worst = NONE;
    for (let i = 0; i < this.places.length; i += 1) {
      const value = values[this.places[i]];
      const found =
        value < this.actBelow[i] || value > this.actAbove[i] ? 2 : value < this.watchBelow[i] || value > this.watchAbove[i] ? 1 : 0;
      if (found > worst) worst = found;
    }
    return worst === NONE ? null : MARKS[worst];
  }
}

/** Steps of a reading of the fish's water that are told apart; what lies beyond counts as the last. */
const MOST_STEPS = 400;

/**
 * How far the fish's water is from ease towards danger at each step of a reading, in whole hundredths: 0 at the watch limit or better, 100
 * at the act limit or worse.
 * @param variable one that a band of the fish gives both limits for; without such a band it is 0 throughout
 * @param size of a step, in the reading's unit
 */
export function fishDistress(bands: readonly ComfortBand[], variable: string, size: number): Uint8Array {
  const held = bands.filter((band) => band.applies === 'fish' && band.variable === variable);
  return Uint8Array.from({ length: MOST_STEPS + 1 }, (_, step) =>
    held.reduce(
      (worst, band) =>
        Math.max(worst, past(band.watchAbove, band.actAbove, step * size), past(band.watchBelow, band.actBelow, step * size)),
      0,
    ),
  );
}

function past(watch: number | undefined, act: number | undefined, value: number): number {
  if (watch === undefined || act === undefined || watch === act) return 0;
  return Math.round(100 * Math.max(0, Math.min(1, (value - watch) / (act - watch))));
}

/** Distress at a step that may lie beyond those told apart. */
export const distressAt = (distress: Uint8Array, step: number): number => distress[step < 0 ? 0 : step > MOST_STEPS ? MOST_STEPS : step];
