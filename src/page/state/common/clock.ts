// The clock on screen is an index into the season: how it advances, stops, steps and looks back. Pure.
import { say } from '../../../words/say';
import { whole } from '../../../words/units';
import { atResult, running, type Lived } from '../run/lived';
import { asking, lookFor, questionBy } from '../run/questions';
import { withSettled } from '../run/settling';
import type { PageState } from './page';
import { lastHour, livedOf, scoresAt } from './selectors';
import type { Speed } from './state';

type Page = Pick<PageState, 'game' | 'view'>;
type Change = Partial<Pick<PageState, 'game' | 'view' | 'announcement'>> | null;

/** Hours of the season per second of the clock on the wall. */
export const HOURS_PER_SECOND: Readonly<Record<Speed, number>> = { paused: 0, hours6: 6, day1: 24, days5: 120 };

/** A frame that took longer (a page in the background) counts as this many seconds. */
export const LONGEST_FRAME_S = 0.25;

/** Whole days that are over at an hour. */
export const dayOf = (hour: number): number => Math.floor(hour / 24 + 1e-9);

/** The season looked at from an hour that was lived: nothing was reached before its first day was over. */
function seenFrom<L extends Lived>(lived: L, now_h: number): L {
  return { ...lived, now_h, soFar: dayOf(now_h) === 0 ? null : lived.soFar };
}

/**
 * The season at a later hour: the hours passed are lived, a question on the way stops it at its hour, and the last hour brings the result.
 */
function movedTo(lived: Lived, view: PageState['view'], hour: number): Change {
  const end = lastHour(lived.plan);
  const wanted = Math.min(end, Math.max(0, hour));
  const put = lived.question === null ? questionBy(lived, wanted) : null;
  const now_h = put === null ? wanted : Math.min(wanted, Math.max(lived.now_h, put.hour));
  const moved = withSettled({ ...seenFrom(lived, now_h), lived_h: Math.max(lived.lived_h, now_h) });
  const asked = put === null ? moved : asking(moved, put.question, lived.speed);
  const seen = put === null ? view : lookFor(put.question, lived, view);
  if (now_h < end || lived.busy) return { game: asked, view: seen };
  const scores = scoresAt(lived.season, end);
  return {
    game: atResult(asked),
    view: seen,
    announcement: say('said.over', { fish: whole(scores?.fishHealth ?? NaN), harvest: whole(scores?.harvest ?? NaN) }),
  };
}

/** What changes when so many real seconds pass. */
export function ticked({ game, view }: Page, seconds: number): Change {
  if (game.mode !== 'run' || game.question !== null || !(seconds > 0)) return null;
  const rate = HOURS_PER_SECOND[game.speed];
  return rate === 0 ? null : movedTo(game, view, game.now_h + rate * Math.min(seconds, LONGEST_FRAME_S));
}

/** The season with its clock standing. */
const paused = (lived: Lived): Lived => (lived.mode === 'run' ? { ...lived, speed: 'paused' } : lived);

/** To the next midnight, paused. */
export function steppedDay(page: Page): Change {
  const lived = livedOf(page);
  if (lived === null) return null;
  if (lived.question !== null) return { announcement: say('said.questionFirst') };
  // a step is a pause: after a question on the way the clock stays still
  return movedTo(paused(lived), page.view, (dayOf(lived.now_h) + 1) * 24);
}

/** Looks at an hour among those lived, paused. */
export function scrubbed(page: Page, hour: number): Change {
  const lived = livedOf(page);
  if (lived === null || !Number.isFinite(hour)) return null;
  return { game: seenFrom(paused(lived), Math.min(lived.lived_h, Math.max(0, hour))) };
}

/** Sets the speed; after the result, playing again from an earlier hour is looking at the days lived. */
export function atSpeed(page: Page, speed: Speed): Change {
  const lived = livedOf(page);
  if (lived === null) return null;
  if (speed === 'paused') return lived.mode === 'run' ? { game: paused(lived) } : null;
  if (lived.question !== null) return { announcement: say('said.questionFirst') };
  if (lived.mode === 'result' && lived.now_h >= lastHour(lived.plan)) return null;
  return { game: { ...running(lived, speed), pace: speed } };
}

/** The game with its clock standing, if it has one. */
export const standing = (page: Page): PageState['game'] => {
  const lived = livedOf(page);
  return lived === null ? page.game : paused(lived);
};
