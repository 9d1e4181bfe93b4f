// What has happened by a moment, out of the season's events: a lamp that shines, deaths of late, a spill. Look-ups only.
import type { SeasonView } from '../../state/common/state';

/** The hour shown. */
export interface Now {
  now_h: number;
}

const HOURS = 24;

/**
 * Whether a lamp shines: as it was last set, and not while the power is off.
 * @param usual its power as the plan gives it, W
 */
export function lampShines(view: SeasonView, stage: string, usual: number, now: Now): boolean {
  const { now_h } = now;
  let set = usual > 0;
  let powered = true;
  for (let d = 0; d < view.days.length && d * HOURS <= now_h; d += 1) {
    const { events } = view.days[d];
    for (let i = 0; i < events.length; i += 1) {
      const event = events[i];
      if (event.hour > now_h) break;
      if (event.kind === 'lampSet' && event.stage === stage) set = event.amount > 0;
      else if (event.kind === 'powerOff') powered = false;
      else if (event.kind === 'powerOn') powered = true;
    }
  }
  return powered && set;
}

/** Sum of the amounts of one kind of event at a stage within so many hours before now, in whole numbers, rounded up. */
export function lately(view: SeasonView, kind: 'fishDied' | 'spilled' | 'backwashed', stage: string, now: Now, hours: number): number {
  const { now_h } = now;
  let sum = 0;
  for (let d = Math.max(0, Math.floor((now_h - hours) / HOURS)); d < view.days.length && d * HOURS <= now_h; d += 1) {
    const { events } = view.days[d];
    for (let i = 0; i < events.length; i += 1) {
      const event = events[i];
      if (event.kind === kind && event.stage === stage && event.hour <= now_h && event.hour > now_h - hours) sum += event.amount;
    }
  }
  return Math.ceil(sum) | 0;
}
