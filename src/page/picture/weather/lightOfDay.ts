// The light of a day of some length under some clouds at each of its moments, in whole steps: worked out once, so that a frame only looks
// it up.
import { daylight, type Daylight } from './daylight';

/** Moments of a day, and those of an hour. */
export const MOMENTS = 240;
export const MOMENTS_PER_h = MOMENTS / 24;
/**
 * A closed sky (so many steps for each of six clouds), full opacity of the wash, of sun and moon, and the height of noon's sun, in steps.
 */
export const CLOSED_SKY = 24;
export const OPAQUE_WASH = 256;
export const OPAQUE = 64;
export const NOON = 512;

/** A closed sky leaves this much of the sun to be seen. */
const THROUGH = 0.25;
/** The sun is high before noon, and is seen whole soon after it has risen. */
const RISES_EARLY = 1.6;
const SEEN_EARLY = 5;

const share = (value: number): number => Math.max(0, Math.min(1, value));

/** Lights of days of one length under every cover, by their length; kept as long as the page. */
const known = new Map<number, readonly LightOfDay[]>();

/** The light of days of this length, by the steps of a closed sky. */
export function lightsOf(dayLength_h: number): readonly LightOfDay[] {
  const kept = known.get(dayLength_h);
  if (kept !== undefined) return kept;
  const made = Array.from({ length: CLOSED_SKY + 1 }, (_, covered) => new LightOfDay(dayLength_h, covered));
  known.set(dayLength_h, made);
  return made;
}

export class LightOfDay {
  /** by moment: colour and opacity of the wash, how high the sun stands, how much of sun and moon is seen */
  readonly colour = new Int32Array(MOMENTS);
  readonly wash = new Int32Array(MOMENTS);
  readonly height = new Int32Array(MOMENTS);
  readonly sun = new Int32Array(MOMENTS);
  readonly moon = new Int32Array(MOMENTS);

  /** @param covered steps of a closed sky */
  constructor(
    readonly dayLength_h: number,
    covered: number,
  ) {
    const light: Daylight = { hour: 0, dayLength_h, cover: covered / CLOSED_SKY, sun: 0, colour: 0, alpha: 0 };
    const through = OPAQUE * (1 - (1 - THROUGH) * light.cover);
    for (let i = 0; i < MOMENTS; i += 1) {
      light.hour = i / MOMENTS_PER_h;
      daylight(light);
      this.colour[i] = light.colour;
      this.wash[i] = Math.round(OPAQUE_WASH * light.alpha);
      this.height[i] = Math.round(NOON * share(light.sun * RISES_EARLY));
      this.sun[i] = Math.round(through * share(light.sun * SEEN_EARLY));
      this.moon[i] = Math.round(OPAQUE * share(-light.sun * SEEN_EARLY));
    }
  }
}
