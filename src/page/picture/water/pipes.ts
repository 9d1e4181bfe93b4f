// Pipes: ink, wall, water in the colour of what flows in them, white dashes that move with the flow, and the pour at the end.
import type { GameObjects } from 'phaser';
import { INK, rgb } from '../kit/palette';
import { arrowHead } from '../kit/parts';
import { courseOf, STEP, type Bend, type Course } from './course';
import { LAST, NO_FIGURE, type Dials } from '../kit/dials';
import { dashSpeed, FASTEST, FLOW_STEP_m3_d, SPEED_PER_m3_d } from '../kit/flow';
import type { Kit } from '../kit/kit';
import type { Live, Moment } from '../kit/moment';
import type { PipeRun } from './plumbing';
import { FAR, StepTable } from '../kit/stepTable';
import { BandColour } from '../kit/bandColour';
import { LEVEL_STEP, levelSteps } from '../kit/water';

const RADIUS = 13;
const SPACING = 32;
const SAMPLES = SPACING / STEP;
/** Two to this power of such steps look alike. */
const ALIKE = 4;

/** Speeds by steps that look alike, up to the fastest. */
const SPEEDS = new StepTable(0, Math.ceil(FASTEST / SPEED_PER_m3_d / FLOW_STEP_m3_d) >> ALIKE, (alike) =>
  dashSpeed(Math.max(1, alike << ALIKE) * FLOW_STEP_m3_d),
);

function bendPath(b: Bend): string {
  return `M${b.x - b.inX * b.radius} ${b.y - b.inY * b.radius}Q${b.x} ${b.y} ${b.x + b.outX * b.radius} ${b.y + b.outY * b.radius}`;
}

/** One pipe with its moving water. */
export class Pipe implements Live {
  private readonly water: GameObjects.Image[] = [];
  private readonly dashes: GameObjects.Image[] = [];
  private readonly turned: Float32Array;
  private readonly colour = new BandColour();
  private readonly course: Course;
  private readonly dials: Dials;
  private readonly flow: number;
  private readonly band: number;
  private alike = -1;
  private speed = 0;
  private offset = 0;
  private flowing: boolean | null = null;

  constructor(kit: Kit, run: PipeRun) {
    this.course = courseOf(run.points, RADIUS);
    this.dials = kit.dials;
    this.flow = kit.dials.inSteps(run.from, 'flow_m3_d', 0, FLOW_STEP_m3_d);
    this.band = kit.dials.water(run.from, LAST);
    this.layer(kit, run.width + 4.4, INK.ink);
    this.layer(kit, run.width, INK.pipe);
    this.water = this.layer(kit, run.width - 4.6, '#ffffff');
    this.paint();
    const count = Math.floor(this.course.length / SPACING);
    this.turned = new Float32Array(count);
    for (let i = 0; i < count; i += 1) this.dashes.push(kit.sheets.bits.image(run.width > 13 ? 'dash' : 'thin dash').setVisible(false));
    for (const arrow of run.arrows) {
      kit.studio.show(
        kit.studio.bake({ x: arrow.x - 14, y: arrow.y - 14, w: 28, h: 28 }, (pen) => arrowHead(pen, arrow.x, arrow.y, arrow.turn, 0.9)),
      );
    }
  }

  private layer(kit: Kit, width: number, colour: string): GameObjects.Image[] {
    const images: GameObjects.Image[] = [];
    for (const s of this.course.straights) {
      const level = s.dy === 0;
      const x = Math.min(s.x, s.x + s.dx * s.length) - (level ? 0 : width / 2);
      const y = Math.min(s.y, s.y + s.dy * s.length) - (level ? width / 2 : 0);
      const image = kit.studio.patch(x, y);
      image.setDisplaySize(level ? s.length + 0.6 : width, level ? width : s.length + 0.6);
      images.push(image);
    }
    for (const bend of this.course.bends) {
      const reach = bend.radius + width;
      images.push(
        kit.studio.show(
          kit.studio.bake({ x: bend.x - reach, y: bend.y - reach, w: 2 * reach, h: 2 * reach }, (pen) =>
            pen.path(bendPath(bend), { ink: '#fff', width, cap: 'butt' }),
          ),
        ),
      );
    }
    const tint = rgb(colour);
    for (const image of images) image.setTint(tint);
    return images;
  }

  update(moment: Moment): void {
    if (this.colour.towards(this.dials.bands[this.band], moment)) this.paint();
    const flow = this.dials.steps[this.flow];
    const flowing = flow > 0;
    const alike = flow >> ALIKE;
    if (flowing && alike !== this.alike) {
      this.alike = alike;
      this.speed = SPEEDS.at(alike);
    }
    if (flowing !== this.flowing) {
      for (let i = 0; i < this.dashes.length; i += 1) this.dashes[i].setVisible(flowing);
      if (flowing) this.place();
      this.flowing = flowing;
    }
    if (!flowing || !moment.flowing) return;
    this.offset = (this.offset + this.speed * moment.dt) % SPACING;
    this.place();
  }

  private paint(): void {
    for (let i = 0; i < this.water.length; i += 1) this.water[i].setTint(this.colour.tint);
  }

  private place(): void {
    const { xs, ys, turns } = this.course;
    const from = Math.round(this.offset / STEP) | 0;
    const last = xs.length - 1;
    for (let i = 0; i < this.dashes.length; i += 1) {
      const on = from + i * SAMPLES;
      const at = on < last ? on : last;
      const dash = this.dashes[i];
      dash.x = xs[at];
      dash.y = ys[at];
      if (turns[at] !== this.turned[i]) {
        this.turned[i] = turns[at];
        dash.rotation = turns[at];
      }
    }
  }
}

const STROKES = 3;
const FALL_PERIOD_s = 0.55;
/** A fall longer than this is a long one, world units. */
const LONG = 14;

/** Water pouring from the mouth of a pipe onto the water below it; it stops with the flow. */
export class Pour implements Live {
  private readonly body: GameObjects.Image;
  private readonly strokes: GameObjects.Image[] = [];
  private readonly ring: GameObjects.Image;
  private readonly colour = new BandColour();
  private on: boolean | null = null;
  private height = 0;
  private levelSeen = NO_FIGURE;
  /** for each step of the level that it falls onto: how high it falls, how tall it is drawn, where the ring lies */
  private readonly heights: StepTable;
  private readonly tall: StepTable;
  private readonly rings: StepTable;
  private long: boolean | null = null;
  private readonly dials: Dials;
  private readonly flow: number;
  private readonly told: number;
  private readonly band: number;

  constructor(
    kit: Kit,
    run: PipeRun,
    x: number,
    private readonly top: number,
    rest: number,
  ) {
    this.dials = kit.dials;
    this.flow = kit.dials.inSteps(run.from, 'flow_m3_d', 0, FLOW_STEP_m3_d);
    this.told = levelSteps(kit, run.to, rest);
    this.band = kit.dials.water(run.from, LAST);
    this.body = kit.studio
      .patch(x - 4.5, top)
      .setDisplaySize(9, 1)
      .setAlpha(0.85)
      .setTint(this.colour.tint);
    for (let i = 0; i < STROKES; i += 1)
      this.strokes.push(kit.sheets.bits.image('thin dash', x + (i - 1) * 2.4, top).setRotation(Math.PI / 2));
    this.ring = kit.sheets.bits.image('ring', x, rest);
    const here = Math.round(-rest / LEVEL_STEP);
    const { body } = this;
    const bottom = (told: number): number => -told * LEVEL_STEP;
    const ready = (make: (told: number) => number): StepTable => new StepTable(here - FAR, here + FAR, make);
    this.heights = ready((told) => Math.max(2, bottom(told) - top));
    this.tall = ready((told) => Math.max(2, bottom(told) - top) / body.height);
    this.rings = ready((told) => bottom(told) + 2);
  }

  update(moment: Moment): void {
    const on = this.dials.steps[this.flow] > 0;
    if (on !== this.on) {
      this.on = on;
      this.body.setVisible(on);
      this.ring.setVisible(on);
      this.long = null;
      for (let i = 0; i < STROKES; i += 1) this.strokes[i].setVisible(on);
    }
    if (!on) return;
    const told = this.dials.steps[this.told];
    if (told !== this.levelSeen) this.reach(told);
    if (this.colour.towards(this.dials.bands[this.band], moment)) this.body.setTint(this.colour.tint);
    if (this.long === null) this.lengthen(this.height > LONG);
    for (let i = 0; i < STROKES; i += 1) {
      const p = (moment.gasTime / FALL_PERIOD_s + i / STROKES) % 1;
      this.strokes[i].y = this.top + 4 + (this.height - 6) * p;
    }
  }

  /** Falls as far as the water that it falls onto. */
  private reach(told: number): void {
    this.levelSeen = told;
    this.height = this.heights.at(told);
    this.body.scaleY = this.tall.at(told);
    this.ring.y = this.rings.at(told);
    this.long = null;
  }

  /** Three strokes in a long fall, one in a short one. */
  private lengthen(long: boolean): void {
    this.long = long;
    for (let i = 0; i < STROKES; i += 1) this.strokes[i].setVisible(long || i === 1);
  }
}
