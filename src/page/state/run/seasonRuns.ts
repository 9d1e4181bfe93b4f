// Asks the worker for seasons, one at a time: edits made while one is being computed are gathered into the next.
import type { StoreApi } from 'zustand/vanilla';
import { isWord, say, sayOr } from '../../../words/say';
import type { Plan } from '../../../season/plan';
import type { SeasonFault } from '../../../season/seasonError';
import { FIRST_COURSE } from './branches';
import type { Client, PageStore, SeasonView } from '../common/state';
import { mergeSeason } from './view';

export interface SeasonRuns {
  /** Computes the season of the plan in hand from its first day, then begins to play it. */
  begin(): Promise<void>;
  /** Computes it again from a day on; what was computed before keeps playing until the answer arrives. */
  again(fromDay: number): Promise<void>;
  /**
   * The season of another plan, worked out beside the page's own.
   * @param base a season that is the same for its first `keepDays` days
   * @returns null when it could not be worked out or is no longer wanted
   */
  fetch(plan: Plan, base: SeasonView | null, keepDays: number): Promise<SeasonView | null>;
  /** Forgets answers still on their way. */
  forget(): void;
}

/** What went wrong, in words: a code that has words of its own, or the message as it stands. */
export function messageOf(error: unknown): string {
  const fault = error instanceof Error && 'fault' in error ? error.fault as SeasonFault : null;
  if (fault) return say(fault.stage === '' ? `fault.${fault.code}` : `fault.${fault.code}.stage`, { ...fault });
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

  const fetch = async (plan: Plan, base: SeasonView | null, keepDays: number): Promise<SeasonView | null> => {
    const asked = era;
    open += 1;
    store.setState({ busy: true });
    try {
      const answer = await client.ask({ ask: 'run', plan, keepDays: base === null ? 0 : keepDays, plantsWeight: store.getState().lesson?.scoring.plantsWeight });
      return asked === era ? mergeSeason(base, answer) : null;
    } catch (error) {
      if (asked === era) store.setState({ failure: say('failure.worker', { message: messageOf(error) }) });
      return null;
    } finally {
      if (asked === era) {
        open -= 1;
        store.setState({ busy: open > 0 });
      }
    }
  };

  const ask = async (keepDays: number): Promise<boolean> => {
    const { plan, season } = store.getState();
    const found = plan === null ? null : await fetch(plan, season, keepDays);
    if (found !== null) store.setState({ season: found });
    return found !== null;
  };

  const forget = (): void => {
    era += 1;
    open = 0;
    underWay = false;
    waitingFrom = null;
    store.setState({ busy: false });
  };

  return {
    forget,
    fetch,
    async begin() {
      forget();
      const mine = era;
      store.setState({ season: null });
      if (await ask(0)) {
        store.setState((state) => ({
          mode: 'run', built: state.plan, acts: [], ...FIRST_COURSE, now_h: 0, lived_h: 0, speed: state.reducedMotion ? 'paused' : 'day1', announcement: say('said.running'),
        }));
      } else if (mine === era) store.setState({ season: null });
    },
    async again(fromDay) {
      waitingFrom = Math.min(waitingFrom ?? Infinity, fromDay);
      if (underWay) return;
      const mine = era;
      underWay = true;
      while (waitingFrom !== null && mine === era) {
        const keepDays: number = waitingFrom;
        waitingFrom = null;
        await ask(keepDays);
      }
      if (mine === era) underWay = false;
    },
  };
}
