// Clouds: more of them the less light the day has, drifting with the hours of the season, and round again.
import type { GameObjects } from 'phaser';
import { cloud } from '../scene/backdrop';
import { CLOSED_SKY } from './lightOfDay';
import { StepTable } from '../kit/stepTable';
import type { Studio } from '../kit/studio';

/** Where clouds come up, as shares of the width and of the room over the eaves, and how large; in the order in which they come. */
const CLOUDS = [
  [0.5, 0.2, 0.9],
  [0.105, 0.42, 0.8],
  [0.8, 0.3, 1],
  [0.3, 0.12, 0.75],
  [0.93, 0.14, 0.7],
  [0.66, 0.05, 0.8],
] as const;
const ALPHA = 0.92;
/** Steps of a closed sky in which one cloud comes up. */
const WHOLE = CLOSED_SKY / CLOUDS.length;
const SEEN = new StepTable(0, WHOLE, (seen) => (ALPHA * seen) / WHOLE);
const HALF = { w: 88, h: 46 };
/** Clouds move in steps of half a world unit, one in so many tenths of an hour: slowly, even where days fly by. */
const STEP = 0.5;
const TENTHS_A_STEP = 6;

/**
 * Where a cloud stands that has drifted so many steps from where it came up, in steps; it leaves on the right and comes back on the left.
 */
export function drifted(from: number, steps: number, span: number): number {
  return (from + steps) % span;
}

export class Clouds {
  private readonly images: GameObjects.Image[] = [];
  /** where each came up, in steps from beyond the left edge, and the way from edge to edge */
  private readonly from: Int32Array;
  private readonly span: number;
  /** x of each step of the way */
  private readonly places: StepTable;
  private readonly seen = new Int32Array(CLOUDS.length);
  private covered = 0;
  private tenths = 0;

  /** @param room between the upper edge of the view and the eaves */
  constructor(studio: Studio, width: number, viewTop: number, room: number) {
    const plate = studio.bake({ x: -HALF.w, y: -HALF.h, w: 2 * HALF.w, h: 2 * HALF.h }, cloud);
    for (const [x, y, size] of CLOUDS) {
      const image = studio
        .show(plate)
        .setOrigin(0.5, 0.5)
        .setPosition(x * width, viewTop + 34 + y * room)
        .setAlpha(0);
      this.images.push(image.setScale(image.scaleX * size));
    }
    this.from = Int32Array.from(CLOUDS, ([x]) => Math.round((x * width + HALF.w) / STEP));
    this.span = Math.round((width + 2 * HALF.w) / STEP);
    this.places = new StepTable(0, this.span, (step) => step * STEP - HALF.w);
  }

  /** @param covered steps of a closed sky */
  cover(covered: number): void {
    if (covered === this.covered) return;
    this.covered = covered;
    for (let i = 0; i < this.images.length; i += 1) {
      const seen = covered <= WHOLE * i ? 0 : covered >= WHOLE * (i + 1) ? WHOLE : covered - WHOLE * i;
      if (seen === this.seen[i]) continue;
      this.seen[i] = seen;
      this.images[i].setAlpha(SEEN.at(seen));
    }
  }

  /** @param tenths of an hour since the season began */
  drift(tenths: number): void {
    const since = tenths - (tenths % TENTHS_A_STEP);
    if (since === this.tenths) return;
    this.tenths = since;
    const steps = (since / TENTHS_A_STEP) | 0;
    for (let i = 0; i < this.images.length; i += 1) this.images[i].x = this.places.at(drifted(this.from[i], steps, this.span));
  }
}
