// What moving parts read off the season. Each part asks once, when it is made; before every frame all that was asked for is read in one
// pass into plain arrays, and parts look there by the number they were given. Nothing is looked up by name, and nothing made anew, in a
// frame. Parts that move only when a reading has moved visibly compare its whole steps: fractions are boxed wherever a function is not
// compiled.
import type { Tint } from '../../state/common/tints';
import type { SeasonView } from '../../state/common/state';
import { PALE_BAND } from './palette';

/** Instead of a cell: the whole stage (mean of its cells, sum for amounts), or its last cell. */
export const WHOLE = -1;
export const LAST = -2;

interface Wish {
  stage: string;
  variable: string;
  otherwise: number;
  cell: number;
}
interface Water {
  stage: string;
  cell: number;
}
/** Where the cells of a wish lie in a row of output. */
interface Place {
  first: number;
  count: number;
}

/** Instead of a figure: none is told; one that is not nothing, but less than half of the last decimal. */
export const NO_FIGURE = -(2 ** 30);
export const TRACE = 1 - 2 ** 30;

const BANDS = 8;
const SOLIDS = { both: 'solids', coarse: 'solidsCoarse_mg_L', fine: 'solidsFine_mg_L' } as const;
const NONE = new Float32Array(0);

export class Dials {
  /** readings of the moment, by the numbers that `want` gave; what is asked for otherwise where no season tells */
  at = new Float64Array(64);
  /** what the tint shows, NaN where no season tells, and the band 0–8 that colours it, by the numbers that `water` gave */
  shown = new Float64Array(32);
  bands = new Uint8Array(32);
  /**
   * what the tint shows, in units of its last decimal; NO_FIGURE where no season tells, TRACE for more than nothing that would be rounded
   * to it
   */
  figures = new Int32Array(32);
  /** readings in whole steps, by the numbers that `step` gave */
  steps = new Int32Array(64);
  /** place and size of each of them, and their count */
  private stepPlace = new Int32Array(64);
  private stepSize = new Float64Array(64);
  private stepped = 0;
  private readonly wishes: Wish[] = [];
  private readonly waters: Water[] = [];
  private readonly numbers = new Map<string, number>();
  private view: SeasonView | null = null;
  private tint: Tint | null = null;
  private stale = true;
  private first = new Int32Array(0);
  private count = new Int32Array(0);
  private column = new Int32Array(0);
  /** a second column that is added to the first, −1 for none */
  private also = new Int32Array(0);
  private share = new Float64Array(0);
  private waterFirst = new Int32Array(0);
  private waterCount = new Int32Array(0);
  private tintColumns = new Int32Array(0);

  /** @param addsUp whether a variable adds up over the cells of a stage; the others are averaged */
  constructor(private readonly addsUp: (variable: string) => boolean) {}

  /**
   * Asks for a variable of a stage; "solids" is the sum of coarse and fine.
   * @param otherwise what stands there while no season tells it
   * @param cell counted from the inlet, or WHOLE
   * @returns where it is found in `at`
   */
  want(stage: string, variable: string, otherwise: number, cell: number = WHOLE): number {
    const known = this.numbers.get(`${stage}/${variable}/${cell}/${otherwise}`);
    if (known !== undefined) return known;
    const number = this.wishes.push({ stage, variable, otherwise, cell }) - 1;
    this.numbers.set(`${stage}/${variable}/${cell}/${otherwise}`, number);
    if (number >= this.at.length) this.at = grown(this.at, new Float64Array(2 * number));
    this.at[number] = otherwise;
    this.stale = true;
    return number;
  }

  /**
   * Asks for a reading in whole steps, each as small as an eye can tell.
   * @param place where `want` put the reading
   * @param size of a step, in the reading's unit
   * @returns where it is found in `steps`
   */
  step(place: number, size: number): number {
    for (let i = 0; i < this.stepped; i += 1) if (this.stepPlace[i] === place && this.stepSize[i] === size) return i;
    const number = this.stepped;
    this.stepped += 1;
    if (number >= this.steps.length) {
      this.steps = grown(this.steps, new Int32Array(2 * number));
      this.stepPlace = grown(this.stepPlace, new Int32Array(2 * number));
      this.stepSize = grown(this.stepSize, new Float64Array(2 * number));
    }
    this.stepPlace[number] = place;
    this.stepSize[number] = size;
    this.steps[number] = Math.round(this.at[place] / size);
    return number;
  }

  /** The same for what the picture asks in steps alone. */
  inSteps(stage: string, variable: string, otherwise: number, size: number, cell: number = WHOLE): number {
    return this.step(this.want(stage, variable, otherwise, cell), size);
  }

  /** Asks for what the tint shows in a cell of a stage. @returns where it is found in `shown` and `bands` */
  water(stage: string, cell: number = WHOLE): number {
    const known = this.numbers.get(`${stage}/${cell}`);
    if (known !== undefined) return known;
    const number = this.waters.push({ stage, cell }) - 1;
    this.numbers.set(`${stage}/${cell}`, number);
    if (number >= this.shown.length) {
      this.shown = grown(this.shown, new Float64Array(2 * number));
      this.bands = grown(this.bands, new Uint8Array(2 * number));
      this.figures = grown(this.figures, new Int32Array(2 * number));
    }
    this.figures[number] = NO_FIGURE;
    this.shown[number] = NaN;
    this.bands[number] = PALE_BAND;
    this.stale = true;
    return number;
  }

  /** Reads everything for a moment, linear between the hourly samples. */
  take(moment: { view: SeasonView | null; tint: Tint; now_h: number }): void {
    const { view, tint } = moment;
    const found = this.stale || view !== this.view || tint !== this.tint;
    if (found) this.find(view, tint);
    if (view === null) {
      if (found) this.countSteps();
      return;
    }
    const last = view.days.length * 24;
    const t = moment.now_h < 0 ? 0 : moment.now_h > last ? last : moment.now_h;
    const k = Math.floor(t);
    const part = t - k;
    const width = view.variables.length;
    const row = view.cells * width;
    const next = part > 0 ? k + 1 : k;
    const before = samplesOf(view, k);
    const after = samplesOf(view, next);
    const a = k <= 0 ? 0 : ((k - 1) % 24) * row;
    const b = next <= 0 ? 0 : ((next - 1) % 24) * row;
    for (let i = 0; i < this.wishes.length; i += 1) {
      const column = this.column[i];
      const also = this.also[i];
      if (column < 0) continue;
      let from = 0;
      let to = 0;
      for (let c = this.first[i]; c < this.first[i] + this.count[i]; c += 1) {
        from += before[a + c * width + column];
        to += after[b + c * width + column];
        if (also < 0) continue;
        from += before[a + c * width + also];
        to += after[b + c * width + also];
      }
      const value = (from + (to - from) * part) * this.share[i];
      this.at[i] = Number.isFinite(value) ? value : this.wishes[i].otherwise;
    }
    this.countSteps();
    const whole = 10 ** tint.decimals;
    for (let i = 0; i < this.waters.length; i += 1) {
      const count = this.waterCount[i];
      if (count === 0) continue;
      let from = 0;
      let to = 0;
      for (let c = this.waterFirst[i]; c < this.waterFirst[i] + count; c += 1) {
        for (let v = 0; v < this.tintColumns.length; v += 1) {
          from += before[a + c * width + this.tintColumns[v]];
          to += after[b + c * width + this.tintColumns[v]];
        }
      }
      const value = (from + (to - from) * part) / count;
      this.shown[i] = value;
      this.figures[i] = Number.isFinite(value) ? (value > 0 && value * whole < 0.5 ? TRACE : Math.round(value * whole)) : NO_FIGURE;
      this.bands[i] = Number.isFinite(value)
        ? Math.round(Math.max(0, Math.min(1, (value - tint.low) / (tint.high - tint.low))) * BANDS)
        : PALE_BAND;
    }
  }

  /** Counts the steps of the readings. */
  private countSteps(): void {
    const { steps, stepPlace, stepSize, at } = this;
    for (let i = 0; i < this.stepped; i += 1) steps[i] = Math.round(at[stepPlace[i]] / stepSize[i]);
  }

  /** Finds where all that is wanted lies in the rows of a season, and sets what no season tells. */
  private find(view: SeasonView | null, tint: Tint): void {
    this.view = view;
    this.tint = tint;
    this.stale = false;
    const { wishes, waters } = this;
    const places = wishes.map(({ stage, cell }) => placeOf(view, stage, cell));
    const columnOf = (variable: string, i: number): number => (places[i].count > 0 ? (view?.column[variable] ?? -1) : -1);
    this.column = Int32Array.from(wishes, ({ variable }, i) => columnOf(variable === SOLIDS.both ? SOLIDS.coarse : variable, i));
    this.also = Int32Array.from(wishes, ({ variable }, i) => (variable === SOLIDS.both ? columnOf(SOLIDS.fine, i) : -1));
    this.first = Int32Array.from(places, ({ first }) => first);
    this.count = Int32Array.from(places, ({ count }) => count);
    this.share = Float64Array.from(wishes, ({ variable }, i) => (this.addsUp(variable) ? 1 : 1 / Math.max(1, places[i].count)));
    const columns = tint.variables.map((variable) => view?.column[variable] ?? -1);
    const told = columns.every((column) => column >= 0);
    const found = waters.map(({ stage, cell }) => (told ? placeOf(view, stage, cell) : NOWHERE));
    this.waterFirst = Int32Array.from(found, ({ first }) => first);
    this.waterCount = Int32Array.from(found, ({ count }) => count);
    this.tintColumns = Int32Array.from(columns);
    wishes.forEach(({ otherwise }, i) => {
      if (this.column[i] < 0) this.at[i] = otherwise;
    });
    found.forEach(({ count }, i) => {
      if (count > 0) return;
      this.shown[i] = NaN;
      this.figures[i] = NO_FIGURE;
      this.bands[i] = PALE_BAND;
    });
  }
}

const NOWHERE: Place = { first: 0, count: 0 };

function placeOf(view: SeasonView | null, id: string, cell: number): Place {
  const stage = view?.stages.find((one) => one.id === id);
  if (stage === undefined || stage.cells <= 0) return NOWHERE;
  if (cell === WHOLE) return { first: stage.first, count: stage.cells };
  return { first: stage.first + (cell === LAST ? stage.cells - 1 : Math.min(cell, stage.cells - 1)), count: 1 };
}

/** The output that holds sample k: the start, or the day it belongs to. */
function samplesOf(view: SeasonView, k: number): Float32Array {
  return k <= 0 ? view.initial : (view.days[Math.floor((k - 1) / 24)]?.hourly ?? NONE);
}

function grown<T extends Float64Array | Uint8Array | Int32Array>(old: T, larger: T): T {
  larger.set(old);
  return larger;
}
