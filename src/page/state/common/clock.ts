// The clock on screen is an index into the season: how it advances, stops, steps and looks back. Pure.
import { say } from '../../../words/say';
import { whole } from '../../../words/units';
import { asking, questionBy } from '../run/questions';
import { lastHour, scoresAt } from './selectors';
import type { PageState, Speed } from './state';

/** Hours of the season per second of the clock on the wall. */
export const HOURS_PER_SECOND: Readonly<Record<Speed, number>> = { paused: 0, hours6: 6, day1: 24, days5: 120 };

/** A frame that took longer (a page in the background) counts as this many seconds. */
export const LONGEST_FRAME_S = 0.25;

/** The page's clock at a later hour: the hours passed are lived, a question on the way stops it at its hour, and the last hour brings the result. */
export function movedTo(state: PageState, hour: number): Partial<PageState> {
  if (state.plan === null || state.season === null) return {};
  const end = lastHour(state.plan);
  const wanted = Math.min(end, Math.max(0, hour));
  const put = state.question === null ? questionBy(state, wanted) : null;
  const now_h = put === null ? wanted : Math.min(wanted, Math.max(state.now_h, put.hour));
  const next: Partial<PageState> = { now_h, lived_h: Math.max(state.lived_h, now_h), ...(put === null ? null : asking(state, put.question)) };
  if (now_h < end || state.busy) return next;
  const scores = scoresAt(state.season, end);
  return {
    ...next, mode: 'result', speed: 'paused',
    announcement: say('said.over', { fish: whole(scores?.fishHealth ?? NaN), harvest: whole(scores?.harvest ?? NaN) }),
  };
}

/** What changes when so many real seconds pass. */
export function ticked(state: PageState, seconds: number): Partial<PageState> | null {
  const rate = HOURS_PER_SECOND[state.speed];
  if (rate === 0 || state.mode !== 'run' || state.question !== null || !(seconds > 0)) return null;
  return movedTo(state, state.now_h + rate * Math.min(seconds, LONGEST_FRAME_S));
}

/** To the next midnight, paused. */
export function steppedDay(state: PageState): Partial<PageState> | null {
  if (state.mode === 'build' || state.plan === null) return null;
  if (state.question !== null) return { announcement: say('said.questionFirst') };
  // a step is a pause: after a question on the way the clock stays still
  return { speed: 'paused', ...movedTo({ ...state, speed: 'paused' }, (Math.floor(state.now_h / 24 + 1e-9) + 1) * 24) };
}

/** Looks at an hour among those lived, paused. */
export function scrubbed(state: PageState, hour: number): Partial<PageState> | null {
  if (state.mode === 'build' || !Number.isFinite(hour)) return null;
  return { speed: 'paused', now_h: Math.min(state.lived_h, Math.max(0, hour)) };
}

/** Sets the speed; after the result, playing again from an earlier hour is looking at the days lived. */
export function atSpeed(state: PageState, speed: Speed): Partial<PageState> | null {
  if (state.mode === 'build' || state.plan === null) return null;
  if (state.question !== null && speed !== 'paused') return { announcement: say('said.questionFirst') };
  if (state.mode === 'run' || speed === 'paused') return { speed };
  return state.now_h < lastHour(state.plan) ? { speed, mode: 'run' } : null;
}
