// Water that falls drop by drop: from a spray bar through packing, down a tower. As many drops as there is flow; none without.
import type { GameObjects } from 'phaser';
import { scatter } from './curves';
import type { Dials } from './dials';
import type { Kit } from './kit';
import type { Live, Moment } from './moment';
import { BandColour } from './bandColour';

/** Drops shown at a flow of this many m³/d and above, as a share of all. */
const FULL_FLOW_m3_d = 20;
const LEAST = 6;

/** Where drops fall: between two heights, at these x, each within a spread. */
export interface Fall {
  id: string;
  xs: readonly number[];
  spread: number;
  top: number;
  bottom: number;
  /** fall, units per second */
  speed: number;
  drops: number;
}

export class Trickle implements Live {
  private readonly images: GameObjects.Image[] = [];
  private readonly offset: number[] = [];
  private readonly side: number[] = [];
  private readonly colour = new BandColour();
  private painted = 0;
  private shown = 0;
  private readonly dials: Dials;
  private readonly flow: number;
  private readonly band: number;

  constructor(
    kit: Kit,
    private readonly fall: Fall,
  ) {
    this.dials = kit.dials;
    this.flow = kit.dials.want(fall.id, 'flow_m3_d', 0);
    this.band = kit.dials.water(fall.id, 0);
    const random = scatter(Math.round(fall.top) * 3 + 8);
    for (let i = 0; i < fall.drops; i += 1) {
      this.images.push(kit.sheets.bits.image('bead').setVisible(false));
      this.offset.push(random());
      this.side.push(random() * 2 - 1);
    }
  }

  update(moment: Moment): void {
    const { fall } = this;
    const flow = this.dials.at[this.flow];
    const count = flow > 0 ? Math.min(fall.drops, Math.max(LEAST, Math.round((fall.drops * flow) / FULL_FLOW_m3_d))) : 0;
    for (let i = count; i < this.shown; i += 1) this.images[i].setVisible(false);
    for (let i = this.shown; i < count; i += 1) this.images[i].setVisible(true);
    this.shown = count;
    if (count === 0) return;
    if (this.colour.towards(this.dials.bands[this.band], moment)) this.painted = 0;
    const height = fall.bottom - fall.top;
    for (let i = 0; i < count; i += 1) {
      const p = (this.offset[i] + (moment.gasTime * fall.speed) / height) % 1;
      const image = this.images[i];
      image.x = fall.xs[i % fall.xs.length] + (this.side[i] + Math.sin(p * 9 + i) * 0.4) * fall.spread;
      image.y = fall.top + p * height;
      if (i >= this.painted) image.setTint(this.colour.tint);
    }
    this.painted = Math.max(this.painted, count);
  }
}
