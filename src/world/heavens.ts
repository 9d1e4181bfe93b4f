// What lies behind the loop and follows the hour and the weather: sky and greenhouse, sun and moon on their way, clouds, and the one wash of light over all.
import type { GameObjects } from 'phaser';
import type { PageState } from '../store/state';
import { cloud, house, houseOf, moon, sky, sun } from './backdrop';
import { coverOf, daylight, type Daylight } from './daylight';
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
/** Where clouds come up, as shares of the width and of the room over the eaves, and how large; in the order in which they come. */
const CLOUDS = [[0.5, 0.2, 0.9], [0.105, 0.42, 0.8], [0.8, 0.3, 1], [0.3, 0.12, 0.75], [0.93, 0.14, 0.7], [0.66, 0.05, 0.8]] as const;
const CLOUD_ALPHA = 0.92;
const HALF_CLOUD = { w: 88, h: 46 };
/** Share of its way that the sky goes while the rest of the picture goes all of its own: days that fly by must not flash. */
const SLOW = 0.2;
/** A closed sky leaves this much of the sun to be seen. */
const THROUGH = 0.25;

export class Heavens {
  private readonly sun: GameObjects.Image;
  private readonly moon: GameObjects.Image;
  private readonly clouds: GameObjects.Image[] = [];
  private readonly wash: GameObjects.Image;
  private readonly eave: number;
  private readonly high: number;
  private readonly light: Daylight = { hour: HELD_h, dayLength_h: 12, cover: 0, sun: 1, colour: 0, alpha: 0 };
  private washed = 0;
  private sunAt = NaN;
  private coverAt = NaN;
  /** how clouded the day is that is shown, and which day of which season that is */
  private wanted = 0;
  private day = -1;
  private season: PageState['season'] = null;

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
    const room = Math.max(0, this.eave - viewTop);
    const plate = studio.bake({ x: -HALF_CLOUD.w, y: -HALF_CLOUD.h, w: 2 * HALF_CLOUD.w, h: 2 * HALF_CLOUD.h }, cloud);
    for (const [x, y, size] of CLOUDS) {
      const image = studio.show(plate).setOrigin(0.5, 0.5).setPosition(x * width, viewTop + 34 + y * room).setAlpha(0);
      this.clouds.push(image.setScale(image.scaleX * size));
    }
    this.wash = studio.patch(0, viewTop).setDisplaySize(width + 2, -viewTop).setAlpha(0);
  }

  /** Sun, moon and wash by the hour; the light of late morning is held while days fly by. */
  update(moment: Moment, state: PageState): void {
    const { light } = this;
    const held = state.mode === 'build' || state.speed === 'day1' || state.speed === 'days5';
    light.hour = held ? HELD_h : moment.now_h % 24;
    light.dayLength_h = state.plan?.climate.dayLength_h ?? 12;
    this.lookUp(state);
    if (Math.abs(this.wanted - light.cover) > UNSEEN) light.cover += (this.wanted - light.cover) * (moment.moving ? moment.ease * SLOW : 1);
    daylight(light);
    if (Math.abs(light.alpha - this.washed) > UNSEEN) {
      this.washed += (light.alpha - this.washed) * moment.ease;
      this.wash.setAlpha(this.washed);
    }
    if (light.alpha > 0 && light.colour !== this.wash.tintTopLeft) this.wash.setTint(light.colour);
    const lift = Math.max(0, Math.min(1, light.sun * 1.6));
    this.sun.y = this.eave - 40 + (this.high - this.eave + 40) * lift;
    if (Math.abs(light.cover - this.coverAt) > UNSEEN) {
      for (let i = 0; i < this.clouds.length; i += 1) this.clouds[i].setAlpha(CLOUD_ALPHA * Math.max(0, Math.min(1, light.cover * this.clouds.length - i)));
    } else if (Math.abs(light.sun - this.sunAt) <= UNSEEN) return;
    this.sunAt = light.sun;
    this.coverAt = light.cover;
    this.sun.setAlpha(Math.max(0, Math.min(1, light.sun * 5)) * (1 - (1 - THROUGH) * light.cover));
    this.moon.setAlpha(Math.max(0, Math.min(1, -light.sun * 5)));
  }

  /** How clouded the day is, looked up when another day or season is shown; while building the sky is clear. */
  private lookUp({ mode, season, now_h }: PageState): void {
    const shown = mode === 'build' ? null : season;
    const day = Math.floor(now_h / 24);
    if (shown === this.season && day === this.day) return;
    this.season = shown;
    this.day = day;
    this.wanted = shown === null || shown.sky.length === 0 ? 0 : coverOf(shown.sky[Math.min(day, shown.sky.length - 1)]);
  }
}
