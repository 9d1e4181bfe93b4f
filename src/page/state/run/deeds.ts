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
import { buildOf, lastHour, livedOf, planOf } from '../common/selectors';
import { createStocking } from '../build/stocking';
import type { PageActions } from '../common/actions';
import type { PageStore } from '../common/page';
import { running } from './lived';
import { withPutOff } from './settling';
import type { EditDesign } from '../build/designing';

type SettingActions = Pick<PageActions, 'setFeed' | 'setAir' | 'setBase' | 'setLamp' | 'setHeater' | 'setLight'>;
type DeedActions = SettingActions & Pick<PageActions, 'doChore' | 'setPump' | 'setRoutine' | 'stock'>;

const quantised = (value: number, step: number, least: number): number => Math.max(least, Math.round(value / step) * step);
/** Tenths without the dust of binary fractions. */
const tenths = (value: number): number => Math.max(0, Math.round(value * 10) / 10);

export function createDeeds(store: StoreApi<PageStore>, runs: SeasonRuns, edit: EditDesign): DeedActions {
  const act = (deed: Deed, every_d: number | null = null): void => {
    const lived = livedOf(store.getState());
    if (lived === null) return;
    const hour = actingHour(lived);
    if (hour >= lastHour(lived.plan)) {
      store.setState({ announcement: say('said.tooLate') });
      return;
    }
    const branch = actsInPast(lived) ? branchedAt(lived, hour) : null;
    const acts = withAct(lived.acts, { hour, deed, every_d });
    const { day, clock } = momentOf(hour);
    const plan = { ...lived.plan, actions: compileActions(lived.built.plan.actions, acts) };
    const acted = { ...running(lived, lived.speed), ...branch, acts, plan, lived_h: lived.now_h, judged: null };
    store.setState({
      game: withPutOff(acted),
      announcement:
        branch === null
          ? say('said.acted', { day, hour: clock })
          : say('said.branched', { day, hour: clock, branch: branchLetter(branch.present), before: branchLetter(lived.present) }),
    });
    void runs.again(Math.floor(hour / 24));
  };

  /** Either edits the design or acts, whichever the moment calls for. */
  const settle = (inDesign: (plan: Plan) => Plan, deed: Deed, setting: WordKey, value: string): void => {
    const build = buildOf(store.getState());
    if (build !== null) edit(build, inDesign(build.plan), say('said.set', { setting: say(setting), value }));
    else act(deed);
  };

  return {
    setFeed(value) {
      const plan = planOf(store.getState());
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
      const value = `${withUnit('dose_g_d', g_d)}, pH ${withUnit('pH', targetPH)}`;
      settle((design) => withBase(design, base, g_d, targetPH), { do: 'base', g_d, targetPH, base }, 'control.base', value);
    },
    setLamp(stage, value) {
      if (!Number.isFinite(value)) return;
      const lamp_W = quantised(value, 1, 0);
      settle((design) => withLamp(design, stage, lamp_W), { do: 'setting', stage, lamp_W }, 'control.lamp', withUnit('power_W', lamp_W));
    },
    setHeater(power, target) {
      if (!Number.isFinite(power) || !Number.isFinite(target)) return;
      const deed: Deed = { do: 'heater', power_W: quantised(power, 10, 0), target_C: tenths(target) };
      const value = `${withUnit('power_W', deed.power_W)}, ${withUnit('T_C', deed.target_C)}`;
      settle((design) => withSetting(design, deed), deed, 'control.heater', value);
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
      if (!(every_d >= 0)) return;
      const build = buildOf(store.getState());
      const days = quantised(every_d, 1, 0);
      if (build === null) {
        act(choreDeed(chore, stage), days);
        return;
      }
      const { plan } = build;
      const value = days === 0 ? say('control.never') : say('control.everyDays', { n: days });
      const what = say('said.setAt', {
        setting: say(`control.${chore}Every`),
        stage: stageName([...plan.loop, ...plan.side], stage),
        value,
      });
      edit(build, { ...plan, actions: withStandingChore(plan.actions, chore, stage, days) }, what);
    },
  };
}
