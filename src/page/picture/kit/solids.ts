// Solids in the picture: specks adrift in the water, sludge lying on a floor or in a cone, dirt caught in a mat.
import type { GameObjects } from 'phaser';
import { INK } from './palette';
import { speck } from './parts';
import { scatter } from './curves';
import type { Pen } from './pen';
import { NO_FIGURE, type Dials } from './dials';
import type { Kit } from './kit';
import { BLOCKAGE, type Load } from './loads';
import type { Live, Moment } from './moment';
import { StepTable } from './stepTable';
import { SPECKS } from './bits';
import { Stepped } from './stepped';
import type { Surfaced } from './surfaced';

const MOST = 60;
/** One speck stands for so many mg/L in each 10 000 square units. */
const PER_SPECK_mg_L = 0.5;
/** Turn of specks in a swirl, radians a second. */
const TURN = 1.1;

/** Where specks are adrift; those that turn go round an upright axis in the middle of the space. */
export interface Adrift {
  id: string;
  x: number;
  w: number;
  floor: number;
  drift: number;
  sink: number;
  turns?: boolean;
}

/** Specks in the water, as many as its solids; they drift with the flow and sink where the water is slow. */
export class Specks implements Live {
  private readonly images: GameObjects.Image[] = [];
  private readonly across: number[] = [];
  private readonly down: number[] = [];
  private readonly dials: Dials;
  private readonly coarse: number;
  private readonly fine: number;
  private readonly flow: number;
  private shown = 0;

  constructor(
    kit: Kit,
    private readonly space: Adrift,
    private readonly water: Surfaced,
  ) {
    this.dials = kit.dials;
    this.coarse = kit.dials.want(space.id, 'solidsCoarse_mg_L', 0);
    this.fine = kit.dials.want(space.id, 'solidsFine_mg_L', 0);
    this.flow = kit.dials.want(space.id, 'flow_m3_d', 0);
    const random = scatter(Math.round(space.x) * 7 + 5);
    for (let i = 0; i < MOST; i += 1) {
      this.images.push(kit.sheets.bits.image(SPECKS[i % SPECKS.length]).setVisible(false));
      this.across.push(random());
      this.down.push(random());
    }
  }

  update(moment: Moment): void {
    const { space } = this;
    const { at } = this.dials;
    const height = space.floor - this.water.level - 10;
    const solids = at[this.coarse] + at[this.fine];
    const count = height < 8 ? 0 : Math.min(MOST, Math.round((solids / PER_SPECK_mg_L) * ((space.w * height) / 10_000)));
    for (let i = count; i < this.shown; i += 1) this.images[i].setVisible(false);
    for (let i = this.shown; i < count; i += 1) this.images[i].setVisible(true);
    this.shown = count;
    const flowing = at[this.flow] > 0 ? 1 : 0;
    for (let i = 0; i < count; i += 1) {
      const u = (this.across[i] + (moment.gasTime * space.drift * flowing * (0.6 + this.down[i] * 0.8)) / space.w) % 1;
      const sunk = (this.down[i] + (moment.gasTime * space.sink * (0.5 + this.across[i])) / Math.max(20, height)) % 1;
      const v = sunk < 0 ? sunk + 1 : sunk;
      if (space.turns)
        this.images[i].x =
          space.x
          + space.w / 2
          + Math.cos(6.283 * this.across[i] + moment.gasTime * flowing * TURN * (1.4 - 0.6 * this.down[i]))
            * (0.2 + 0.8 * this.down[i])
            * (space.w / 2 - 5);
      else this.images[i].x = space.x + 5 + u * (space.w - 10);
      this.images[i].y = this.water.level + 7 + v * height + Math.sin(moment.gasTime * 0.8 + i) * 2;
    }
  }
}

export interface Bed {
  id: string;
  x: number;
  w: number;
  floor: number;
  height: number;
  outline: (top: number) => string;
  topOf: (fill: number) => number;
  variable: 'sludgeFill';
}

/** Less sludge than this, as a share of what fits, is not drawn; it is read in steps of as much. */
const LEAST_FILL = 0.002;
/** Height of the steps that sludge is drawn in, world units. */
const LAYER = 1.5;

/** Sludge lying in a tank, as deep as the model says; stippled as nothing else is. */
export class Sludge implements Live {
  /** y of its surface */
  top: number;
  private readonly picture: Stepped;
  private readonly dials: Dials;
  private readonly fill: number;
  private filled = NO_FIGURE;
  /** layers of each step of the fill, and where the surface lies over so many */
  private readonly layersOf: Int16Array;
  private readonly tops: StepTable;
  /** layers that lie there, and those that are shown */
  private goal = 0;
  private layers = 0;

  constructor(kit: Kit, bed: Bed) {
    this.top = bed.floor;
    this.dials = kit.dials;
    this.fill = kit.dials.inSteps(bed.id, bed.variable, 0, LEAST_FILL);
    this.layersOf = Int16Array.from({ length: Math.round(1 / LEAST_FILL) + 1 }, (_, fill) =>
      fill <= 1 ? 0 : Math.round((bed.floor - bed.topOf(fill * LEAST_FILL)) / LAYER),
    );
    this.tops = new StepTable(0, Math.max(...this.layersOf), (layers) => bed.floor - layers * LAYER);
    this.picture = new Stepped(kit.studio, { x: bed.x - 2, y: bed.floor - bed.height - 8, w: bed.w + 4, h: bed.height + 10 }, (pen, step) =>
      sludge(pen, bed, bed.floor - step * LAYER),
    );
  }

  update(moment: Moment): void {
    const fill = this.dials.steps[this.fill];
    if (fill !== this.filled) {
      this.filled = fill;
      const { layersOf } = this;
      this.goal = layersOf[fill < 0 ? 0 : fill < layersOf.length ? fill : layersOf.length - 1];
    }
    if (this.goal !== this.layers) this.settle(moment);
  }

  private settle(moment: Moment): void {
    this.layers += moment.part(this.goal - this.layers);
    this.top = this.tops.at(this.layers);
    this.picture.show(this.layers);
  }
}

/** @param top y of its surface */
function sludge(pen: Pen, bed: Bed, top: number): void {
  if (top >= bed.floor - 1) return;
  const d = bed.outline(top);
  const random = scatter(19);
  pen.path(d, { fill: INK.sludge });
  pen.within(d, () => {
    for (let i = 0; i < (bed.w * bed.height) / 34; i += 1) {
      pen.circle(bed.x + random() * bed.w, bed.floor - random() * bed.height, 0.8 + random() * 1.5, {
        fill: random() > 0.45 ? INK.sludgeLight : INK.sludgeDark,
      });
    }
  });
  pen.path(d, { ink: INK.sludgeDark, width: 1.6 });
}

/** Sludge on a flat floor, with a wavy top. */
export function flatBed(id: string, x: number, w: number, floor: number, height: number): Bed {
  return {
    id,
    x,
    w,
    floor,
    height,
    variable: 'sludgeFill',
    topOf: (fill) => floor - 2 - fill * (height - 6),
    outline: (top) => `M${x} ${top}Q${x + w * 0.25} ${top - 6} ${x + w * 0.5} ${top + 1}T${x + w} ${top - 1}V${floor}H${x}Z`,
  };
}

const STEPS = 24;

/** Dirt caught in a mat: it fills from the top as pores block, or all through where water comes from all sides. */
export class MatDirt implements Live {
  private readonly picture: Stepped;
  private readonly dials: Dials;
  private readonly dirt: number;

  constructor(
    kit: Kit,
    id: string,
    private readonly x: number,
    private readonly y: number,
    private readonly w: number,
    private readonly h: number,
    private readonly through = false,
    load: Load = BLOCKAGE,
  ) {
    this.dials = kit.dials;
    this.dirt = kit.dials.inSteps(id, load.variable, 0, load.full / STEPS);
    this.picture = new Stepped(kit.studio, { x, y: y - 5, w, h: h + 6 }, (pen, step) => this.paint(pen, step / STEPS));
  }

  update(): void {
    this.picture.show(Math.max(0, Math.min(STEPS, this.dials.steps[this.dirt])));
  }

  private paint(pen: Pen, share: number): void {
    const random = scatter(6 * 41);
    const depth = this.h * (0.3 + 0.7 * share);
    const most = Math.round(Math.max(50, Math.min(220, (this.w * this.h) / 34)));
    for (let i = 0; i < most; i += 1) {
      const px = this.x + 4 + random() * (this.w - 8);
      const py = this.y + (this.through ? random() * this.h : random() * random() * depth);
      const size = 1.2 + random() * 1.9;
      const turn = random() * 3;
      if (i < share * most) speck(pen, px, py, size, turn);
    }
    if (share > 0.5 && !this.through) pen.rect(this.x, this.y - 3, this.w, 4 + 5 * (share - 0.5), { fill: INK.sludge, alpha: 0.85 }, 2);
  }
}
