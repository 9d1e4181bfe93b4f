// Asks the worker what the season of the plan in hand earns: whole, for the result and for predictions come due; and so far, for a lesson's own goals; and the changes made while building.
import type { StoreApi } from 'zustand/vanilla';
import type { Lesson } from '../../../lessons/lesson';
import type { Client, PageStore } from '../common/state';

/** Whether a lesson asks for more than the two scores. */
export function hasGoals(lesson: Pick<Lesson, 'scoring'>): boolean {
  return lesson.scoring.marks.some((mark) => (mark.goals ?? []).length > 0 || mark.moves !== undefined);
}

export function createJudging(client: Client, store: StoreApi<PageStore>, fail: (error: unknown) => void): void {
  let asked = 0;
  let looking = false;

  const judge = async (): Promise<void> => {
    asked += 1;
    const mine = asked;
    const { season, plan, lesson } = store.getState();
    store.setState({ judged: null, soFar: null });
    if (season === null || plan === null || lesson === null) return;
    try {
      const judged = await client.ask({ ask: 'judge', plan, lesson });
      if (mine === asked) store.setState({ judged });
    } catch (error) {
      if (mine === asked) fail(error);
    }
  };

  /** One question at a time: days that pass meanwhile are gathered into the next. */
  const look = async (): Promise<void> => {
    const { plan, lesson, season, now_h, busy, soFar } = store.getState();
    const day = Math.floor(now_h / 24 + 1e-9);
    if (looking || busy || plan === null || lesson === null || season === null || soFar?.day === day || !hasGoals(lesson)) return;
    if (day === 0) {
      store.setState({ soFar: null });
      return;
    }
    looking = true;
    const mine = asked;
    try {
      const { marks } = await client.ask({ ask: 'judge', plan, lesson, untilDay: day });
      if (mine === asked) store.setState({ soFar: { day, marks } });
    } catch (error) {
      if (mine === asked) fail(error);
    } finally {
      looking = false;
    }
  };

  /** Changes to the loop as given, while it is built. */
  const count = async (): Promise<void> => {
    const { plan, lesson } = store.getState();
    if (plan === null || lesson === null || !lesson.scoring.marks.some((mark) => mark.moves !== undefined)) {
      if (store.getState().moved !== null) store.setState({ moved: null });
      return;
    }
    try {
      const moved = await client.ask({ ask: 'moves', lesson: { given: lesson.given, plan: lesson.plan }, built: plan.loop.map((stage) => stage.id) });
      if (plan.loop === store.getState().plan?.loop) store.setState({ moved });
    } catch (error) {
      fail(error);
    }
  };

  store.subscribe((now, before) => {
    if (now.plan?.loop !== before.plan?.loop) void count();
    const acted = now.plan !== before.plan && now.mode !== 'build' && now.season !== null;
    const arrived = now.season !== before.season;
    if (arrived) void judge();
    else if (acted) {
      asked += 1;
      store.setState({ judged: null });
    }
    if (arrived || Math.floor(now.now_h / 24 + 1e-9) !== Math.floor(before.now_h / 24 + 1e-9)) void look();
  });
}
