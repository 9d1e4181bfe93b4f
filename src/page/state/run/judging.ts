// Asks the worker what the season of the plan in hand earns: whole, for the result and for predictions come due; and so far, for a lesson's
// own goals; and the changes made while building.
import type { StoreApi } from 'zustand/vanilla';
import type { Lesson } from '../../../lessons/lesson';
import { dayOf } from '../common/clock';
import type { PageStore } from '../common/page';
import { livedOf, openedOf } from '../common/selectors';
import type { Client } from '../common/state';
import { withSettled } from './settling';

/** Whether a lesson asks for more than the two scores. */
export function hasGoals(lesson: Pick<Lesson, 'scoring'>): boolean {
  return lesson.scoring.marks.some((mark) => (mark.goals ?? []).length > 0 || mark.moves !== undefined);
}

const countsMoves = ({ scoring }: Lesson): boolean => scoring.marks.some((mark) => mark.moves !== undefined);

export function createJudging(client: Client, store: StoreApi<PageStore>, fail: (error: unknown) => void): void {
  let asked = 0;
  let looking = false;

  const judge = async (): Promise<void> => {
    asked += 1;
    const mine = asked;
    const season = livedOf(store.getState());
    if (season === null) return;
    try {
      const judged = await client.ask({ ask: 'judge', plan: season.plan, lesson: season.lesson });
      const lived = livedOf(store.getState());
      if (mine === asked && lived !== null) store.setState({ game: withSettled({ ...lived, judged }) });
    } catch (error) {
      if (mine === asked) fail(error);
    }
  };

  /** One question at a time: days that pass meanwhile are gathered into the next. */
  const look = async (): Promise<void> => {
    const at = livedOf(store.getState());
    const day = at === null ? 0 : dayOf(at.now_h);
    if (looking || at === null || at.busy || day === 0 || at.soFar?.day === day || !hasGoals(at.lesson)) return;
    looking = true;
    const mine = asked;
    try {
      const { marks } = await client.ask({ ask: 'judge', plan: at.plan, lesson: at.lesson, untilDay: day });
      const lived = livedOf(store.getState());
      if (mine === asked && lived !== null && dayOf(lived.now_h) > 0) store.setState({ game: { ...lived, soFar: { day, marks } } });
    } catch (error) {
      if (mine === asked) fail(error);
    } finally {
      looking = false;
    }
  };

  /** Changes to the loop as given, while it is built. */
  const count = async (): Promise<void> => {
    const game = openedOf(store.getState());
    if (game === null || !countsMoves(game.lesson)) return;
    const {
      lesson: { given, plan },
      plan: { loop },
    } = game;
    try {
      const moved = await client.ask({ ask: 'moves', lesson: { given, plan }, built: loop.map((stage) => stage.id) });
      const now = openedOf(store.getState());
      if (now !== null && now.plan.loop === loop) store.setState({ game: { ...now, moved } });
    } catch (error) {
      fail(error);
    }
  };

  store.subscribe((now, before) => {
    if (now.game === before.game) return;
    const [opened, opened0, lived, lived0] = [openedOf(now), openedOf(before), livedOf(now), livedOf(before)];
    if (opened?.plan.loop !== opened0?.plan.loop) void count();
    const arrived = lived?.season !== lived0?.season;
    if (arrived) void judge();
    // what was judged of the plan before counts no more
    else if (lived?.plan !== lived0?.plan) asked += 1;
    if (arrived || lived?.now_h !== lived0?.now_h) void look();
  });
}
