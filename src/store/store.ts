// The page's one store: the lesson, the design in hand, the season as computed so far, the clock and the page's choices.
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Plan } from '../season/plan';
import { say } from '../words/say';
import { showNumbersAs } from '../words/units';
import { createBranches, FIRST_COURSE } from './branches';
import { createBuilding } from './building';
import { atSpeed, scrubbed, steppedDay, ticked } from './clock';
import { createDeeds } from './deeds';
import { fishTankOf, openingPlan } from './planEdits';
import { createHistory, NO_HISTORY, withStep } from './history';
import { createSeasonRuns, messageOf } from './seasonRuns';
import type { Client, PageActions, PageState, PageStore } from './state';

const EMPTY: PageState = {
  lesson: null, problems: [], failure: null, catalogue: [], facts: null, mode: 'build', screen: 'loop', plan: null, built: null, acts: [], ...NO_HISTORY, ...FIRST_COURSE, design: null, comfort: [], season: null,
  busy: false, now_h: 0, lived_h: 0, speed: 'paused', lens: 'ammonia', selected: null, drag: null, announcement: '', reducedMotion: false, units: 'metric', hints: true,
};

/**
 * The store of one page.
 * @param client answers the requests of worker/messages; its failures become `failure` and never escape
 */
export function createPageStore(client: Client): StoreApi<PageStore> {
  return createStore<PageStore>()((_set, _get, store) => ({ ...EMPTY, ...createActions(client, store) }));
}

function createActions(client: Client, store: StoreApi<PageStore>): PageActions {
  const runs = createSeasonRuns(client, store);
  let checks = 0;

  const fail = (error: unknown): void => store.setState({ failure: say('failure.worker', { message: messageOf(error) }) });

  /** Levels, falls and comfort bands of the design in hand; only the newest answer counts. */
  const check = async (plan: Plan): Promise<void> => {
    checks += 1;
    const mine = checks;
    try {
      const [design, comfort] = await Promise.all([client.ask({ ask: 'checkDesign', plan }), client.ask({ ask: 'comfort', plan })]);
      if (mine === checks) store.setState({ design, comfort });
    } catch (error) {
      if (mine === checks) fail(error);
    }
  };

  const show = (plan: Plan): void => {
    if (store.getState().busy) runs.forget();
    store.setState({ plan });
    void check(plan);
  };

  const edit = (plan: Plan, what: string): void => {
    store.setState((state) => withStep(state, what));
    show(plan);
  };

  const setIf = (change: Partial<PageState> | null): void => {
    if (change !== null) store.setState(change);
  };

  return {
    async openLesson(name, text) {
      try {
        if (store.getState().facts === null) {
          const [catalogue, facts] = await Promise.all([client.ask({ ask: 'catalogue' }), client.ask({ ask: 'processes' })]);
          store.setState({ catalogue, facts });
        }
        const answer = await client.ask({ ask: 'openLesson', name, text });
        if ('problems' in answer) {
          store.setState({ problems: answer.problems });
          return;
        }
        runs.forget();
        const { lesson } = answer;
        const plan = openingPlan(lesson);
        store.setState({
          lesson, problems: [], mode: 'build', plan, built: null, acts: [], ...NO_HISTORY, ...FIRST_COURSE, design: null, comfort: [], season: null,
          now_h: 0, lived_h: 0, speed: 'paused', selected: fishTankOf(plan), drag: null, announcement: say('said.opened', { title: lesson.title }),
        });
        await check(plan);
      } catch (error) {
        fail(error);
      }
    },
    ...createBuilding(store, edit),
    ...createDeeds(store, runs, edit),
    ...createHistory(store, show),
    ...createBranches(store, runs),
    select: (selected) => store.setState({ selected }),
    setLens: (lens) => store.setState({ lens, announcement: say('said.lens', { lens: say(`lens.${lens}`) }) }),
    async run() {
      const { plan, mode, busy } = store.getState();
      if (plan !== null && mode === 'build' && !busy) await runs.begin();
    },
    setSpeed: (speed) => setIf(atSpeed(store.getState(), speed)),
    stepDay: () => setIf(steppedDay(store.getState())),
    scrub: (hour) => setIf(scrubbed(store.getState(), hour)),
    backToBuild() {
      const { built, mode } = store.getState();
      if (mode === 'build' || built === null) return;
      runs.forget();
      store.setState({ mode: 'build', built: null, acts: [], ...FIRST_COURSE, season: null, now_h: 0, lived_h: 0, speed: 'paused', announcement: say('said.built') });
      show(built);
    },
    tick: (seconds) => setIf(ticked(store.getState(), seconds)),
    dismissFailure: () => store.setState({ failure: null, problems: [] }),
    reportFailure: (failure) => store.setState({ failure }),
    setUnits(units) {
      showNumbersAs(units);
      store.setState({ units });
    },
    setScreen: (screen) => store.setState({ screen }),
    setHints: (hints) => store.setState({ hints }),
    setReducedMotion: (reducedMotion) => store.setState({ reducedMotion }),
  };
}
