// Water in tanks: a body in the colour of the tint, light falling through it, a surface line and a level sign.
import type { GameObjects } from 'phaser';
import { BandColour } from './bandColour';
import { INK, rgb } from './palette';
import { levelSign } from './parts';
import type { Pen } from './pen';
import { scatter } from './curves';
import type { Dials } from './dials';
import type { Surfaced } from './surfaced';
import type { Kit } from './kit';
import type { Live, Moment } from './moment';
import { FAR, StepTable } from './stepTable';

/** Levels are read and moved in steps of this, world units. */
export const LEVEL_STEP = 0.5;

/** Asks for the level of a stage in steps of the picture. @param rest y of its level while no season tells it */
export function levelSteps(kit: { dials: Dials; unitsPerM: number }, stage: string, rest: number): number {
  return kit.dials.inSteps(stage, 'level_m', -rest / kit.unitsPerM, LEVEL_STEP / kit.unitsPerM);
}

export interface Pool {
  id: string;
  x: number;
  w: number;
  /** top of the dry space over the water, if it is filled plainly */
  rim?: number;
  level: number;
  floor: number;
  seed: number;
  sign?: number;
  /** its level is not among those of the design */
  still?: boolean;
  /** it fills a closed hull: no surface, no change of level */
  full?: boolean;
  /** it never stands higher than at rest: what comes after a blocked mat */
  behind?: boolean;
}

/** Light in water: pale at the surface, dark at the floor, a shaft of sun for every 110 units, short bright strokes near the top. */
export function light(pen: Pen, x: number, y: number, w: number, h: number, seed: number): void {
  const random = scatter(seed);
  const c = pen.context;
  const shade = c.createLinearGradient(0, y, 0, y + h);
  shade.addColorStop(0, 'rgba(255,255,255,.55)');
  shade.addColorStop(0.4, 'rgba(255,255,255,.1)');
  shade.addColorStop(0.58, 'rgba(255,255,255,0)');
  shade.addColorStop(0.58, 'rgba(11,28,48,0)');
  shade.addColorStop(1, 'rgba(11,28,48,.14)');
  c.fillStyle = shade;
  c.fillRect(x, y, w, h);
  pen.within(`M${x} ${y}h${w}v${h}h${-w}Z`, () => {
    const shafts = Math.max(1, Math.round(w / 110));
    for (let i = 0; i < shafts; i += 1) {
      const sx = x + ((i + 0.25 + random() * 0.3) * w) / shafts;
      const sw = 14 + random() * 18;
      pen.path(`M${sx} ${y}l${sw} 0l${h * 0.34} ${h}l${-sw * 1.5} 0Z`, { fill: '#fff', alpha: 0.15 });
    }
    for (let i = 0; i < Math.max(3, w / 42); i += 1) {
      const cx = x + random() * w;
      const cy = y + 9 + random() * Math.min(h * 0.5, 70);
      const length = 14 + random() * 30;
      pen.path(`M${cx} ${cy}q${length / 4} ${-3 - random() * 3} ${length / 2} 0t${length / 2} 0`, {
        ink: '#fff',
        width: 1 + random() * 1.2,
        alpha: 0.25 + random() * 0.35,
      });
    }
  });
}

/** Surface of a water: an ink line over a white one, and the level sign. */
class Surface {
  private readonly white: GameObjects.Image;
  private readonly ink: GameObjects.Image;
  private readonly sign: GameObjects.Image | null;
  private readonly whiteAt: StepTable;
  private readonly inkAt: StepTable;
  private readonly signAt: StepTable | null;

  constructor(kit: Kit, pool: Pool, rise: Rise) {
    const add = (colour: string, thick: number): GameObjects.Image =>
      kit.studio.patch(pool.x, pool.level).setTint(rgb(colour)).setDisplaySize(pool.w, thick);
    this.white = add('#ffffff', 3);
    this.ink = add(INK.ink, 1.6);
    this.whiteAt = rise.ready((level) => level + 0.6);
    this.inkAt = rise.ready((level) => level - 0.8);
    const x = pool.x + (pool.sign ?? 0);
    const sign =
      pool.sign === undefined
        ? null
        : kit.studio.show(kit.studio.bake({ x: x - 10, y: pool.level - 15, w: 20, h: 26 }, (pen) => levelSign(pen, x, pool.level - 1)));
    const over = sign === null ? 0 : sign.y - pool.level;
    this.sign = sign;
    this.signAt = sign === null ? null : rise.ready((level) => level + over);
    this.move(0);
  }

  /** @param below steps below the rest */
  move(below: number): void {
    this.white.y = this.whiteAt.at(below);
    this.ink.y = this.inkAt.at(below);
    if (this.sign !== null && this.signAt !== null) this.sign.y = this.signAt.at(below);
  }
}

/** A level on its way to where the season has it, in steps from where it rests. */
class Rise {
  private readonly told: number;
  private readonly rest: number;
  /** bounds, in steps below the rest */
  private readonly highest: number;
  private readonly lowest: number;
  private readonly levels: StepTable;
  below = 0;

  /** @param highest, lowest bounds of the level, y in the picture */
  constructor(
    kit: Kit,
    private readonly dials: Dials,
    private readonly pool: Pool,
    highest: number,
    lowest: number,
  ) {
    this.told = levelSteps(kit, pool.id, pool.level);
    this.rest = dials.steps[this.told];
    this.highest = Math.max(-FAR, Math.ceil((highest - pool.level) / LEVEL_STEP)) | 0;
    this.lowest = Math.min(FAR, Math.floor((lowest - pool.level) / LEVEL_STEP)) | 0;
    this.levels = this.ready((level) => level);
  }

  /** What goes with the level, worked out for each step that it can take. */
  ready(make: (level: number) => number): StepTable {
    const { pool } = this;
    return new StepTable(this.highest, this.lowest, (below) => make(pool.level + below * LEVEL_STEP));
  }

  /** The level as it lies ready: what the water keeps as its own would be made anew for each reader. */
  get levelNow(): number {
    return this.levels.at(this.below);
  }

  /** Moves the level on. @returns whether it has moved */
  on(water: Surfaced, moment: Moment): boolean {
    const { pool } = this;
    const told = this.rest - this.dials.steps[this.told];
    const goal = pool.still || pool.full ? 0 : told < this.highest ? this.highest : told > this.lowest ? this.lowest : told;
    if (goal === this.below) return false;
    this.below += moment.part(goal - this.below);
    water.level = this.levels.at(this.below);
    return true;
  }
}

/** Water between straight walls. Plug flow shows up to three colours, from the inlet on the left to the outlet on the right. */
export class StraightWater implements Live {
  /** where the surface is drawn now */
  level: number;
  private readonly bodies: GameObjects.Image[] = [];
  private readonly dry: GameObjects.Image | null;
  private readonly light: GameObjects.Image;
  private readonly colours: BandColour[] = [];
  private readonly bands: number[] = [];
  private readonly surface: Surface;
  private readonly dials: Dials;
  private readonly rise: Rise;
  /** for each level: scale of what lies in the water, of what stands dry, and of the light */
  private readonly deep: StepTable;
  private readonly dryHigh: StepTable | null;
  private readonly lit: StepTable;

  constructor(
    kit: Kit,
    pool: Pool,
    private readonly points: 1 | 3 = 1,
  ) {
    this.level = pool.level;
    this.dials = kit.dials;
    this.rise = new Rise(
      kit,
      kit.dials,
      pool,
      Math.max(pool.behind ? pool.level : -Infinity, pool.rim === undefined ? -Infinity : pool.rim + 1),
      pool.floor - 3,
    );
    const pieces = points === 1 ? 1 : 2;
    this.dry = pool.rim === undefined ? null : kit.studio.patch(pool.x, pool.rim).setTint(rgb(INK.back)).setDisplaySize(pool.w, 1);
    for (let i = 0; i < pieces; i += 1)
      this.bodies.push(kit.studio.patch(pool.x + (pool.w * i) / pieces, pool.level).setDisplaySize(pool.w / pieces, 1));
    for (let i = 0; i < points; i += 1) {
      this.colours.push(new BandColour());
      this.bands.push(kit.dials.water(pool.id, i));
    }
    this.light = kit.studio.show(
      kit.studio.bake({ x: pool.x, y: pool.level, w: pool.w, h: pool.floor - pool.level }, (pen) =>
        light(pen, pool.x, pool.level, pool.w, pool.floor - pool.level, pool.seed),
      ),
    );
    this.light.setDisplaySize(pool.w, pool.floor - pool.level);
    this.surface = new Surface(kit, pool, this.rise);
    const depth = (level: number): number => Math.max(1, pool.floor - level);
    const {
      dry,
      light: shone,
      bodies: [body],
    } = this;
    this.deep = this.rise.ready((level) => depth(level) / body.height);
    this.lit = this.rise.ready((level) => depth(level) / shone.height);
    const { rim } = pool;
    this.dryHigh = dry === null || rim === undefined ? null : this.rise.ready((level) => Math.max(1, level - rim) / dry.height);
    this.place();
    this.paint();
  }

  update(moment: Moment): void {
    if (this.rise.on(this, moment)) this.place();
    let changed = false;
    for (let i = 0; i < this.points; i += 1) if (this.colours[i].towards(this.dials.bands[this.bands[i]], moment)) changed = true;
    if (changed) this.paint();
  }

  private place(): void {
    const { below } = this.rise;
    const level = this.rise.levelNow;
    for (let i = 0; i < this.bodies.length; i += 1) {
      this.bodies[i].y = level;
      this.bodies[i].scaleY = this.deep.at(below);
    }
    if (this.dry !== null && this.dryHigh !== null) this.dry.scaleY = this.dryHigh.at(below);
    this.light.y = level;
    this.light.scaleY = this.lit.at(below);
    this.surface.move(below);
  }

  private paint(): void {
    const { colours } = this;
    if (this.points === 1) this.bodies[0].setTint(colours[0].tint);
    else for (let i = 0; i < 2; i += 1) this.bodies[i].setTint(colours[i].tint, colours[i + 1].tint, colours[i].tint, colours[i + 1].tint);
  }
}

/** Water in a vessel whose walls are not straight, such as a cone: its shape is baked, and cropped where the level has sunk. */
export class ShapedWater implements Live {
  level: number;
  private readonly body: GameObjects.Image;
  private readonly colour = new BandColour();
  private readonly surface: Surface | null;
  private readonly dials: Dials;
  private readonly rise: Rise;
  private readonly band: number;

  constructor(
    kit: Kit,
    private readonly pool: Pool,
    path: string,
  ) {
    this.level = pool.level;
    this.dials = kit.dials;
    this.rise = new Rise(kit, kit.dials, pool, pool.level, Infinity);
    this.band = kit.dials.water(pool.id, 0);
    const space = { x: pool.x, y: pool.level, w: pool.w, h: pool.floor - pool.level };
    this.body = kit.studio.show(kit.studio.bake(space, (pen) => pen.path(path, { fill: '#fff' }))).setTint(this.colour.tint);
    kit.studio.show(kit.studio.bake(space, (pen) => pen.within(path, () => light(pen, space.x, space.y, space.w, space.h, pool.seed))));
    this.surface = pool.full ? null : new Surface(kit, pool, this.rise);
  }

  update(moment: Moment): void {
    if (this.rise.on(this, moment)) {
      const cut = (this.level - this.pool.level) / this.body.scaleY;
      this.body.setCrop(0, cut, this.body.width, this.body.height - cut);
      this.surface?.move(this.rise.below);
    }
    if (this.colour.towards(this.dials.bands[this.band], moment)) this.body.setTint(this.colour.tint);
  }
}
