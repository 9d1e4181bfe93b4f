// What has happened by a moment, out of the season's events: a lamp's power, a pump that drew air, deaths of late, a spill. Look-ups only.
import type { SeasonView } from '../store/state';

const HOURS = 24;

/**
 * Power of a lamp now, W: as last set, none while the power is off.
 * @param usual as the plan gives it
 */
export function lampPower(view: SeasonView, stage: string, usual: number, now_h: number): number {
  let set = usual;
  let powered = true;
  for (let d = 0; d < view.days.length && d * HOURS <= now_h; d += 1) {
    const { events } = view.days[d];
    for (let i = 0; i < events.length; i += 1) {
      const event = events[i];
      if (event.hour > now_h) break;
      if (event.kind === 'lampSet' && event.stage === stage) set = event.amount;
      else if (event.kind === 'powerOff') powered = false;
      else if (event.kind === 'powerOn') powered = true;
    }
  }
  return powered ? set : 0;
}

/** Whether the last thing that befell the pump in this tank is that it drew air. Whether it runs again tells the flow. */
export function drewAir(view: SeasonView, stage: string, now_h: number): boolean {
  for (let d = Math.min(view.days.length - 1, Math.floor(now_h / HOURS)); d >= 0; d -= 1) {
    const { events } = view.days[d];
    for (let i = events.length - 1; i >= 0; i -= 1) {
      const event = events[i];
      if (event.hour > now_h) continue;
      if (event.kind === 'pumpDry' && event.stage === stage) return true;
      if (event.kind === 'pumpOff' || event.kind === 'pumpOn' || event.kind === 'powerOff' || event.kind === 'powerOn') return false;
    }
  }
  return false;
}

/** Sum of the amounts of one kind of event at a stage within so many hours before now. */
export function lately(view: SeasonView, kind: 'fishDied' | 'spilled' | 'backwashed', stage: string, now_h: number, hours: number): number {
  let sum = 0;
  for (let d = Math.max(0, Math.floor((now_h - hours) / HOURS)); d < view.days.length && d * HOURS <= now_h; d += 1) {
    const { events } = view.days[d];
    for (let i = 0; i < events.length; i += 1) {
      const event = events[i];
      if (event.kind === kind && event.stage === stage && event.hour <= now_h && event.hour > now_h - hours) sum += event.amount;
    }
  }
  return sum;
}
