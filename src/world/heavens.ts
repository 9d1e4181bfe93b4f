// What lies behind the loop and follows the hour and the weather: sky and greenhouse, sun and moon on their way, clouds and rain, and the one wash of light over all.
import type { GameObjects } from 'phaser';
import type { PageState } from '../store/state';
import { house, moon, sky, sun, type House } from './backdrop';
import { Clouds } from './clouds';
import { coverOf, rainOf } from './daylight';
import { CLOSED_SKY, LightOfDay, MOMENTS, NOON, OPAQUE, OPAQUE_WASH } from './lightOfDay';
import type { Moment } from './moment';
import { HARDEST, Rain } from './rain';
import type { Sheets } from './sheets';
import type { Studio } from './studio';

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
/** Light against the usual, of a sky without clouds. */
const CLEAR = 2;

/** Shows the sky and the greenhouse, over which all else is drawn. */
export function showSky(studio: Studio, shape: House, width: number, viewTop: number): void {
  studio.show(studio.bakeWide({ x: 0, y: viewTop, w: width, h: -viewTop }, (pen) => {
    sky(pen, width, viewTop);
    house(pen, shape);
  }));
}

export class Heavens {
  private readonly sun: GameObjects.Image;
  private readonly moon: GameObjects.Image;
  private readonly clouds: Clouds;
  private readonly rain: Rain;
  private readonly wash: GameObjects.Image;
  private readonly low: number;
  private readonly climb: number;
  /** by cloud cover, each worked out when it is first come to */
  private readonly lights: (LightOfDay | null)[] = Array.from({ length: CLOSED_SKY + 1 }, () => null);
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
  private season: PageState['season'] = null;

  /** @param width of the picture; viewTop: upper edge of the view */
  constructor(studio: Studio, sheets: Sheets, shape: House, width: number, viewTop: number) {
    const high = Math.round(Math.max(viewTop + 52, shape.eave - CLIMB));
    this.low = Math.round(shape.eave - RISE);
    this.climb = high - this.low;
    this.sun = studio.show(studio.bake({ x: -SUN, y: -SUN, w: 2 * SUN, h: 2 * SUN }, (pen) => pen.at(0, 0, () => sun(pen), 0, SUN / 130))).setOrigin(0.5, 0.5).setX(AT);
    this.moon = studio.show(studio.bake({ x: -40, y: -40, w: 80, h: 80 }, moon)).setOrigin(0.5, 0.5).setPosition(AT, high);
    this.clouds = new Clouds(studio, width, viewTop, Math.max(0, shape.eave - viewTop));
    this.rain = new Rain(sheets, shape, width, viewTop);
    this.wash = studio.patch(0, viewTop).setDisplaySize(width + 2, -viewTop).setAlpha(0);
  }

  /** Sun, moon and wash by the hour, clouds and rain by the day; the light of late morning is held while days fly by. */
  update(moment: Moment, state: PageState): void {
    const midnight = moment.tenths - moment.tenths % MOMENTS;
    if (midnight !== this.midnight || moment.view !== this.season) this.lookUp(moment, midnight);
    if (moment.glance && this.wanted !== this.covered) this.cloudOver(moment);
    const dayLength_h = state.plan === null ? USUAL_DAY_h : state.plan.climate.dayLength_h;
    const known = this.lights[this.covered];
    const light = known !== null && known.dayLength_h === dayLength_h ? known : this.workOut(dayLength_h);
    const held = moment.view === null || state.speed === 'day1' || state.speed === 'days5';
    this.shine(light, held ? HELD : moment.tenths - midnight, moment);
    if (moment.moving) this.clouds.drift(moment.view === null ? 0 : moment.tenths);
    this.rain.update(this.wet, moment);
  }

  /** How clouded and wet the day is; while building the sky is clear. */
  private lookUp(moment: Moment, midnight: number): void {
    this.midnight = midnight;
    this.season = moment.view;
    const light = moment.view === null || moment.view.sky.length === 0 ? CLEAR : moment.view.sky[Math.min(midnight / MOMENTS, moment.view.sky.length - 1)];
    this.wanted = Math.round(CLOSED_SKY * coverOf(light));
    this.wet = Math.round(HARDEST * rainOf(light));
  }

  private cloudOver(moment: Moment): void {
    const off = this.wanted - this.covered;
    this.covered += moment.moving ? Math.max(-SLOW, Math.min(SLOW, off)) : off;
    this.clouds.cover(this.covered);
  }

  private workOut(dayLength_h: number): LightOfDay {
    const light = new LightOfDay(dayLength_h, this.covered);
    this.lights[this.covered] = light;
    return light;
  }

  private shine(light: LightOfDay, at: number, moment: Moment): void {
    if (light.height[at] !== this.height) {
      this.height = light.height[at];
      this.sun.y = this.low + (this.climb * this.height) / NOON;
    }
    if (light.sun[at] !== this.sunny) {
      this.sunny = light.sun[at];
      this.sun.setAlpha(this.sunny / OPAQUE);
    }
    if (light.moon[at] !== this.moony) {
      this.moony = light.moon[at];
      this.moon.setAlpha(this.moony / OPAQUE);
    }
    const off = light.wash[at] - this.washed;
    if (off !== 0) {
      this.washed += moment.part(off);
      this.wash.setAlpha(this.washed / OPAQUE_WASH);
    }
    if (light.wash[at] > 0 && light.colour[at] !== this.wash.tintTopLeft) this.wash.setTint(light.colour[at]);
  }
}
