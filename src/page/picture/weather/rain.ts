// Rain on dark days: strokes that fall on the roof of the greenhouse, more of them the darker the day. It stays dry under the glass.
import type { GameObjects } from 'phaser';
import type { House } from '../scene/backdrop';
import { scatter } from '../kit/curves';
import type { Moment } from '../kit/moment';
import type { Sheet } from '../kit/studio';
import { BLOWN, STROKE } from './raindrop';

/** Strokes of the hardest rain. */
export const HARDEST = 140;
/** Strokes that begin or end at a glance. */
const SLOWLY = 6;
/** Fall, world units a second. */
const FALL = 240;
/** A share of the width that no few steps bring back to where they began. */
const GOLDEN = 0.618034;

/** Height of the roof at an x, and the ground beside it. */
export function roofAt({ left, right, eave, ridge }: House, x: number): number {
  if (x <= left || x >= right) return 0;
  const middle = (left + right) / 2;
  return ridge + ((eave - ridge) * Math.abs(x - middle)) / (middle - left);
}

export class Rain {
  private readonly images: GameObjects.Image[] = [];
  /** where each stroke strikes, how far it falls to there, and how far on it is in its round */
  private readonly x = new Float64Array(HARDEST);
  private readonly foot = new Float64Array(HARDEST);
  private readonly way = new Float64Array(HARDEST);
  private readonly offset = new Float64Array(HARDEST);
  private shown = 0;

  constructor(sheets: { bits: Sheet }, house: House, width: number, viewTop: number) {
    const random = scatter(29);
    for (let i = 0; i < HARDEST; i += 1) {
      this.images.push(sheets.bits.image('rain').setVisible(false));
      // each next one far from the last, so that any first few are spread over all of the width
      this.x[i] = ((i * GOLDEN) % 1) * width;
      this.foot[i] = Math.min(-STROKE, roofAt(house, this.x[i]) - STROKE * 0.6);
      this.way[i] = Math.max(1, this.foot[i] - viewTop + 2 * STROKE);
      this.offset[i] = random();
    }
  }

  /** @param wanted strokes of the day */
  update(wanted: number, moment: Moment): void {
    if (wanted !== this.shown && moment.glance)
      this.become(moment.moving ? this.shown + Math.max(-SLOWLY, Math.min(SLOWLY, wanted - this.shown)) : wanted);
    this.fall(moment);
  }

  private become(shown: number): void {
    for (let i = 0; i < HARDEST; i += 1) if (this.images[i].visible !== i < shown) this.images[i].setVisible(i < shown);
    this.shown = shown;
  }

  /** On dry days one stroke falls unseen: what is done in each frame is compiled, and makes nothing anew when it rains. */
  private fall(moment: Moment): void {
    for (let k = 0; k < this.shown || k < 1; k += 1) {
      const up = this.way[k] * (1 - ((this.offset[k] + (moment.gasTime * FALL) / this.way[k]) % 1));
      const image = this.images[k];
      image.y = this.foot[k] - up;
      image.x = this.x[k] - up * BLOWN;
    }
  }
}
