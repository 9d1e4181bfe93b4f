// The page's one store: its slices as they begin, and every action that changes them.
import { createStore, type StoreApi } from 'zustand/vanilla';
import { languageTag } from '../../../words/language';
import { say } from '../../../words/say';
import { showUnitsOf } from '../../../words/units';
import { builtAgain, openedLesson } from '../build/build';
import { createBuilding } from '../build/building';
import { createDesigning } from '../build/designing';
import { createHistory } from '../build/history';
import { fishTankOf } from '../build/planEdits';
import { createSizing } from '../build/sizing';
import { createPaper } from '../paper/paper';
import { FIRST_PAPER } from '../paper/sheets';
import { createOpening, openingState, type Entrance } from '../path/opening';
import { NO_PATH, NOWHERE, type Surroundings } from '../path/path';
import { watchAnswers } from '../path/watchAnswers';
import { createAnswers } from '../run/answers';
import { createBranches } from '../run/branches';
import { createDeeds } from '../run/deeds';
import { createJudging } from '../run/judging';
import { questionBy } from '../run/questions';
import { createSeasonRuns, messageOf } from '../run/seasonRuns';
import type { PageActions } from './actions';
import { atSpeed, scrubbed, standing, steppedDay, ticked } from './clock';
import { createLooking } from './looking';
import type { PageState, PageStore, Preferences } from './page';
import { buildOf, livedOf } from './selectors';
import type { Client } from './state';
import { learnKinds } from './kinds';

const FIRST: PageState = {
  game: { mode: 'none' },
  view: { tint: 'ammonia', selected: null, closer: false },
  preferences: { units: 'metric', hints: true, predicting: true, reducedMotion: false },
  screen: 'loop',
  path: NO_PATH,
  paper: FIRST_PAPER,
  earlier: {},
  known: null,
  problems: [],
  failure: null,
  announcement: '',
};

/**
 * The store of one page.
 * @param client answers the requests of worker/messages; its failures become `failure` and never escape
 * @param surroundings where lessons come from and results are kept
 */
export function createPageStore(client: Client, surroundings: Surroundings = NOWHERE): StoreApi<PageStore> {
  const page = createStore<PageStore>()((_set, _get, store) => ({
    ...FIRST,
    path: openingState(surroundings),
    ...createActions(client, store, surroundings),
  }));
  watchAnswers(page, surroundings.device);
  return page;
}

function createActions(client: Client, store: StoreApi<PageStore>, surroundings: Surroundings): PageActions {
  const runs = createSeasonRuns(client, store);
  const fail = (error: unknown): void => store.setState({ failure: say('failure.worker', { message: messageOf(error) }) });
  const { edit, show, check } = createDesigning(client, store, runs.forget, fail);
  createJudging(client, store, fail);

  const read: Entrance['read'] = async (name, text) => {
    try {
      if (store.getState().known === null) {
        const [catalogue, facts] = await Promise.all([client.ask({ ask: 'catalogue' }), client.ask({ ask: 'processes' })]);
        learnKinds(catalogue);
        store.setState({ known: { catalogue, facts } });
      }
      return await client.ask({ ask: 'openLesson', name, text, language: languageTag() });
    } catch (error) {
      fail(error);
      return null;
    }
  };

  const enter: Entrance['enter'] = async (lesson, beside) => {
    runs.forget();
    const { preferences, view } = store.getState();
    const game = openedLesson(lesson, preferences.predicting);
    store.setState({
      problems: [],
      ...beside,
      game,
      view: { ...view, selected: fishTankOf(game.plan), closer: false },
      announcement: say('said.opened', { title: lesson.title }),
    });
    await check(game.plan);
  };

  const setIf = (change: Partial<PageState> | null): void => {
    if (change !== null) store.setState(change);
  };
  const prefer = (wish: Partial<Preferences>): void => store.setState(({ preferences }) => ({ preferences: { ...preferences, ...wish } }));

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
    ...createLooking(store),
    async run() {
      const build = buildOf(store.getState());
      if (build === null || build.busy) return;
      // what is to be predicted of the whole season is asked before it begins
      const put = questionBy(build, 0);
      if (put === null) await runs.begin();
      else store.setState({ game: { ...build, question: { part: 'ask', key: put.question.key } } });
    },
    setSpeed: (speed) => setIf(atSpeed(store.getState(), speed)),
    stepDay: () => setIf(steppedDay(store.getState())),
    scrub: (hour) => setIf(scrubbed(store.getState(), hour)),
    backToBuild() {
      const { preferences, ...page } = store.getState();
      const lived = livedOf(page);
      if (lived === null) return;
      runs.forget();
      show(builtAgain(lived, preferences.predicting), { announcement: say('said.built') });
    },
    showResult: (shown) =>
      store.setState(({ game }) => ({ game: game.mode === 'result' ? { ...game, card: shown ? 'shown' : 'away' } : game })),
    tick: (seconds) => setIf(ticked(store.getState(), seconds)),
    dismissFailure: () => store.setState({ failure: null, problems: [] }),
    reportFailure: (failure) => store.setState({ failure }),
    setUnits(units) {
      showUnitsOf(units);
      prefer({ units });
    },
    setScreen: (screen) => store.setState((page) => ({ screen, game: screen === 'loop' ? page.game : standing(page) })),
    setHints: (hints) => prefer({ hints }),
    setReducedMotion: (reducedMotion) => prefer({ reducedMotion }),
  };
}
