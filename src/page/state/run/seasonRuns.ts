// Asks the worker for seasons, one at a time: edits made while one is being computed are gathered into the next.
import type { StoreApi } from 'zustand/vanilla';
import { faultWords } from '../../../words/faultWords';
import { isWord, say, sayOr } from '../../../words/say';
import type { Plan } from '../../../season/plan';
import type { SeasonFault } from '../../../season/seasonError';
import type { PageState, PageStore } from '../common/page';
import { buildOf, livedOf, openedOf } from '../common/selectors';
import type { Client, SeasonView } from '../common/state';
import { begun, withOutput } from './lived';
import { mergeSeason } from './view';

/** A season as it arrived. busy: others are still on their way */
export interface Arrived {
  season: SeasonView;
  busy: boolean;
}

export interface SeasonRuns {
  /** Computes the season of the design in hand from its first day, then begins to play it. */
  begin(): Promise<void>;
  /** Computes it again from a day on; what was computed before keeps playing until the answer arrives. */
  again(fromDay: number): Promise<void>;
  /**
   * The season of another plan, worked out beside the page's own. The page stays busy until whoever asked has taken it.
   * @param base a season that is the same for its first `keepDays` days
   * @returns null when it could not be worked out or is no longer wanted
   */
  fetch(plan: Plan, base: SeasonView | null, keepDays: number): Promise<Arrived | null>;
  /** Forgets answers still on their way. */
  forget(): void;
}

/** What went wrong, in words: a code that has words of its own, or the message as it stands. */
export function messageOf(error: unknown): string {
  if (error instanceof Error && 'fault' in error) return faultWords(error.fault as SeasonFault);
  const message = error instanceof Error ? error.message : String(error);
  const key = `failure.${message}`;
  return isWord(key) ? sayOr(key, 'failure.title') : message;
}

export function createSeasonRuns(client: Client, store: StoreApi<PageStore>): SeasonRuns {
  let era = 0;
  let underWay = false;
  let waitingFrom: number | null = null;
  /** requests of this era that wait for their answer */
  let open = 0;

  const setBusy = (busy: boolean, beside: Partial<PageState> = {}): void => {
    const game = openedOf(store.getState());
    store.setState(game === null ? beside : { ...beside, game: { ...game, busy } });
  };

  const fetch = async (plan: Plan, base: SeasonView | null, keepDays: number): Promise<Arrived | null> => {
    const asked = era;
    const plantsWeight = openedOf(store.getState())?.lesson.scoring.plantsWeight;
    open += 1;
    setBusy(true);
    try {
      const answer = await client.ask({ ask: 'run', plan, keepDays: base === null ? 0 : keepDays, plantsWeight });
      if (asked !== era) return null;
      const season = mergeSeason(base, answer);
      open -= 1;
      return { season, busy: open > 0 };
    } catch (error) {
      if (asked !== era) return null;
      open -= 1;
      setBusy(open > 0, { failure: say('failure.worker', { message: messageOf(error) }) });
      return null;
    }
  };

  const forget = (): void => {
    era += 1;
    open = 0;
    underWay = false;
    waitingFrom = null;
  };

  return {
    forget,
    fetch,
    async begin() {
      forget();
      const plan = buildOf(store.getState())?.plan;
      const found = plan === undefined ? null : await fetch(plan, null, 0);
      const { preferences, ...page } = store.getState();
      const build = buildOf(page);
      if (found === null || build === null) return;
      store.setState({
        game: begun(build, found.season, preferences.reducedMotion ? 'paused' : 'day1'),
        announcement: say('said.running'),
      });
    },
    async again(fromDay) {
      waitingFrom = Math.min(waitingFrom ?? Infinity, fromDay);
      if (underWay) return;
      const mine = era;
      underWay = true;
      while (waitingFrom !== null && mine === era) {
        const keepDays: number = waitingFrom;
        waitingFrom = null;
        const asked = livedOf(store.getState());
        const found = asked === null ? null : await fetch(asked.plan, asked.season, keepDays);
        const lived = livedOf(store.getState());
        if (found !== null && lived !== null) store.setState({ game: withOutput(lived, found.season, found.busy) });
      }
      if (mine === era) underWay = false;
    },
  };
}
