// Chooses what goes on paper, and has the worker play a lesson for its key.
import type { StoreApi } from 'zustand/vanilla';
import type { Lesson } from '../../../lessons/lesson';
import { say } from '../../../words/say';
import type { PageActions } from '../common/actions';
import type { PageStore } from '../common/page';
import { lessonOf } from '../common/selectors';
import type { Client } from '../common/state';
import { messageOf } from '../run/seasonRuns';
import { mergeSeason } from '../run/view';
import type { PaperState } from './sheets';

export function createPaper(client: Client, store: StoreApi<PageStore>): Pick<PageActions, 'choosePaper' | 'workOutKey'> {
  const set = (change: Partial<PaperState>): void => store.setState((state) => ({ paper: { ...state.paper, ...change } }));
  const fail = (error: unknown): void => store.setState({ failure: say('failure.worker', { message: messageOf(error) }) });
  let keyUnderWay: Lesson | null = null;

  return {
    choosePaper: set,
    async workOutKey() {
      const { paper, ...page } = store.getState();
      const lesson = lessonOf(page);
      if (lesson === null || paper.key?.lesson === lesson || keyUnderWay === lesson) return;
      keyUnderWay = lesson;
      set({ key: null });
      try {
        const [played, plan] = await Promise.all([
          client.ask({ ask: 'play', lesson }),
          client.ask({ ask: 'build', lesson, build: 'reference' }),
        ]);
        const season = mergeSeason(null, await client.ask({ ask: 'run', plan, keepDays: 0, plantsWeight: lesson.scoring.plantsWeight }));
        if (lessonOf(store.getState()) === lesson) set({ key: { lesson, plan, season, played } });
      } catch (error) {
        fail(error);
      } finally {
        if (keyUnderWay === lesson) keyUnderWay = null;
      }
    },
  };
}
