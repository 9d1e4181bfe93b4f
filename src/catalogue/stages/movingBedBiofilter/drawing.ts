// Moving-bed biofilter: air rolls the carriers over and over; without air they rise and lie still under the surface.
import { block, carriers, stone, tankCut } from '../../../page/picture/kit/parts';
import { INK } from '../../../page/picture/kit/palette';
import type { Pen } from '../../../page/picture/kit/pen';
import { scatter } from '../../../page/picture/kit/curves';
import { AirBubbles, Stripping } from '../../../page/picture/kit/gas';
import type { Dials } from '../../../page/picture/kit/dials';
import { hollowOf, type Kit, type StageDrawing } from '../../../page/picture/kit/kit';
import { type StageBox, WALL } from '../../../page/picture/kit/boxes';
import type { Live, Moment } from '../../../page/picture/kit/moment';
import { Specks } from '../../../page/picture/kit/solids';
import { StraightWater } from '../../../page/picture/kit/water';
import type { Image } from '../../../page/picture/kit/studio';

/** Carriers drawn in a vessel as full of them as one can be that still tumbles. */
const MOST = 64;
const FULLEST = 0.6;
/** Carriers roll once in this time at the air that stirs them well, s. */
const ROUND_s = 7;
const WELL_STIRRED_L_min = 30;
const CARRIER = 13;
const SCREEN = 16;

const stonesOf = (box: StageBox): number[] => [box.x + box.w * 0.3, box.x + box.w * 0.62];
const count = (box: StageBox): number =>
  Math.max(14, Math.round(MOST * Math.min(1, (box.spec.media_m3 ?? 0.12) / Math.max(0.01, box.spec.volume_m3 ?? 0.3) / FULLEST)));

/** Carriers on two rolls that turn against each other, up in the middle and down at the walls. */
class Tumbling implements Live {
  private readonly images: Image[] = [];
  private readonly reach: number[] = [];
  private readonly phase: number[] = [];
  private readonly dials: Dials;
  private readonly air: number;
  private stirred = NaN;
  private angle = 0;

  constructor(
    kit: Kit,
    private readonly box: StageBox,
    private readonly water: StraightWater,
    private readonly w: number,
  ) {
    this.dials = kit.dials;
    this.air = kit.dials.want(box.id, 'air_L_min', 0);
    const random = scatter(61);
    for (let i = 0; i < count(box); i += 1) {
      this.images.push(kit.sheets.bits.image(i % 3 === 0 ? 'carrier 1' : 'carrier 0'));
      this.reach.push(Math.sqrt(0.04 + 0.96 * random()));
      this.phase.push(random() * 6.283);
    }
  }

  update(moment: Moment): void {
    const { box, w } = this;
    const air = this.dials.at[this.air];
    const goal = air > 0 ? 1 : 0;
    this.stirred = Number.isNaN(this.stirred) ? goal : this.stirred + (goal - this.stirred) * moment.ease * 0.12;
    if (moment.flowing && air > 0) this.angle += (moment.dt * 6.283 * Math.max(0.3, Math.min(1.6, air / WELL_STIRRED_L_min))) / ROUND_s;
    const top = this.water.level + 11;
    const height = Math.max(20, box.floor - 22 - top);
    const row = Math.max(1, Math.floor((w - 6) / CARRIER));
    for (let i = 0; i < this.images.length; i += 1) {
      const left = i % 2 === 0;
      const a = this.phase[i] + (left ? this.angle : -this.angle) * (1.3 - 0.5 * this.reach[i]);
      const x = box.x + w * (left ? 0.26 : 0.74) + Math.cos(a) * this.reach[i] * (w * 0.25 - 7);
      const y = top + height / 2 + Math.sin(a) * this.reach[i] * (height / 2 - 4);
      const line = Math.floor(i / row);
      const restX = box.x + 10 + (i % row) * CARRIER + (line % 2) * 5;
      const restY = top - 2 + line * (CARRIER - 2);
      const image = this.images[i];
      image.x = restX + (x - restX) * this.stirred;
      image.y = restY + (y - restY) * this.stirred;
      image.rotation = this.phase[i] + this.angle * (left ? 1 : -1) * 1.5;
    }
  }
}

/** The screen at the outlet that keeps the carriers in. */
function outlet(pen: Pen, box: StageBox): void {
  const x = box.x + box.w - SCREEN;
  pen.path(`M${x} ${box.rim + 6}V${box.floor - 30}H${box.x + box.w}`, { ink: INK.ink, width: 3, dash: [3, 4] });
}

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [124, 164],
  inHand: [146, 160, 26],
  on: 'block',
  inlet: 'side',
  over: 62,
  support(pen, box) {
    block(pen, box.x - 14, box.floor + WALL, box.w + 28, -box.floor - WALL);
  },
  media(pen, box) {
    carriers(pen, box.x + 4, box.level + 8, box.w - SCREEN - 8, box.floor - box.level - 26, count(box), 8);
    for (const x of stonesOf(box)) stone(pen, x, box.floor - 8, 40);
    outlet(pen, box);
  },
  live(kit, box) {
    const water = new StraightWater(kit, {
      id: box.id,
      x: box.x,
      w: box.w,
      rim: box.rim,
      level: box.level,
      floor: box.floor,
      seed: 16,
      sign: box.w * 0.5,
    });
    kit.studio.show(
      kit.studio.bake({ x: box.x, y: box.rim, w: box.w, h: box.floor - box.rim }, (pen) => {
        for (const x of stonesOf(box)) stone(pen, x, box.floor - 8, 40);
        outlet(pen, box);
      }),
    );
    const specks = new Specks(kit, { id: box.id, x: box.x, w: box.w - SCREEN, floor: box.floor, drift: 14, sink: 0 }, water);
    const bubbles = new AirBubbles(
      kit,
      box.id,
      stonesOf(box).map((x) => ({ x, spread: box.w * 0.14, bottom: box.floor - 14 })),
      water,
    );
    const tumbling = new Tumbling(kit, box, water, box.w - SCREEN - 2);
    return [water, specks, bubbles, tumbling, new Stripping(kit, box.id, box.x + box.w / 2, box.rim)];
  },
  front(pen, box) {
    tankCut(pen, box.x, box.rim, box.w, box.floor - box.rim);
  },
  hollow: (box) => hollowOf(box),
  waterPath: (box) => `M${box.x} ${box.level}h${box.w}V${box.floor}h${-box.w}Z`,
};
