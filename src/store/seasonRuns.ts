// Asks the worker for seasons, one at a time: edits made while one is being computed are gathered into the next.
import type { StoreApi } from 'zustand/vanilla';
import { say } from '../words/say';
import type { Client, PageStore } from './state';
import { mergeSeason } from './view';

export interface SeasonRuns {
  /** Computes the season of the plan in hand from its first day, then begins to play it. */
  begin(): Promise<void>;
  /** Computes it again from a day on; what was computed before keeps playing until the answer arrives. */
  again(fromDay: number): Promise<void>;
  /** Forgets answers still on their way. */
  forget(): void;
}

/** Words of anything thrown. */
export function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

export function createSeasonRuns(client: Client, store: StoreApi<PageStore>): SeasonRuns {
  let era = 0;
  let underWay = false;
  let waitingFrom: number | null = null;

  const ask = async (keepDays: number): Promise<boolean> => {
    const { plan, season, lesson } = store.getState();
    if (plan === null) return false;
    const asked = era;
    store.setState({ busy: true });
    try {
      const answer = await client.ask({ ask: 'run', plan, keepDays: season === null ? 0 : keepDays, plantsWeight: lesson?.scoring.plantsWeight });
      if (asked !== era) return false;
      store.setState({ season: mergeSeason(season, answer) });
      return true;
    } catch (error) {
      if (asked === era) store.setState({ failure: say('failure.worker', { message: messageOf(error) }) });
      return false;
    } finally {
      if (asked === era) store.setState({ busy: false });
    }
  };

  const forget = (): void => {
    era += 1;
    underWay = false;
    waitingFrom = null;
    store.setState({ busy: false });
  };

  return {
    forget,
    async begin() {
      forget();
      const mine = era;
      store.setState({ season: null });
      if (await ask(0)) {
        store.setState((state) => ({
          mode: 'run', built: state.plan, acts: [], now_h: 0, lived_h: 0, speed: state.reducedMotion ? 'paused' : 'day1', announcement: say('said.running'),
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
