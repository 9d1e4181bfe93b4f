// A colour that slides towards a band of the scale of water.
import type { Moment } from './moment';
import { PALE_BAND, WATER_BANDS } from './palette';

/** Steps of red, green and blue that a colour on its way takes for each of theirs, as a power of two. */
const FINER = 4;

/** Colour that slides towards a band of the scale. */
export class BandColour {
  /** the colour now, 0xRRGGBB */
  tint: number = WATER_BANDS[PALE_BAND];
  private goal: number = WATER_BANDS[PALE_BAND];
  private readonly parts = new Int32Array(3);

  /** Moves on towards a band. @returns whether the colour has changed */
  towards(band: number, moment: Pick<Moment, 'part'>): boolean {
    const goal = WATER_BANDS[band];
    if (goal === this.tint) return false;
    const { parts } = this;
    if (this.goal === this.tint) for (let i = 0; i < 3; i += 1) parts[i] = ((this.tint >> (8 * i)) & 255) << FINER;
    this.goal = goal;
    let tint = 0;
    for (let i = 0; i < 3; i += 1) {
      parts[i] += moment.part((((goal >> (8 * i)) & 255) << FINER) - parts[i]);
      tint |= (parts[i] >> FINER) << (8 * i);
    }
    const changed = tint !== this.tint;
    this.tint = tint;
    return changed;
  }
}
