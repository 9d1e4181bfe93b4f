// Light, air and water temperature by day and hour, from the plan's climate and the seed's weather stream.
import { sin } from '../numerics/elementary';
import { stream } from '../numerics/streams';
import type { Climate } from './plan';

const TWO_PI = 6.283185307179586;

export interface Weather {
  /** daily light integral of each day, mol/m²/d, and the day's departure of air temperature, °C */
  light: Float64Array;
  air: Float64Array;
}

/** Draws the whole season's weather up front. */
export function drawWeather(climate: Climate, seed: string, days: number): Weather {
  const draw = stream(seed, 'weather');
  const light = new Float64Array(days);
  const air = new Float64Array(days);
  let mood = 0;
  for (let d = 0; d < days; d++) {
    mood = 0.6 * mood + (draw() - 0.5) * 1.6; // cloudy days come in spells
    const bright = Math.max(-1, Math.min(1, mood));
    light[d] = climate.dayLength_h > 0 ? climate.light_mol_m2_d * Math.max(0.15, 1 + climate.weather * bright) : 0;
    air[d] = 3 * climate.weather * bright;
    for (const spell of climate.spells ?? []) if (d >= spell.day && d < spell.day + spell.days) light[d] *= spell.light ?? 1;
  }
  return { light, air };
}

/** Light of each day against the climate's usual. */
export function skyOf(climate: Climate, weather: Weather): Float32Array {
  return Float32Array.from(weather.light, (light) => (climate.light_mol_m2_d > 0 ? light / climate.light_mol_m2_d : 1));
}

const dawn_h = (climate: Climate): number => 12 - climate.dayLength_h / 2;

/** Light at an hour against its mean over 24 h: a parabola between dawn and dusk; a day of no length is dark. */
export function lightNow(climate: Climate, hour: number): number {
  if (!(climate.dayLength_h > 0)) return 0;
  const share = (hour - dawn_h(climate)) / climate.dayLength_h;
  return share <= 0 || share >= 1 ? 0 : (24 / climate.dayLength_h) * 6 * share * (1 - share);
}

/** Air temperature, °C. */
export function airNow(climate: Climate, weather: Weather, day: number, hour: number): number {
  const { mean, daySwing, yearSwing, dayOfYear } = climate.air_C;
  const year = yearSwing * 0.5 * sin((TWO_PI * (dayOfYear + day - 110)) / 365);
  let spells = 0;
  for (const spell of climate.spells ?? []) {
    if (day >= spell.day && day < spell.day + spell.days && hour >= (spell.from_h ?? 0) && hour < (spell.to_h ?? 24))
      spells += spell.air_C ?? 0;
  }
  return spells + mean + year + weather.air[Math.min(day, weather.air.length - 1)] + daySwing * 0.5 * sin((TWO_PI * (hour - 9)) / 24);
}
