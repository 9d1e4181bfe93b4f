// The next thing to do, for somebody who has never seen the page: from the first part placed to the first branch. Pure.
import { feedNow, shelfParts } from './selectors';
import { troublesNow } from './troubles';
import type { PageState } from './state';

export type Hint = 'place' | 'placeMore' | 'feed' | 'run' | 'choose' | 'trouble' | 'past';

/** Hours of the season in which a person is shown around. */
const FIRST_LOOK_H = 96;

/**
 * What to say now; null when there is nothing to say.
 * @param now_h the moment shown
 */
export function hintOf(state: Pick<PageState, 'lesson' | 'plan' | 'mode' | 'season' | 'comfort' | 'lived_h' | 'branches' | 'hints'>, now_h: number): Hint | null {
  const { lesson, plan, mode } = state;
  if (!state.hints || lesson === null || plan === null) return null;
  if (mode === 'build') {
    const left = shelfParts(lesson, plan).length;
    if (left > 0) return left === lesson.shelf.length ? 'place' : 'placeMore';
    return feedNow({ plan, mode, now_h: 0 }) === 0 ? 'feed' : 'run';
  }
  if (state.branches.length > 1) return null;
  if (mode === 'result') return 'past';
  if (troublesNow({ plan, season: state.season, comfort: state.comfort, mode, now_h }).some(({ mark }) => mark === 'act')) return 'trouble';
  return state.lived_h < FIRST_LOOK_H ? 'choose' : null;
}
