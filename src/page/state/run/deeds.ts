// What a person does to a loop: a standing setting while building, an act at the next whole hour while its season runs.
import type { StoreApi } from 'zustand/vanilla';
import type { Deed, Plan } from '../../../season/plan';
import { say, type WordKey } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { momentOf, withUnit } from '../../../words/units';
import { choreDeed, compileActions, withAct, withStandingChore } from './acts';
import { branchedAt, branchLetter } from './branches';
import { actingHour, actsInPast } from './inForce';
import { fishTankOf, withAir, withBase, withFirstFeed, withLamp, withSetting } from '../build/planEdits';
import type { SeasonRuns } from './seasonRuns';
import { lastHour } from '../common/selectors';
import { createStocking } from '../build/stocking';
import type { PageActions, PageStore } from '../common/state';

type DeedActions = Pick<PageActions, 'setFeed' | 'setAir' | 'setBase' | 'setLamp' | 'setHeater' | 'setLight' | 'doChore' | 'setPump' | 'setRoutine' | 'stock'>;

const quantised = (value: number, step: number, least: number): number => Math.max(least, Math.round(value / step) * step);
/** Tenths without the dust of binary fractions. */
const tenths = (value: number): number => Math.max(0, Math.round(value * 10) / 10);

/**
 * @param edit sets a new design while building, has it checked and keeps the step, told in words
 */
export function createDeeds(store: StoreApi<PageStore>, runs: SeasonRuns, edit: (plan: Plan, what: string) => void): DeedActions {
  const act = (deed: Deed, every_d: number | null = null): void => {
    const state = store.getState();
    if (state.plan === null || state.built === null || state.season === null) return;
    const hour = actingHour(state);
    if (hour >= lastHour(state.plan)) {
      store.setState({ announcement: say('said.tooLate') });
      return;
    }
    const past = actsInPast(state);
    const branch = past ? branchedAt(state, hour) : null;
    const acts = withAct(state.acts, { hour, deed, every_d });
    const { day, clock } = momentOf(hour);
    store.setState({
      ...branch, acts, plan: { ...state.plan, actions: compileActions(state.built.actions, acts) }, mode: 'run', lived_h: state.now_h,
      announcement: branch === null ? say('said.acted', { day, hour: clock }) : say('said.branched', { day, hour: clock, branch: branchLetter(branch.present), before: branchLetter(state.present) }),
    });
    void runs.again(Math.floor(hour / 24));
  };

  /** Either edits the design or acts, whichever the moment calls for. */
  const settle = (inDesign: (plan: Plan) => Plan, deed: Deed, setting: WordKey, value: string): void => {
    const { mode, plan } = store.getState();
    if (plan === null) return;
    if (mode === 'build') edit(inDesign(plan), say('said.set', { setting: say(setting), value }));
    else act(deed);
  };

  return {
    setFeed(value) {
      const plan = store.getState().plan;
      const tank = plan === null ? null : fishTankOf(plan);
      if (tank === null || !Number.isFinite(value)) return;
      const g_d = quantised(value, 1, 0);
      settle((design) => withFirstFeed(design, tank, g_d), { do: 'feed', tank, g_d }, 'control.feed', withUnit('feed_g_d', g_d));
    },
    setAir(stage, value) {
      if (!Number.isFinite(value)) return;
      const L_min = tenths(value);
      settle((design) => withAir(design, stage, L_min), { do: 'air', stage, L_min }, 'control.air', withUnit('air_L_min', L_min));
    },
    setBase(base, amount, pH) {
      if (!Number.isFinite(amount) || !Number.isFinite(pH)) return;
      const g_d = tenths(amount);
      const targetPH = tenths(pH);
      settle((design) => withBase(design, base, g_d, targetPH), { do: 'base', g_d, targetPH, base }, 'control.base', `${withUnit('dose_g_d', g_d)}, pH ${withUnit('pH', targetPH)}`);
    },
    setLamp(stage, value) {
      if (!Number.isFinite(value)) return;
      const lamp_W = quantised(value, 1, 0);
      settle((design) => withLamp(design, stage, lamp_W), { do: 'setting', stage, lamp_W }, 'control.lamp', withUnit('power_W', lamp_W));
    },
    setHeater(power, target) {
      if (!Number.isFinite(power) || !Number.isFinite(target)) return;
      const deed: Deed = { do: 'heater', power_W: quantised(power, 10, 0), target_C: tenths(target) };
      settle((design) => withSetting(design, deed), deed, 'control.heater', `${withUnit('power_W', deed.power_W)}, ${withUnit('T_C', deed.target_C)}`);
    },
    setLight(value) {
      if (!Number.isFinite(value)) return;
      const deed: Deed = { do: 'light', mol_m2_d: tenths(value) };
      settle((design) => withSetting(design, deed), deed, 'control.light', withUnit('light_mol_m2_d', deed.mol_m2_d));
    },
    ...createStocking(store, edit, act),
    doChore: (stage, chore) => act(choreDeed(chore, stage)),
    setPump: (on) => act({ do: 'pump', on }),
    setRoutine(stage, chore, every_d) {
      const { mode, plan } = store.getState();
      if (plan === null || !(every_d >= 0)) return;
      const days = quantised(every_d, 1, 0);
      if (mode !== 'build') {
        act(choreDeed(chore, stage), days);
        return;
      }
      const value = days === 0 ? say('control.never') : say('control.everyDays', { n: days });
      edit({ ...plan, actions: withStandingChore(plan.actions, chore, stage, days) }, say('said.setAt', { setting: say(`control.${chore}Every`), stage: stageName([...plan.loop, ...plan.side], stage), value }));
    },
  };
}
