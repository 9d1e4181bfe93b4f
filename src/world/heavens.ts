// What lies behind the loop and follows the hour: sky and greenhouse, sun and moon on their way, and the one wash of light over all.
import type { GameObjects } from 'phaser';
import type { PageState } from '../store/state';
import { house, houseOf, moon, sky, sun } from './backdrop';
import { daylight, type Daylight } from './daylight';
import type { Moment } from './moment';
import type { Studio } from './studio';

/** Reach of the sun's glow, world units. */
const SUN = 104;
/** Where sun and moon stand, and how high over the eaves they climb. */
const AT = 74;
const CLIMB = 200;
/** Changes of light smaller than this are not drawn. */
const UNSEEN = 0.004;
/** The hour whose light is held while building and while days fly by. */
const HELD_h = 11;

export class Heavens {
  private readonly sun: GameObjects.Image;
  private readonly moon: GameObjects.Image;
  private readonly wash: GameObjects.Image;
  private readonly eave: number;
  private readonly high: number;
  private readonly light: Daylight = { hour: HELD_h, dayLength_h: 12, sun: 1, colour: 0, alpha: 0 };
  private washed = 0;
  private sunAt = NaN;

  /** @param width of the picture; loopTop: highest y the loop needs; viewTop: upper edge of the view */
  constructor(studio: Studio, width: number, loopTop: number, viewTop: number) {
    const shape = houseOf(width, loopTop, viewTop);
    this.eave = shape.eave;
    this.high = Math.max(viewTop + 52, shape.eave - CLIMB);
    studio.show(studio.bakeWide({ x: 0, y: viewTop, w: width, h: -viewTop }, (pen) => {
      sky(pen, width, viewTop);
      house(pen, shape);
    }));
    this.sun = studio.show(studio.bake({ x: -SUN, y: -SUN, w: 2 * SUN, h: 2 * SUN }, (pen) => pen.at(0, 0, () => sun(pen), 0, SUN / 130))).setOrigin(0.5, 0.5).setX(AT);
    this.moon = studio.show(studio.bake({ x: -40, y: -40, w: 80, h: 80 }, moon)).setOrigin(0.5, 0.5).setPosition(AT, this.high);
    this.wash = studio.patch(0, viewTop).setDisplaySize(width + 2, -viewTop).setAlpha(0);
  }

  /** Sun, moon and wash by the hour; the light of late morning is held while days fly by. */
  update(moment: Moment, state: PageState): void {
    const { light } = this;
    const held = state.mode === 'build' || state.speed === 'day1' || state.speed === 'days5';
    light.hour = held ? HELD_h : moment.now_h % 24;
    light.dayLength_h = state.plan?.climate.dayLength_h ?? 12;
    daylight(light);
    if (Math.abs(light.alpha - this.washed) > UNSEEN) {
      this.washed += (light.alpha - this.washed) * moment.ease;
      this.wash.setAlpha(this.washed);
    }
    if (light.alpha > 0 && light.colour !== this.wash.tintTopLeft) this.wash.setTint(light.colour);
    const lift = Math.max(0, Math.min(1, light.sun * 1.6));
    this.sun.y = this.eave - 40 + (this.high - this.eave + 40) * lift;
    if (Math.abs(light.sun - this.sunAt) <= UNSEEN) return;
    this.sunAt = light.sun;
    this.sun.setAlpha(Math.max(0, Math.min(1, light.sun * 5)));
    this.moon.setAlpha(Math.max(0, Math.min(1, -light.sun * 5)));
  }
}
