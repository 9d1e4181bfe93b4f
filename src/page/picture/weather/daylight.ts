// Time of day on the picture: height of the sun, and the one wash over sky and panes.

export interface Daylight {
  /** asked: hour of the day, 0–24, and hours of daylight; the day is centred on 12 */
  hour: number;
  dayLength_h: number;
  /** share of the sky that is clouded, 0–1 */
  cover: number;
  /** 0 at the horizon to 1 at noon; negative at night, to −1 at midnight */
  sun: number;
  /** colour of the wash, 0xRRGGBB */
  colour: number;
  /** its opacity, at most 0.34 but for a dull day's */
  alpha: number;
}

const DAWN = 0xf3b98a;
const DUSK = 0xe0913f;
const NIGHT = 0x17407f;
const NIGHT_ALPHA = 0.34;
const TWILIGHT_ALPHA = 0.34;
/** The sun's height, as a share of noon's, below which the light is warm, and above (minus) which the night begins. */
const LOW_SUN = 0.35;
const DEEP_NIGHT = -0.28;
/** The wash of a day under clouds, and its opacity where they close. */
const DULL = 0x5c6f80;
const DULL_ALPHA = 0.3;
/** Against the usual light, a day with this much has a clear sky, and with this much a closed one. */
const CLEAR = 1.15;
const CLOSED = 0.65;

/** How clouded a day was that gave so much light against the usual. */
export function coverOf(light: number): number {
  return Math.max(0, Math.min(1, (CLEAR - light) / (CLEAR - CLOSED)));
}

/** Against the usual light, it begins to rain on a day with less than this, and rains hardest with this. */
const RAIN_FROM = 0.78;
const RAINS_HARDEST = 0.45;

/** How hard it rained on a day that gave so much light against the usual, 0–1. */
export function rainOf(light: number): number {
  return light >= RAIN_FROM ? 0 : Math.max(0.35, Math.min(1, (RAIN_FROM - light) / (RAIN_FROM - RAINS_HARDEST)));
}

/** Works out the light at the hour that is asked for; the answer is written beside it, so that nothing is made anew in each frame. */
export function daylight(into: Daylight): Daylight {
  const half = Math.max(0.5, Math.min(23.5, into.dayLength_h)) / 2;
  const off = into.hour - 12;
  const away = Math.abs(off);
  const dark = into.dayLength_h <= 0;
  into.sun = dark ? -1 : away <= half ? Math.cos((away / half) * (Math.PI / 2)) : -Math.sin(((away - half) / (12 - half)) * (Math.PI / 2));
  if (into.sun >= LOW_SUN) {
    into.colour = off < 0 ? DAWN : DUSK;
    into.alpha = 0;
  } else if (into.sun >= 0) {
    into.colour = off < 0 ? DAWN : DUSK;
    into.alpha = TWILIGHT_ALPHA * (1 - into.sun / LOW_SUN);
  } else if (into.sun > DEEP_NIGHT) {
    const t = into.sun / DEEP_NIGHT;
    into.colour = blend(off < 0 ? DAWN : DUSK, NIGHT, t);
    into.alpha = TWILIGHT_ALPHA + (NIGHT_ALPHA - TWILIGHT_ALPHA) * t;
  } else {
    into.colour = NIGHT;
    into.alpha = NIGHT_ALPHA;
  }
  if (into.sun <= 0 || into.cover <= 0) return into;
  // clouds take the light of the day, and less the lower the sun
  const dull = DULL_ALPHA * into.cover * (1 - into.alpha / TWILIGHT_ALPHA);
  if (dull > 0) into.colour = blend(DULL, into.colour, into.alpha / (into.alpha + dull));
  into.alpha += dull;
  return into;
}

/** Mixes two colours 0xRRGGBB; t = 0 gives the first. */
export function blend(a: number, b: number, t: number): number {
  const r = ((a >> 16) & 255) + (((b >> 16) & 255) - ((a >> 16) & 255)) * t;
  const g = ((a >> 8) & 255) + (((b >> 8) & 255) - ((a >> 8) & 255)) * t;
  const bl = (a & 255) + ((b & 255) - (a & 255)) * t;
  return (Math.round(r) << 16) | (Math.round(g) << 8) | Math.round(bl);
}
