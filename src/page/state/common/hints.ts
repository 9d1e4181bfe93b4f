// The next thing to do, for somebody who has never seen the page: from the first part placed to the first branch. Pure.
import { firstOnShelf, fishToCome, offersChoice, problemsToTell } from '../build/offering';
import type { Build } from '../build/build';
import { feedNow, shelfParts } from './selectors';
import { troublesNow, type SeasonAt } from '../run/troubles';
import type { Lesson } from '../../../lessons/lesson';
import type { Plan } from '../../../season/plan';
import type { PageState } from './page';

export type Hint = 'place' | 'reorder' | 'mend' | 'placeMore' | 'placeSome' | 'stock' | 'feed' | 'run' | 'choose' | 'trouble' | 'past';

/** Hours of the season in which a person is shown around. */
const FIRST_LOOK_H = 96;

/** Problems of a design with which no water comes round, or it ends on the floor. */
export const PREVENTS_FLOW: ReadonlySet<string> = new Set([
  'design.noPump',
  'design.pumpSmall',
  'design.uphill',
  'design.overflow',
  'design.inGround',
]);

/** Problems of a design that a part from the shelf would mend. */
const LACKS_A_PART: ReadonlySet<string> = new Set(['design.noPlants', 'design.noSolids']);

/** Whether a loop that the lesson gives in an order to mend still stands as it was given. */
function asGiven({ given, reference }: Lesson, plan: Plan): boolean {
  return given !== undefined && given.join() !== reference.order.join() && given.join() === plan.loop.map((stage) => stage.id).join();
}

/** While building: from the first part to the run. */
export function hintToBuild(build: Build): Hint {
  const { lesson, plan, design } = build;
  const left = shelfParts(lesson, plan).length;
  if (left > 0 && left === firstOnShelf(lesson)) return 'place';
  if (left > 0 && !offersChoice(lesson)) return 'placeMore';
  if (left > 0 && design !== null && problemsToTell(lesson, plan, design).some(({ key }) => LACKS_A_PART.has(key))) return 'placeSome';
  if (asGiven(lesson, plan)) return 'reorder';
  if (design?.problems.some(({ key }) => PREVENTS_FLOW.has(key)) ?? false) return 'mend';
  if (fishToCome(lesson, plan)) return 'stock';
  return feedNow(plan, 0) === 0 ? 'feed' : 'run';
}

/** Whether a person who lives a season for the first time is still shown around. */
export const looksFirst = ({ lived_h }: { lived_h: number }): boolean => lived_h < FIRST_LOOK_H;

/** While a season is lived: what to look at, until somebody has acted in the past. @param first whether it is lived for the first hours */
export function hintToLive(at: SeasonAt, { over, several, first }: { over: boolean; several: boolean; first: boolean }): Hint | null {
  if (several) return null;
  if (over) return 'past';
  if (troublesNow(at).some(({ mark }) => mark === 'act')) return 'trouble';
  return first ? 'choose' : null;
}

/** What to say now; null when there is nothing to say. */
export function hintOf({ game, preferences }: Pick<PageState, 'game' | 'preferences'>): Hint | null {
  if (!preferences.hints || game.mode === 'none' || game.mode === 'class') return null;
  if (game.mode === 'build') return hintToBuild(game);
  return hintToLive(game, { over: game.mode === 'result', several: game.branches.length > 1, first: looksFirst(game) });
}
