// Numbers as a person reads them: decimals, the unit that stands behind, metric or US customary, as the chosen language writes them.
import { FORMATS, GRAMS_PER_KILOGRAM, LEAST_GRAMS, SHARES, type UsFormat } from './formats';
import { numberText } from './language';

export type UnitSystem = 'metric' | 'us';

/** In which units this page shows numbers; chosen at its start and when a person wishes. */
let system: UnitSystem = 'metric';

/** Chooses the units in which numbers are shown from now on. */
export function showUnitsOf(wanted: UnitSystem): void {
  system = wanted;
}

/** A number with so many decimals, "<0.1" for a trace that would round to nothing, "–" when there is none. */
export function figure(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return '–';
  const smallest = 10 ** -decimals;
  if (value > 0 && value < smallest / 2) return `<${numberText(smallest, decimals)}`;
  return numberText(Number(value.toFixed(decimals)) === 0 ? 0 : value, decimals);
}

/** The nearest whole number: scores and heads are counted, not measured. */
export function whole(value: number): string {
  return figure(Number.isFinite(value) ? Math.round(value) : value, 0);
}

/** As figure, with fewer decimals the larger the number is: no more than one from 10 on, none from 100 on. */
export function measured(value: number, decimals: number): string {
  const size = Math.abs(value);
  return figure(value, size >= 99.95 ? 0 : size >= 9.995 ? Math.min(1, decimals) : decimals);
}

function usOf(variable: string): UsFormat | undefined {
  return system === 'us' ? FORMATS[variable]?.us : undefined;
}

/** The unit shown behind a variable; empty for pH and counts. */
export function unitOf(variable: string): string {
  return SHARES.has(variable) ? '%' : (usOf(variable)?.unit ?? FORMATS[variable]?.unit ?? '');
}

/** A metric value as the number that is shown: the same, or converted. */
export function toShown(variable: string, value: number): number {
  const us = usOf(variable);
  return us === undefined ? value : (us.offset ?? 0) + us.factor * value;
}

/** The metric value of a number that a person entered. */
export function fromShown(variable: string, shown: number): number {
  const us = usOf(variable);
  return us === undefined ? shown : (shown - (us.offset ?? 0)) / us.factor;
}

/** The step of a field for a variable: the metric one, or one in the last decimal shown. */
export function stepShown(variable: string, metric: number): number {
  const us = usOf(variable);
  return us === undefined ? metric : 10 ** -us.decimals;
}

/** A variable's value as shown, without its unit. */
export function valueOf(variable: string, value: number): string {
  if (SHARES.has(variable)) return figure(100 * value, 0);
  if (variable === 'number') return whole(value);
  return measured(toShown(variable, value), usOf(variable)?.decimals ?? FORMATS[variable]?.decimals ?? 2);
}

/** A variable's value with its unit; the space between does not break. */
export function withUnit(variable: string, value: number): string {
  const unit = unitOf(variable);
  return unit === '' ? valueOf(variable, value) : `${valueOf(variable, value)}\u00a0${unit}`;
}

/** A mass that may be anything from a trace to a harvest: mg, g, kg, or ounces and pounds. @param grams ≥ 0 */
export function massOf(grams: number): string {
  if (grams === 0) return withUnit('grams', 0);
  if (grams < LEAST_GRAMS) return `${measured(1000 * grams, grams < 0.01 ? 1 : 0)}\u00a0mg`;
  if (grams >= GRAMS_PER_KILOGRAM) return withUnit('kilograms', grams / GRAMS_PER_KILOGRAM);
  if (system === 'us') return `${measured(toShown('grams', grams), 2)}\u00a0${unitOf('grams')}`;
  return `${figure(grams, grams < 9.95 ? 1 : 0)}\u00a0g`;
}

/** A volume of water: small vessels in litres, others in cubic metres; gallons for both. @param m3 ≥ 0 */
export function volumeOf(m3: number): string {
  return m3 < 0.1 ? withUnit('water_L', 1000 * m3) : withUnit('volume_m3', m3);
}

/** Day (the first is day 0, as in plans) and hour of a moment. */
export function momentOf(hours: number): { day: number; hour: number; clock: string } {
  const whole = Math.floor(hours + 1e-9);
  const hour = whole % 24;
  return { day: Math.floor(whole / 24), hour, clock: String(hour).padStart(2, '0') };
}
