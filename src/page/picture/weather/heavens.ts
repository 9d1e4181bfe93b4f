// What lies behind the loop and follows the hour and the weather: sky and greenhouse, sun and moon on their way, clouds and rain, and the
// one wash of light over all.
import type { GameObjects } from 'phaser';
import type { SeasonView } from '../../state/common/state';
import { house, moon, sky, sun, type House } from '../scene/backdrop';
import { Clouds } from './clouds';
import { coverOf, rainOf } from './daylight';
import { CLOSED_SKY, lightsOf, MOMENTS, NOON, OPAQUE, OPAQUE_WASH, type LightOfDay } from './lightOfDay';
import type { Moment } from '../kit/moment';
import { HARDEST, Rain } from './rain';
import { StepTable } from '../kit/stepTable';
import type { Sheet, Studio } from '../kit/studio';

/** Reach of the sun's glow, world units. */
const SUN = 104;
/** Where sun and moon stand, how high over the eaves they climb, and how low the sun rises. */
const AT = 74;
const CLIMB = 200;
const RISE = 40;
/** The moment whose light is held while building and while days fly by: late morning. */
const HELD = 110;
/** At a glance the sky clears or closes by so many steps: days that fly by must not flash. */
const SLOW = 1;
const USUAL_DAY_h = 12;
/** The sky without clouds: light of its days against the usual. */
const CLEAR_SKY = Float32Array.of(2);
/** How much of sun and moon is seen, and how much the wash covers, by their steps. */
const SEEN = new StepTable(0, OPAQUE, (step) => step / OPAQUE);
const WASHED = new StepTable(0, OPAQUE_WASH, (step) => step / OPAQUE_WASH);

/** Shows the sky and the greenhouse, over which all else is drawn. */
export function showSky(studio: Studio, shape: House, width: number, viewTop: number): void {
  studio.show(
    studio.bakeWide({ x: 0, y: viewTop, w: width, h: -viewTop }, (pen) => {
      sky(pen, width, viewTop);
      house(pen, shape);
    }),
  );
}

export class Heavens {
  private readonly sun: GameObjects.Image;
  private readonly moon: GameObjects.Image;
  private readonly clouds: Clouds;
  private readonly rain: Rain;
  private readonly wash: GameObjects.Image;
  /** where the sun stands, by its height */
  private readonly sunAt: StepTable;
  /** light by cloud cover, and the length of the day that it is for */
  private lights: readonly LightOfDay[];
  private dayLength_h = USUAL_DAY_h;
  /** steps of what is shown now: clouds, opacity of the wash, height of the sun, how much of sun and moon is seen */
  private covered = 0;
  private washed = 0;
  private height = -1;
  private sunny = -1;
  private moony = -1;
  /** clouds and rain of the day that is shown, the tenth of an hour at which it begins, and its season */
  private wanted = 0;
  private wet = 0;
  private midnight = -1;
  private season: SeasonView | null = null;
  /** clouds and rain by day, worked out for a season's sky */
  private sky: Float32Array | null = null;
  private clouded = new Uint8Array(1);
  private rained = new Uint8Array(1);

  /** @param width of the picture; viewTop: upper edge of the view; dayLength_h: of the plan that is drawn */
  constructor(studio: Studio, sheets: { bits: Sheet }, shape: House, width: number, viewTop: number, dayLength_h: number = USUAL_DAY_h) {
    this.dayLength_h = dayLength_h;
    this.lights = lightsOf(dayLength_h);
    const high = Math.round(Math.max(viewTop + 52, shape.eave - CLIMB));
    const low = Math.round(shape.eave - RISE);
    this.sunAt = new StepTable(0, NOON, (height) => low + ((high - low) * height) / NOON);
    this.sun = studio
      .show(studio.bake({ x: -SUN, y: -SUN, w: 2 * SUN, h: 2 * SUN }, (pen) => pen.at(0, 0, () => sun(pen), 0, SUN / 130)))
      .setOrigin(0.5, 0.5)
      .setX(AT);
    this.moon = studio
      .show(studio.bake({ x: -40, y: -40, w: 80, h: 80 }, moon))
      .setOrigin(0.5, 0.5)
      .setPosition(AT, high);
    this.clouds = new Clouds(studio, width, viewTop, Math.max(0, shape.eave - viewTop));
    this.rain = new Rain(sheets, shape, width, viewTop);
    this.wash = studio
      .patch(0, viewTop)
      .setDisplaySize(width + 2, -viewTop)
      .setAlpha(0);
  }

  /** Sun, moon and wash by the hour, clouds and rain by the day; the light of late morning is held while days fly by. */
  update(moment: Moment): void {
    const midnight = moment.tenths - (moment.tenths % MOMENTS);
    if (midnight !== this.midnight || moment.view !== this.season) this.lookUp(moment, midnight);
    if (moment.glance && this.wanted !== this.covered) this.cloudOver(moment);
    const dayLength_h = moment.plan === null ? USUAL_DAY_h : moment.plan.climate.dayLength_h;
    if (dayLength_h !== this.dayLength_h) {
      this.dayLength_h = dayLength_h;
      this.lights = lightsOf(dayLength_h);
    }
    const light = this.lights[this.covered];
    const held = moment.view === null || moment.hurries;
    this.shine(light, held ? HELD : moment.tenths - midnight, moment);
    if (moment.moving) this.clouds.drift(moment.view === null ? 0 : moment.tenths);
    this.rain.update(this.wet, moment);
  }

  /** How clouded and wet the day is; while building the sky is clear. */
  private lookUp(moment: Moment, midnight: number): void {
    this.midnight = midnight;
    this.season = moment.view;
    const sky = moment.view === null ? CLEAR_SKY : moment.view.sky;
    if (sky !== this.sky) this.foresee(sky);
    const day = Math.min((midnight / MOMENTS) | 0, this.clouded.length - 1);
    this.wanted = this.clouded[day];
    this.wet = this.rained[day];
  }

  private foresee(sky: Float32Array): void {
    this.sky = sky;
    const days = sky.length === 0 ? CLEAR_SKY : sky;
    this.clouded = Uint8Array.from(days, (light) => Math.round(CLOSED_SKY * coverOf(light)));
    this.rained = Uint8Array.from(days, (light) => Math.round(HARDEST * rainOf(light)));
  }

  private cloudOver(moment: Moment): void {
    const off = this.wanted - this.covered;
    this.covered += moment.moving ? Math.max(-SLOW, Math.min(SLOW, off)) : off;
    this.clouds.cover(this.covered);
  }

  private shine(light: LightOfDay, at: number, moment: Moment): void {
    if (light.height[at] !== this.height) {
      this.height = light.height[at];
      this.sun.y = this.sunAt.at(this.height);
    }
    if (light.sun[at] !== this.sunny) {
      this.sunny = light.sun[at];
      this.sun.setAlpha(SEEN.at(this.sunny));
    }
    if (light.moon[at] !== this.moony) {
      this.moony = light.moon[at];
      this.moon.setAlpha(SEEN.at(this.moony));
    }
    const off = light.wash[at] - this.washed;
    if (off !== 0) {
      this.washed += moment.part(off);
      this.wash.setAlpha(WASHED.at(this.washed));
    }
    if (light.wash[at] > 0 && light.colour[at] !== this.wash.tintTopLeft) this.wash.setTint(light.colour[at]);
  }
}
