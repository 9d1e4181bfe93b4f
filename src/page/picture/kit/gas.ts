// Gas in water: air rising from stones, and gas with sulfide leaving the sludge.
import type { GameObjects, Textures } from 'phaser';
import { scatter } from './curves';
import type { Dials } from './dials';
import type { Kit } from './kit';
import type { Surfaced } from './surfaced';
import type { Live, Moment } from './moment';
import { BUBBLES } from './bits';

/** A tank never shows more bubbles than this. */
const MOST = 44;
/** Bubbles shown for each litre of air a minute. */
const PER_L_MIN = 1;
/** Rise of a bubble, world units per second. */
const RISE = 74;

export interface Column {
  x: number;
  spread: number;
  bottom: number;
}
/** Air from stones: as many bubbles as the air set, larger towards the surface. */
export class AirBubbles implements Live {
  private readonly images: GameObjects.Image[] = [];
  private readonly offset: number[] = [];
  private readonly sway: number[] = [];
  private readonly step: number[] = [];
  private readonly frames: Textures.Frame[] = [];
  private readonly dials: Dials;
  private readonly air: number;
  private shown = 0;

  constructor(
    kit: Kit,
    id: string,
    private readonly columns: readonly Column[],
    private readonly water: Surfaced,
  ) {
    this.dials = kit.dials;
    this.air = kit.dials.want(id, 'air_L_min', 0);
    for (const name of BUBBLES) this.frames.push(kit.sheets.bits.frame(name));
    const random = scatter(columns.length * 71 + Math.round(columns[0].x));
    for (let i = 0; i < MOST; i += 1) {
      this.images.push(kit.sheets.bits.image(BUBBLES[0]).setVisible(false));
      this.offset.push(random());
      this.sway.push(random() * 2 - 1);
      this.step.push(0);
    }
  }

  update(moment: Moment): void {
    const air = this.dials.at[this.air];
    const count = moment.moving && air > 0 ? Math.min(MOST, Math.max(3, Math.round(air * PER_L_MIN))) : 0;
    for (let i = count; i < this.shown; i += 1) this.images[i].setVisible(false);
    for (let i = this.shown; i < count; i += 1) this.images[i].setVisible(true);
    this.shown = count;
    for (let i = 0; i < count; i += 1) {
      const column = this.columns[i % this.columns.length];
      const height = column.bottom - this.water.level - 3;
      const p = (this.offset[i] + (moment.gasTime * RISE) / Math.max(30, height)) % 1;
      const image = this.images[i];
      image.y = column.bottom - height * p;
      image.x = column.x + this.sway[i] * column.spread * (0.35 + 0.65 * p) + Math.sin(moment.gasTime * 3 + i) * 2.4 * p;
      const step = p < 0.3 ? 0 : p < 0.75 ? 1 : this.offset[i] > 0.4 ? 2 : 1;
      if (step !== this.step[i]) {
        this.step[i] = step;
        image.frame = this.frames[step];
      }
    }
  }
}

const MOST_GAS = 12;

/** Gas from sludge that has gone without oxygen: diamonds among bubbles, more of them the more gas leaves. */
export class SludgeGas implements Live {
  private readonly images: GameObjects.Image[] = [];
  private readonly offset: number[] = [];
  private readonly dials: Dials;
  private readonly gas: number;
  private shown = 0;

  /** @param top y of the sludge's surface now */
  constructor(
    kit: Kit,
    id: string,
    private readonly x: number,
    private readonly spread: number,
    private readonly bed: { top: number },
    private readonly water: Surfaced,
  ) {
    this.dials = kit.dials;
    this.gas = kit.dials.want(id, 'gas_L_d', 0);
    const random = scatter(Math.round(x) * 3 + 1);
    for (let i = 0; i < MOST_GAS; i += 1) {
      this.images.push(kit.sheets.bits.image(i % 2 === 0 ? 'diamond' : BUBBLES[1 + ((i >> 1) % 2)]).setVisible(false));
      this.offset.push(random());
    }
  }

  update(moment: Moment): void {
    const gas = this.dials.at[this.gas];
    const count = moment.moving && gas > 0.02 ? Math.min(MOST_GAS, 2 + Math.round(gas * 2)) : 0;
    for (let i = 0; i < MOST_GAS; i += 1) if (i < count !== i < this.shown) this.images[i].setVisible(i < count);
    this.shown = count;
    const height = this.bed.top - this.water.level - 6;
    for (let i = 0; i < count; i += 1) {
      const p = (this.offset[i] + moment.gasTime * 0.3) % 1;
      this.images[i].y = this.bed.top - height * p;
      this.images[i].x =
        this.x + (this.offset[(i + 3) % MOST_GAS] * 2 - 1) * this.spread * (0.3 + 0.7 * p) + Math.sin(moment.gasTime * 2 + i * 2) * 3;
    }
  }
}

const VENTS = 3;
/** Less air or flow than this drives nothing out, L/min or m³/d. */
const LEAST_DRIVE = 0.01;

/** Gas leaving over the rim where something strips the water: wavy arrows, only while that runs. */
class Vents implements Live {
  private readonly images: GameObjects.Image[] = [];
  private readonly dials: Dials;
  private readonly driven: number;
  private on = false;

  constructor(kit: Kit, id: string, driver: 'air_L_min' | 'flow_m3_d', x: number, rim: number) {
    this.dials = kit.dials;
    this.driven = kit.dials.inSteps(id, driver, 0, LEAST_DRIVE);
    for (let i = 0; i < VENTS; i += 1) this.images.push(kit.sheets.bits.image('gas', x + (i - 1) * 22, rim - 2).setVisible(false));
  }

  update(moment: Moment): void {
    if (!moment.glance) return;
    const on = this.dials.steps[this.driven] > 0;
    if (on === this.on) return;
    this.on = on;
    for (let i = 0; i < VENTS; i += 1) this.images[i].setVisible(on);
  }
}

/** Gas that air from stones drives out. */
export class Stripping extends Vents {
  constructor(kit: Kit, id: string, x: number, rim: number) {
    super(kit, id, 'air_L_min', x, rim);
  }
}

/** Gas that leaves with the draught through falling water. */
export class Draught extends Vents {
  constructor(kit: Kit, id: string, x: number, rim: number) {
    super(kit, id, 'flow_m3_d', x, rim);
  }
}
