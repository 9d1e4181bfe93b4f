// The moment the picture shows: one object, rewritten each frame, that every moving part goes by. What it reads off the season stands in
// the dials.
import type { SeasonView } from '../../state/common/state';
import type { Tint } from '../../state/common/tints';
import type { ComfortBand, Plan } from './terms';

/** Time in which a tween covers most of its way, s. */
const TWEEN_s = 0.2;
/** Time between two glances at what changes slowly, s. */
const PATIENCE_s = 0.1;
const PARTS = 256;

export class Moment {
  view: SeasonView | null = null;
  plan: Plan | null = null;
  comfort: readonly ComfortBand[] = [];
  now_h = 0;
  /** the same in whole tenths of an hour */
  tenths = 0;
  /** seconds that moving things have lived: fish, water in pipes */
  time = 0;
  /** seconds that bubbles and specks have lived; it holds at speeds over a day a second */
  gasTime = 0;
  /** real seconds since the last frame */
  dt = 0;
  /** share of its remaining way a tween covers in this frame, 0–1 */
  ease = 1;
  /** the same in whole parts of 256 */
  private easeParts = PARTS;
  /** whether days fly by */
  hurries = false;
  /** whether the water in pipes is seen to move: not while days fly by */
  flowing = false;
  /** whether things move at all (people may ask for less motion) */
  moving = true;
  /** whether what changes slowly is looked at again in this frame */
  glance = true;
  private sinceGlance_s = PATIENCE_s;

  constructor(public tint: Tint) {}

  /** Moves on by `dt`, once the scene has written what the page shows: season, plan, comfort, tint, hour, haste and motion. */
  advance(): void {
    const { dt } = this;
    this.tenths = Math.max(0, Math.floor(10 * this.now_h));
    this.sinceGlance_s += dt;
    this.glance = !this.moving || this.sinceGlance_s >= PATIENCE_s;
    if (this.glance) this.sinceGlance_s = 0;
    this.ease = this.moving ? 1 - Math.exp(-dt / TWEEN_s) : 1;
    this.easeParts = Math.round(PARTS * this.ease);
    this.flowing = this.moving && !this.hurries;
    if (!this.moving) return;
    this.time += dt;
    if (this.flowing) this.gasTime += dt;
  }

  /** What a tween covers in this frame of a way in whole steps; at least one, so that it arrives. */
  part(way: number): number {
    const part = (way * this.easeParts) >> 8;
    return part !== 0 || way === 0 ? part : way > 0 ? 1 : -1;
  }
}

/** A part of the picture that follows the moment. */
export interface Live {
  update(moment: Moment): void;
}
