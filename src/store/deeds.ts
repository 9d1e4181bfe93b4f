// What a person does to a loop: a standing setting while building, an act at the next whole hour while its season runs.
import type { StoreApi } from 'zustand/vanilla';
import type { Deed, Plan } from '../season/plan';
import { say } from '../words/say';
import { momentOf } from '../words/units';
import { compileActions, withAct, withStandingChore } from './acts';
import { actingHour } from './inForce';
import { fishTankOf, withAir, withBase, withFirstFeed } from './planEdits';
import type { SeasonRuns } from './seasonRuns';
import { lastHour } from './selectors';
import type { PageActions, PageStore } from './state';

type DeedActions = Pick<PageActions, 'setFeed' | 'setAir' | 'setBase' | 'drain' | 'rinse' | 'setPump' | 'setRoutine'>;

const quantised = (value: number, step: number, least: number): number => Math.max(least, Math.round(value / step) * step);
/** Tenths without the dust of binary fractions. */
const tenths = (value: number): number => Math.max(0, Math.round(value * 10) / 10);

/**
 * @param edit sets a new design while building and has it checked
 */
export function createDeeds(store: StoreApi<PageStore>, runs: SeasonRuns, edit: (plan: Plan) => void): DeedActions {
  const act = (deed: Deed, every_d: number | null = null): void => {
    const state = store.getState();
    if (state.plan === null || state.built === null || state.season === null) return;
    const hour = actingHour(state);
    if (hour >= lastHour(state.plan)) {
      store.setState({ announcement: say('said.tooLate') });
      return;
    }
    const acts = withAct(state.acts, { hour, deed, every_d });
    const { day, clock } = momentOf(hour);
    store.setState({
      acts, plan: { ...state.plan, actions: compileActions(state.built.actions, acts) },
      mode: 'run', lived_h: state.now_h, announcement: say('said.acted', { day, hour: clock }),
    });
    void runs.again(Math.floor(hour / 24));
  };

  /** Either edits the design or acts, whichever the moment calls for. */
  const settle = (inDesign: (plan: Plan) => Plan, deed: Deed): void => {
    const { mode, plan } = store.getState();
    if (plan === null) return;
    if (mode === 'build') edit(inDesign(plan));
    else act(deed);
  };

  return {
    setFeed(value) {
      const plan = store.getState().plan;
      const tank = plan === null ? null : fishTankOf(plan);
      if (tank === null || !Number.isFinite(value)) return;
      const g_d = quantised(value, 1, 0);
      settle((design) => withFirstFeed(design, tank, g_d), { do: 'feed', tank, g_d });
    },
    setAir(stage, value) {
      if (!Number.isFinite(value)) return;
      const L_min = tenths(value);
      settle((design) => withAir(design, stage, L_min), { do: 'air', stage, L_min });
    },
    setBase(base, amount, pH) {
      if (!Number.isFinite(amount) || !Number.isFinite(pH)) return;
      const g_d = tenths(amount);
      const targetPH = tenths(pH);
      settle((design) => withBase(design, base, g_d, targetPH), { do: 'base', g_d, targetPH, base });
    },
    drain: (stage) => act({ do: 'drain', stage }),
    rinse: (stage) => act({ do: 'rinse', stage }),
    setPump: (on) => act({ do: 'pump', on }),
    setRoutine(stage, chore, every_d) {
      const { mode, plan } = store.getState();
      if (plan === null || !(every_d >= 0)) return;
      const days = quantised(every_d, 1, 0);
      if (mode === 'build') edit({ ...plan, actions: withStandingChore(plan.actions, chore, stage, days) });
      else act(chore === 'drain' ? { do: 'drain', stage } : { do: 'rinse', stage }, days);
    },
  };
}
