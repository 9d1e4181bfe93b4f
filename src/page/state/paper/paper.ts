// What goes on paper: which sheet and size are chosen, and the teacher's key as played by the worker.
import type { StoreApi } from 'zustand/vanilla';
import type { Lesson } from '../../../lessons/lesson';
import type { Played } from '../../../lessons/playLesson';
import type { Plan } from '../../../season/plan';
import { say } from '../../../words/say';
import { messageOf } from '../run/seasonRuns';
import type { Client, PageActions, PageStore, SeasonView } from '../common/state';
import { mergeSeason } from '../run/view';

export type SheetKind = 'learner' | 'key' | 'lesson' | 'season';
export type PaperSize = 'A4' | 'Letter';
export const PAPER_SIZES: readonly PaperSize[] = ['A4', 'Letter'];
/** Versions of the learner's sheet, so that neighbours hold different ones. */
export const VERSIONS = 4;

/** A lesson as the model answers it: its builds as played, and the whole season of the reference. */
export interface LessonKey { lesson: Lesson; plan: Plan; season: SeasonView; played: Played[] }

export interface PaperState {
  sheet: SheetKind;
  size: PaperSize;
  version: number;
  key: LessonKey | null;
}

export const FIRST_PAPER: PaperState = { sheet: 'learner', size: 'A4', version: 0, key: null };

type PaperActions = Pick<PageActions, 'choosePaper' | 'workOutKey'>;

export function createPaper(client: Client, store: StoreApi<PageStore>): PaperActions {
  const set = (change: Partial<PaperState>): void => store.setState((state) => ({ paper: { ...state.paper, ...change } }));
  const fail = (error: unknown): void => store.setState({ failure: say('failure.worker', { message: messageOf(error) }) });
  let keyUnderWay: Lesson | null = null;

  return {
    choosePaper: set,
    async workOutKey() {
      const { lesson, paper } = store.getState();
      if (lesson === null || paper.key?.lesson === lesson || keyUnderWay === lesson) return;
      keyUnderWay = lesson;
      set({ key: null });
      try {
        const [played, plan] = await Promise.all([client.ask({ ask: 'play', lesson }), client.ask({ ask: 'build', lesson, build: 'reference' })]);
        const season = mergeSeason(null, await client.ask({ ask: 'run', plan, keepDays: 0, plantsWeight: lesson.scoring.plantsWeight }));
        if (store.getState().lesson === lesson) set({ key: { lesson, plan, season, played } });
      } catch (error) {
        fail(error);
      } finally {
        if (keyUnderWay === lesson) keyUnderWay = null;
      }
    },
  };
}
