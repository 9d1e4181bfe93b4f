// The page's one store: the lesson, the design in hand, the season as computed so far, the clock and the page's choices.
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Plan } from '../../../season/plan';
import { say } from '../../../words/say';
import { showNumbersAs } from '../../../words/units';
import { createBranches, FIRST_COURSE } from '../run/branches';
import { createBuilding } from '../build/building';
import { createAnswers } from '../run/answers';
import { atSpeed, scrubbed, steppedDay, ticked } from './clock';
import { createDeeds } from '../run/deeds';
import { fishTankOf, openingPlan } from '../build/planEdits';
import { createHistory, NO_HISTORY, withStep } from '../build/history';
import { createOpening, openingState, type Entrance } from '../path/opening';
import { createJudging } from '../run/judging';
import { watchAnswers } from '../path/keptAnswers';
import { createPaper, FIRST_PAPER } from '../paper/paper';
import { asking, questionBy, UNASKED } from '../run/questions';
import { NO_PATH, NOWHERE, type Surroundings } from '../path/path';
import { createLooking } from './looking';
import { createSeasonRuns, messageOf } from '../run/seasonRuns';
import { createSizing } from '../build/sizing';
import type { Client, PageActions, PageState, PageStore } from './state';
import { learnKinds } from './kinds';

const EMPTY: PageState = {
  lesson: null, problems: [], failure: null, catalogue: [], facts: null, mode: 'build', screen: 'loop', path: NO_PATH, paper: FIRST_PAPER, plan: null, built: null, acts: [], ...NO_HISTORY, ...FIRST_COURSE, design: null, comfort: [], season: null,
  busy: false, now_h: 0, lived_h: 0, speed: 'paused', tint: 'ammonia', scale: null, told: null, selected: null, closer: false, drag: null, announcement: '', reducedMotion: false, units: 'metric', hints: true, predicting: true, quiet: false, earlier: {}, moved: null, ...UNASKED,
};

/**
 * The store of one page.
 * @param client answers the requests of worker/messages; its failures become `failure` and never escape
 * @param surroundings where lessons come from and results are kept
 */
export function createPageStore(client: Client, surroundings: Surroundings = NOWHERE): StoreApi<PageStore> {
  const page = createStore<PageStore>()((_set, _get, store) => ({ ...EMPTY, path: openingState(surroundings), ...createActions(client, store, surroundings) }));
  watchAnswers(page, surroundings.device);
  return page;
}

function createActions(client: Client, store: StoreApi<PageStore>, surroundings: Surroundings): PageActions {
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

  createJudging(client, store, fail);

  const read: Entrance['read'] = async (name, text) => {
    try {
      if (store.getState().facts === null) {
        const [catalogue, facts] = await Promise.all([client.ask({ ask: 'catalogue' }), client.ask({ ask: 'processes' })]);
        learnKinds(catalogue);
        store.setState({ catalogue, facts });
      }
      return await client.ask({ ask: 'openLesson', name, text });
    } catch (error) {
      fail(error);
      return null;
    }
  };

  const enter: Entrance['enter'] = async (lesson) => {
    runs.forget();
    const plan = openingPlan(lesson);
    store.setState({
      lesson, problems: [], mode: 'build', plan, built: null, acts: [], ...NO_HISTORY, ...FIRST_COURSE, design: null, comfort: [], season: null,
      ...UNASKED, quiet: !store.getState().predicting, now_h: 0, lived_h: 0, speed: 'paused', selected: fishTankOf(plan), closer: false, drag: null, announcement: say('said.opened', { title: lesson.title }),
    });
    await check(plan);
  };

  const setIf = (change: Partial<PageState> | null): void => {
    if (change !== null) store.setState(change);
  };

  return {
    async openLesson(name, text) {
      const answer = await read(name, text);
      if (answer === null) return;
      if ('problems' in answer) store.setState({ problems: answer.problems });
      else await enter(answer.lesson);
    },
    ...createOpening(client, store, surroundings, { read, enter }),
    ...createBuilding(store, edit),
    ...createDeeds(store, runs, edit),
    ...createSizing(store, edit),
    ...createAnswers(store),
    ...createHistory(store, show),
    ...createBranches(store, runs),
    ...createPaper(client, store),
    select: (selected) => store.setState({ selected }),
    ...createLooking(store),
    setTint: (tint) => store.setState({ tint, announcement: say('said.tint', { tint: say(`tint.${tint}`) }) }),
    async run() {
      const state = store.getState();
      if (state.plan === null || state.mode !== 'build' || state.busy) return;
      // what is to be predicted of the whole season is asked before it begins
      const put = questionBy(state, 0);
      if (put === null) await runs.begin();
      else store.setState(asking(state, put.question));
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
    setScreen: (screen) => store.setState((state) => ({ screen, speed: screen === 'loop' ? state.speed : 'paused' })),
    setHints: (hints) => store.setState({ hints }),
    setReducedMotion: (reducedMotion) => store.setState({ reducedMotion }),
  };
}
