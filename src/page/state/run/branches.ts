// Branches: seasons that share their past. Acting in the past keeps the course lived so far and opens a new one beside it.
import type { StoreApi } from 'zustand/vanilla';
import type { Plan } from '../../../season/plan';
import { say } from '../../../words/say';
import { momentOf } from '../../../words/units';
import { compileActions } from './acts';
import type { PageActions } from '../common/actions';
import type { Game, PageStore } from '../common/page';
import { lastHour, livedOf, scoresAt } from '../common/selectors';
import type { Act, Branch, SeasonView } from '../common/state';
import { atResult, running, withOutput, type Lived } from './lived';
import type { SeasonRuns } from './seasonRuns';
import { withPutOff } from './settling';

/** Whether a season is being lived in which something was done: leaving it would lose that. */
export const underWay = ({ game }: { game: Game }): boolean => game.mode === 'run' && (game.acts.length > 0 || game.branches.length > 1);

/** A, B … Z, AA, AB …: the name of the nth branch, counted from 0. */
export function branchLetter(n: number): string {
  return (n >= 26 ? branchLetter(Math.floor(n / 26) - 1) : '') + String.fromCharCode(65 + (n % 26));
}

/** Whole days for which two courses of one design are the same: those before their first different act. */
export function sharedDays(a: readonly Act[], b: readonly Act[]): number {
  const told = (acts: readonly Act[]): string[] => acts.map((act) => JSON.stringify(act));
  const [inA, inB] = [told(a), told(b)];
  const apart = [...a.filter((_, i) => !inB.includes(inA[i])), ...b.filter((_, i) => !inA.includes(inB[i]))];
  return apart.length === 0 ? Infinity : Math.floor(Math.min(...apart.map((act) => act.hour)) / 24);
}

/** All courses with the present one brought up to date, and the full output of those only that are shown: the present and the compared. */
export function withPresent(lived: Lived, shown: readonly (number | null)[]): Branch[] {
  const { acts, lived_h, season, busy } = lived;
  return lived.branches.map((branch) => {
    const now =
      branch.id === lived.present ? { ...branch, acts, lived_h, scores: scoresAt(season, lived_h), season: busy ? null : season } : branch;
    return shown.includes(branch.id) ? now : { ...now, season: null };
  });
}

/**
 * What changes when a person acts at an hour that was lived already: a new course begins there, the one before becomes the ghost beside it.
 */
export function branchedAt(lived: Lived, hour: number): Pick<Lived, 'branches' | 'present' | 'compared'> {
  const id = lived.branches.length;
  const opened: Branch = { id, from: lived.present, split_h: hour, acts: [], lived_h: lived.now_h, scores: null, season: null };
  return { branches: [...withPresent(lived, [lived.present]), opened], present: id, compared: lived.present };
}

/** The course beside the present one, when its full output is at hand. */
export function comparedBranch({ branches, compared }: Pick<Lived, 'branches' | 'compared'>): Branch | null {
  return branches.find((branch) => branch.id === compared && branch.season !== null) ?? null;
}

/** The plan of a course: the design with what was done in it. */
const planOf = ({ built }: Lived, acts: readonly Act[]): Plan => ({ ...built.plan, actions: compileActions(built.plan.actions, acts) });

type Loaded = Branch & { season: SeasonView };

export function createBranches(store: StoreApi<PageStore>, runs: SeasonRuns): Pick<PageActions, 'switchTo' | 'compareWith'> {
  /**
   * A course with its output: what is kept, or worked out again from the days it shares with the present. busy: whether others are on their
   * way still
   */
  const loaded = async (id: number): Promise<{ branch: Loaded; busy?: boolean } | null> => {
    const lived = livedOf(store.getState());
    const branch = lived?.branches.find((one) => one.id === id);
    if (lived === null || branch === undefined) return null;
    const { acts, season, busy } = lived;
    if (branch.season !== null) return { branch: { ...branch, season: branch.season } };
    const base = busy ? null : season;
    const found = await runs.fetch(
      planOf(lived, branch.acts),
      base,
      base === null ? 0 : Math.min(base.days.length, sharedDays(acts, branch.acts)),
    );
    return found === null ? null : { branch: { ...branch, season: found.season }, busy: found.busy };
  };

  return {
    async switchTo(id) {
      const before = livedOf(store.getState());
      if (before === null || id === before.present) return;
      if (before.busy) {
        runs.forget();
        store.setState({ game: { ...before, busy: false } });
      }
      const found = await loaded(id);
      const lived = livedOf(store.getState());
      if (found === null || lived === null) return;
      const { branch, busy = lived.busy } = found;
      if (lived.present !== before.present) {
        store.setState({ game: { ...lived, busy } });
        return;
      }
      const { day, clock } = momentOf(branch.lived_h);
      // an answer that was forgotten leaves the course behind without its output
      const stale = before.busy || busy;
      if (stale) runs.forget();
      const plan = planOf(lived, branch.acts);
      const moved = withPutOff<Lived>({
        ...withOutput(lived, branch.season, false),
        branches: withPresent({ ...lived, busy: stale }, [lived.present]),
        present: id,
        compared: lived.present,
        acts: branch.acts,
        plan,
        lived_h: branch.lived_h,
        now_h: Math.min(lived.now_h, branch.lived_h),
      });
      store.setState({
        game: branch.lived_h >= lastHour(plan) ? atResult(moved) : running(moved, 'paused'),
        announcement: say('said.switched', { branch: branchLetter(id), day, hour: clock }),
      });
    },
    async compareWith(id) {
      const before = livedOf(store.getState());
      if (before === null || id === before.present) return;
      const found = id === null ? null : await loaded(id);
      const lived = livedOf(store.getState());
      if (lived === null || (id !== null && found === null)) return;
      const busy = found?.busy ?? lived.busy;
      if (id === lived.present) {
        store.setState({ game: { ...lived, busy } });
        return;
      }
      const branches = withPresent(lived, [id]).map((one) => (found !== null && one.id === id ? found.branch : one));
      store.setState({
        game: { ...lived, busy, branches, compared: id },
        announcement: id === null ? say('said.comparedNone') : say('said.compared', { branch: branchLetter(id) }),
      });
    },
  };
}
