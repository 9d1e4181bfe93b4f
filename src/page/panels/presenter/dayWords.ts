// The moment of both loops in words: the day, and the hour where a demonstration has several turning points within one day.
import type { Shown } from '../../state/presenter/presenterState';
import { say } from '../../../words/say';
import { momentOf } from '../../../words/units';

/** Whether hours matter on a day: more than one prepared moment falls on it. */
function byTheHour(shown: Shown, day: number): boolean {
  return shown.demonstration.turningPoints.filter((moment) => moment.day === day).length > 1;
}

export function dayTold(shown: Shown, hours: number): string {
  const { day, clock } = momentOf(hours);
  return byTheHour(shown, day) ? say('presenter.dayClock', { day, hour: clock }) : say('presenter.day', { day });
}

/** A prepared moment by its name, and as short as a small button needs it. */
export function momentTold(shown: Shown, index: number): { name: string; sign: string } {
  const { day, hour } = shown.demonstration.turningPoints[index];
  return { name: dayTold(shown, day * 24 + hour), sign: byTheHour(shown, day) ? say('presenter.signHour', { hour }) : String(day) };
}
