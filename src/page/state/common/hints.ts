// The next thing to do, for somebody who has never seen the page: from the first part placed to the first branch. Pure.
import { firstOnShelf, fishToCome, offersChoice, problemsToTell } from '../build/offering';
import { feedNow, shelfParts } from './selectors';
import { troublesNow } from '../run/troubles';
import type { Lesson } from '../../../lessons/lesson';
import type { Plan } from '../../../season/plan';
import type { PageState } from './state';

export type Hint = 'place' | 'reorder' | 'mend' | 'placeMore' | 'placeSome' | 'stock' | 'feed' | 'run' | 'choose' | 'trouble' | 'past';

/** Hours of the season in which a person is shown around. */
const FIRST_LOOK_H = 96;

/** Problems of a design with which no water comes round, or it ends on the floor. */
export const PREVENTS_FLOW: ReadonlySet<string> = new Set(['design.noPump', 'design.pumpSmall', 'design.uphill', 'design.overflow', 'design.inGround']);

/** Problems of a design that a part from the shelf would mend. */
const LACKS_A_PART: ReadonlySet<string> = new Set(['design.noPlants', 'design.noSolids']);

/** Whether a loop that the lesson gives in an order to mend still stands as it was given. */
const asGiven = (lesson: Lesson, plan: Plan): boolean => lesson.given !== undefined && lesson.given.join() !== lesson.reference.order.join() && lesson.given.join() === plan.loop.map((stage) => stage.id).join();

/**
 * What to say now; null when there is nothing to say.
 * @param now_h the moment shown
 */
export function hintOf(state: Pick<PageState, 'lesson' | 'plan' | 'mode' | 'season' | 'comfort' | 'lived_h' | 'branches' | 'hints' | 'design'>, now_h: number): Hint | null {
  const { lesson, plan, mode } = state;
  if (!state.hints || lesson === null || plan === null) return null;
  if (mode === 'build') {
    const left = shelfParts(lesson, plan).length;
    if (left > 0 && left === firstOnShelf(lesson)) return 'place';
    if (left > 0 && !offersChoice(lesson)) return 'placeMore';
    if (left > 0 && state.design !== null && problemsToTell(lesson, plan, state.design).some(({ key }) => LACKS_A_PART.has(key))) return 'placeSome';
    if (asGiven(lesson, plan)) return 'reorder';
    if (state.design?.problems.some(({ key }) => PREVENTS_FLOW.has(key)) ?? false) return 'mend';
    if (fishToCome(lesson, plan)) return 'stock';
    return feedNow({ plan, mode, now_h: 0 }) === 0 ? 'feed' : 'run';
  }
  if (state.branches.length > 1) return null;
  if (mode === 'result') return 'past';
  if (troublesNow({ plan, season: state.season, comfort: state.comfort, mode, now_h }).some(({ mark }) => mark === 'act')) return 'trouble';
  return state.lived_h < FIRST_LOOK_H ? 'choose' : null;
}
