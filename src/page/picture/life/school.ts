// The fish of a tank: a few stand for all. Their size follows mass, their place and pallor follow what ails them.
import type { GameObjects, Textures } from 'phaser';
import { scatter } from '../kit/curves';
import { distressAt, fishDistress } from '../marks/marks';
import { NO_FIGURE, type Dials } from '../kit/dials';
import type { Kit } from '../kit/kit';
import type { Live, Moment } from '../kit/moment';
import { lately } from '../kit/happenings';
import { CENTRES, fishScale, fishShown, LANES, LARGEST, MOST_FISH, REFERENCE_g, REFERENCE_SCALE } from './fishSize';
import { speciesIn } from './living';
import { FAR, StepTable } from '../kit/stepTable';
import { BEAT_FRAMES, FISH_BAKED, fishFrame, type Sheets } from './sheets';
import type { Surfaced } from '../kit/surfaced';
import type { ComfortBand, Plan } from '../kit/terms';
import { LEVEL_STEP, levelSteps } from '../kit/water';

/** The dead are drawn for this long, and never more of them than this; places along the tank. */
const SHOWN_DEAD_h = 12;
const MOST_DEAD = 4;
const DEAD_AT = [0.36, 0.68, 0.2, 0.52] as const;
/** Area of the art of a fish, its units squared; the share of their tank that fish fill at most; the smallest scale that follows. */
const FISH_AREA = 5300;
const FILLED = 0.44;
const LEAST_SCALE = 0.3;
/** Below this welfare, in parts, a fish looks unwell. */
const PALE_WELFARE = 55;
/** Steps in which welfare and mass are read; what stands for a number that no season tells. */
const PARTS = 100;
const MASS_STEP_g = 1;
const UNTOLD = -1;
/** Steps in which a fish turns from one side to the middle, and how narrow it is seen at least. */
const SIDES = 8;
const LEAST_SIDE = 2;

/** What may trouble them (oxygen, un-ionised and total ammonia), the steps in which it is read, and its value where no season tells. */
const TROUBLES = [
  { variable: 'O2_mg_L', size: 0.1, otherwise: 99 },
  { variable: 'NH3_mgN_L', size: 0.005, otherwise: 0 },
  { variable: 'TAN_mgN_L', size: 0.1, otherwise: 0 },
] as const;
const HUNDREDTHS = new StepTable(0, 100, (step) => step / 100);
/** Scales by mass in its steps; a fish as heavy as the last is drawn as large as any. */
const HEAVIEST = Math.ceil((REFERENCE_g * (LARGEST / REFERENCE_SCALE) ** 3) / MASS_STEP_g);
const SCALES = new StepTable(0, HEAVIEST, (step) => fishScale(step * MASS_STEP_g));

interface Swimmer {
  image: GameObjects.Image;
  lane: number;
  phase: number;
  pace: number;
  centre: number;
  reach: number;
  frame: number;
}

export class School implements Live {
  private readonly swimmers: Swimmer[] = [];
  private readonly frames: Textures.Frame[] = [];
  private shown = 0;
  private alive = UNTOLD;
  /** how short of oxygen they are, 0–1, and how far they show it */
  private distress = 0;
  private hunger = 0;
  private stocked = 0;
  private mass_g = 0;
  private plan: Plan | null = null;
  private readonly dials: Dials;
  /** where the dials tell of them, number, mass and welfare in steps */
  private readonly places: { number: number; mass: number; level: number; welfare: number };
  /** scale of the art, and what it was worked out for: steps of mass, number, steps of the water's level */
  private scale = 1;
  private room: StepTable | null = null;
  private scaledFor = { mass: NO_FIGURE, number: NO_FIGURE, level: NO_FIGURE };
  private welfare = PARTS;
  /** where the dials tell what may trouble them, and how much it does at each of its steps, by these bands */
  private readonly troubles: { steps: number; distress: Uint8Array }[];
  private judgedBy: readonly ComfortBand[] = [];
  /** how much ammonia troubles them, 0–1 */
  private ammonia = 0;
  /** the side each fish was last shown from, in steps (0: to be shown anew), and its turn */
  private readonly sides = new Int32Array(MOST_FISH);
  private readonly turned = new Float64Array(MOST_FISH);

  constructor(
    kit: Kit,
    sheets: Sheets,
    private readonly id: string,
    private readonly x: number,
    private readonly w: number,
    private readonly floor: number,
    private readonly water: Surfaced,
  ) {
    this.dials = kit.dials;
    this.places = {
      number: kit.dials.inSteps(id, 'number', UNTOLD, 1),
      mass: kit.dials.inSteps(id, 'mass_g', UNTOLD, MASS_STEP_g),
      level: levelSteps(kit, id, water.level),
      welfare: kit.dials.inSteps(id, 'welfare', 1, 1 / PARTS),
    };
    this.troubles = TROUBLES.map(({ variable, size, otherwise }) => ({
      steps: kit.dials.inSteps(id, variable, otherwise, size),
      distress: fishDistress([], variable, size),
    }));
    const random = scatter(41);
    for (const species of sheets.living.species) {
      this.kinds.push(species);
      for (const unwell of [false, true])
        for (let i = 0; i < BEAT_FRAMES; i += 1) this.frames.push(sheets.fish.frame(fishFrame(species, unwell, i)));
    }
    const [first] = this.kinds;
    for (let i = 0; i < MOST_FISH; i += 1) {
      const lane = (LANES[i] + 0.2 + random() * 0.6) / MOST_FISH;
      this.swimmers.push({
        image: sheets.fish.image(fishFrame(first, false, 3)).setVisible(false),
        lane,
        phase: random() * 6.28,
        pace: 0.26 + random() * 0.22,
        centre: CENTRES[i],
        reach: 0.08 + random() * 0.2,
        frame: 3,
      });
    }
    for (let i = 0; i < MOST_DEAD; i += 1) this.dead.push(sheets.fish.image(fishFrame(first, true, 3)).setVisible(false));
    this.natural = sheets.fish.natural;
  }

  private readonly natural: number;
  private readonly kinds: string[] = [];
  /** those that died of late, adrift at the surface */
  private readonly dead: GameObjects.Image[] = [];
  private lying = 0;
  /** first of the frames of the species that lives here */
  private base = 0;

  update(moment: Moment): void {
    if (moment.plan !== null && moment.plan !== this.plan) this.stock(moment.plan);
    const { steps } = this.dials;
    const told = steps[this.places.number];
    const alive = told < 0 ? this.stocked : told;
    if (alive !== this.alive) {
      this.alive = alive;
      this.shown = fishShown(alive, Math.max(this.stocked, alive));
      for (let i = 0; i < MOST_FISH; i += 1) this.swimmers[i].image.setVisible(i < this.shown);
    }
    if (moment.glance || this.scaledFor.mass === NO_FIGURE) this.look(moment);
    if (this.distress !== this.hunger)
      this.hunger =
        Math.abs(this.distress - this.hunger) < 0.004 ? this.distress : this.hunger + (this.distress - this.hunger) * moment.ease * 0.5;
    if (this.lying > 0) this.mourn(moment);
    for (let i = 0; i < this.shown; i += 1) this.swim(i, moment, this.welfare < PALE_WELFARE - 4 * (i % 5));
  }

  /** Fish are drawn as large as their mass makes them, and as their number leaves room for. */
  private fit(mass: number): void {
    const { scaledFor } = this;
    const most = this.stocked > this.alive ? this.stocked : this.alive;
    const level = this.dials.steps[this.places.level];
    const apart = level - scaledFor.level;
    if (mass === scaledFor.mass && most === scaledFor.number && apart <= 1 && apart >= -1) return;
    if (most !== scaledFor.number || this.room === null) this.room = this.roomFor(most, level);
    scaledFor.mass = mass;
    scaledFor.number = most;
    scaledFor.level = level;
    const grown = mass < 0 ? fishScale(this.mass_g) : SCALES.at(mass < HEAVIEST ? mass : HEAVIEST);
    const room = this.room.at(level);
    this.scale = grown < room ? grown : room;
    this.sides.fill(0);
    if (this.lying > 0) this.lay();
  }

  /** What ails them, and how many died of late. */
  private look(moment: Moment): void {
    const { places } = this;
    const { steps } = this.dials;
    this.welfare = steps[places.welfare];
    this.fit(steps[places.mass]);
    this.judge(moment);
    const died = moment.view === null ? 0 : lately(moment.view, 'fishDied', this.id, moment, SHOWN_DEAD_h);
    const count =
      died > 0 ? Math.max(1, Math.min(MOST_DEAD, this.stocked <= MOST_FISH ? died : Math.ceil((MOST_FISH * died) / this.stocked))) : 0;
    if (count === this.lying) return;
    this.lying = count;
    this.lay();
    for (let i = 0; i < MOST_DEAD; i += 1) this.dead[i].setVisible(i < count);
  }

  /** How far they are from ease. */
  private judge(moment: Moment): void {
    const { troubles } = this;
    if (moment.comfort !== this.judgedBy) {
      this.judgedBy = moment.comfort;
      for (let i = 0; i < troubles.length; i += 1)
        troubles[i].distress = fishDistress(moment.comfort, TROUBLES[i].variable, TROUBLES[i].size);
    }
    const told = moment.view !== null;
    const free = this.distressBy(1);
    const total = this.distressBy(2);
    this.distress = HUNDREDTHS.at(told ? this.distressBy(0) : 0);
    this.ammonia = HUNDREDTHS.at(told ? (free > total ? free : total) : 0);
  }

  private distressBy(trouble: number): number {
    const { steps, distress } = this.troubles[trouble];
    return distressAt(distress, this.dials.steps[steps]);
  }

  /** Belly up, as large as they lived. */
  private lay(): void {
    const size = (this.scale / FISH_BAKED) * this.natural;
    for (let i = 0; i < MOST_DEAD; i += 1) this.dead[i].setScale(i % 2 === 0 ? size : -size, -size);
  }

  /** Shows the dead of the last hours once, belly up at the surface; then they have been taken out. */
  private mourn(moment: Moment): void {
    const { scale, lying } = this;
    for (let i = 0; i < lying; i += 1) {
      const image = this.dead[i];
      image.x = this.x + this.w * DEAD_AT[i] + Math.sin(moment.time * 0.4 + i) * 3;
      image.y = this.water.level + 10 * scale + 2 + Math.sin(moment.time * 0.9 + i * 2) * 1.5;
      image.rotation = (i % 2 === 0 ? 0.1 : -0.08) + Math.sin(moment.time * 0.6 + i) * 0.03;
    }
  }

  /** Largest scale at which so many fish still have room to be told apart, by the steps of the water's level. */
  private roomFor(number: number, level: number): StepTable {
    const shown = Math.max(1, fishShown(number, number));
    return new StepTable(level - FAR, level + FAR, (step) =>
      Math.max(LEAST_SCALE, Math.sqrt((FILLED * this.w * Math.max(0, this.floor + step * LEVEL_STEP)) / (shown * FISH_AREA))),
    );
  }

  private stock(plan: Plan): void {
    this.plan = plan;
    this.alive = UNTOLD;
    this.scaledFor.mass = NO_FIGURE;
    this.stocked = 0;
    const species = speciesIn(plan, this.id);
    this.base = species === null ? 0 : Math.max(0, this.kinds.indexOf(species)) * 2 * BEAT_FRAMES;
    for (let i = 0; i < MOST_FISH; i += 1) this.swimmers[i].frame = -1;
    for (let i = 0; i < MOST_DEAD; i += 1) this.dead[i].setFrame(this.frames[this.base + BEAT_FRAMES + 3]);
    let mass = 0;
    for (const cohort of plan.fish) {
      if (cohort.tank !== this.id) continue;
      this.stocked += cohort.number;
      mass += cohort.number * cohort.mass_g;
    }
    for (const action of plan.actions) {
      // put in from the start, before its first hour
      if (
        action.do !== 'stock'
        || action.tank !== this.id
        || action.every_d !== undefined
        || (action.day ?? 0) > 0
        || (action.hour ?? 0) > 0
      )
        continue;
      this.stocked += action.number;
      mass += action.number * action.mass_g;
    }
    this.mass_g = this.stocked > 0 ? mass / this.stocked : 0;
  }

  private swim(i: number, moment: Moment, unwell: boolean): void {
    const { scale, ammonia } = this;
    const fish = this.swimmers[i];
    const half = 62 * scale;
    const width = Math.max(10, this.w - 2 * half);
    const swing = moment.time * fish.pace * (unwell ? 0.5 : 1) + fish.phase;
    const centre = fish.centre + (0.12 - fish.centre) * ammonia * 0.8;
    const u = centre + Math.sin(swing) * fish.reach;
    const turn = Math.cos(swing) * 12;
    const facing = turn > 1 ? 1 : turn < -1 ? -1 : turn;
    const top = this.water.level + 18 * scale + 14;
    const lane = top + fish.lane * Math.max(10, this.floor - top - 26 * scale - 12);
    const gasp = this.water.level + 15 * scale + 3 + fish.lane * 30;
    fish.image.x = this.x + half + Math.max(0, Math.min(1, u)) * width;
    fish.image.y = lane + (gasp - lane) * this.hunger + Math.sin(swing * 1.7 + fish.phase) * 4 * (1 - this.hunger * 0.7);
    const seen = Math.round(facing * SIDES) | 0;
    const side = seen < 0 ? Math.min(-LEAST_SIDE, seen) : Math.max(LEAST_SIDE, seen);
    if (side !== this.sides[i]) {
      this.sides[i] = side;
      const size = (scale / FISH_BAKED) * this.natural;
      fish.image.setScale((size * side) / SIDES, size);
    }
    const turned = -this.hunger * 0.42 * (side < 0 ? -1 : 1);
    if (turned !== this.turned[i]) {
      this.turned[i] = turned;
      fish.image.rotation = turned;
    }
    const beat = moment.moving ? Math.sin(moment.time * (unwell ? 3.2 : 5.6) * (0.8 + fish.pace) + fish.phase * 3) : 0;
    const frame = Math.round(((beat + 1) / 2) * (BEAT_FRAMES - 1)) + (unwell ? BEAT_FRAMES : 0) + this.base;
    if (frame !== fish.frame) {
      fish.frame = frame;
      fish.image.frame = this.frames[frame];
    }
  }
}
