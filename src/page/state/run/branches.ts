// Branches: seasons that share their past. Acting in the past keeps the course lived so far and opens a new one beside it.
import type { StoreApi } from 'zustand/vanilla';
import { say } from '../../../words/say';
import { momentOf } from '../../../words/units';
import { compileActions } from './acts';
import { lastHour, scoresAt } from '../common/selectors';
import type { SeasonRuns } from './seasonRuns';
import type { Act, Branch, PageActions, PageState, PageStore } from '../common/state';

/** Whether a season is being lived in which something was done: leaving it would lose that. */
export const underWay = ({ mode, acts, branches }: Pick<PageState, 'mode' | 'acts' | 'branches'>): boolean => mode === 'run' && (acts.length > 0 || branches.length > 1);

/** A, B … Z, AA, AB …: the name of the nth branch, counted from 0. */
export function branchLetter(n: number): string {
  return (n >= 26 ? branchLetter(Math.floor(n / 26) - 1) : '') + String.fromCharCode(65 + (n % 26));
}

/** The one course a season begins with. */
export const FIRST_COURSE: Pick<PageState, 'branches' | 'present' | 'compared'> = {
  branches: [{ id: 0, from: null, split_h: 0, acts: [], lived_h: 0, scores: null, season: null }], present: 0, compared: null,
};

/** Whole days for which two courses of one design are the same: those before their first different act. */
export function sharedDays(a: readonly Act[], b: readonly Act[]): number {
  const told = (acts: readonly Act[]): string[] => acts.map((act) => JSON.stringify(act));
  const [inA, inB] = [told(a), told(b)];
  const apart = [...a.filter((_, i) => !inB.includes(inA[i])), ...b.filter((_, i) => !inA.includes(inB[i]))];
  return apart.length === 0 ? Infinity : Math.floor(Math.min(...apart.map((act) => act.hour)) / 24);
}

/** All courses with the present one brought up to date, and the full output of those only that are shown: the present and the compared. */
export function withPresent(state: PageState, shown: readonly (number | null)[]): Branch[] {
  return state.branches.map((branch) => {
    const now = branch.id === state.present
      ? { ...branch, acts: state.acts, lived_h: state.lived_h, scores: state.season === null ? null : scoresAt(state.season, state.lived_h), season: state.busy ? null : state.season }
      : branch;
    return shown.includes(branch.id) ? now : { ...now, season: null };
  });
}

/** What changes when a person acts at an hour that was lived already: a new course begins there, the one before becomes the ghost beside it. */
export function branchedAt(state: PageState, hour: number): Pick<PageState, 'branches' | 'present' | 'compared'> {
  const id = state.branches.length;
  const opened: Branch = { id, from: state.present, split_h: hour, acts: [], lived_h: state.now_h, scores: null, season: null };
  return { branches: [...withPresent(state, [state.present]), opened], present: id, compared: state.present };
}

/** The course beside the present one, when its full output is at hand. */
export function comparedBranch(state: Pick<PageState, 'branches' | 'compared'>): Branch | null {
  return state.branches.find((branch) => branch.id === state.compared && branch.season !== null) ?? null;
}

export function createBranches(store: StoreApi<PageStore>, runs: SeasonRuns): Pick<PageActions, 'switchTo' | 'compareWith'> {
  const planOf = (acts: readonly Act[]) => {
    const { built } = store.getState();
    return built === null ? null : { ...built, actions: compileActions(built.actions, acts) };
  };

  /** A course with its output: what is kept, or worked out again from the days it shares with the present. */
  const loaded = async (id: number): Promise<Branch | null> => {
    const { branches, acts, season, busy } = store.getState();
    const branch = branches.find((one) => one.id === id);
    const plan = branch === undefined ? null : planOf(branch.acts);
    if (branch === undefined || plan === null) return null;
    if (branch.season !== null) return branch;
    const base = busy ? null : season;
    const found = await runs.fetch(plan, base, base === null ? 0 : Math.min(base.days.length, sharedDays(acts, branch.acts)));
    return found === null ? null : { ...branch, season: found };
  };

  return {
    async switchTo(id) {
      const before = store.getState();
      if (id === before.present || before.mode === 'build') return;
      if (before.busy) runs.forget();
      const branch = await loaded(id);
      const state = store.getState();
      const plan = branch === null ? null : planOf(branch.acts);
      if (branch === null || branch.season === null || plan === null || state.present !== before.present) return;
      const end = branch.lived_h >= lastHour(plan);
      const { day, clock } = momentOf(branch.lived_h);
      const stale = before.busy || state.busy;
      if (stale) runs.forget();
      store.setState({
        // an answer that was forgotten leaves the course behind without its output
        branches: withPresent({ ...state, busy: stale }, [state.present]), present: id, compared: state.present,
        acts: branch.acts, plan, season: branch.season, lived_h: branch.lived_h, now_h: Math.min(state.now_h, branch.lived_h), speed: 'paused', mode: end ? 'result' : 'run',
        announcement: say('said.switched', { branch: branchLetter(id), day, hour: clock }),
      });
    },
    async compareWith(id) {
      if (store.getState().mode === 'build' || id === store.getState().present) return;
      const branch = id === null ? null : await loaded(id);
      store.setState((state) => (id !== null && (branch === null || state.present === id) ? {} : {
        branches: withPresent(state, [id]).map((one) => (one.id === id && branch !== null ? branch : one)), compared: id,
        announcement: id === null ? say('said.comparedNone') : say('said.compared', { branch: branchLetter(id) }),
      }));
    },
  };
}
