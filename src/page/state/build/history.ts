// What was changed in a design, step by step: every step can be taken back and done again, without limit, while building.
import type { StoreApi } from 'zustand/vanilla';
import { say } from '../../../words/say';
import type { PageActions } from '../common/actions';
import type { PageStore } from '../common/page';
import { buildOf } from '../common/selectors';
import type { Step } from '../common/state';
import type { Build, History } from './build';
import type { ShowDesign } from './designing';

export function createHistory(store: StoreApi<PageStore>, show: ShowDesign): Pick<PageActions, 'undo' | 'redo'> {
  /** @param said how it is told @param history what it leaves of the history, with the design that was in hand as a step */
  const turn = (build: Build, step: Step, said: 'said.undone' | 'said.redone', history: (now: Step) => History): void => {
    const { view } = store.getState();
    const stands = [...step.plan.loop, ...step.plan.side].some((stage) => stage.id === view.selected);
    show(
      { ...build, plan: step.plan, history: history({ plan: build.plan, what: step.what }), drag: null },
      { view: { ...view, selected: stands ? view.selected : null }, announcement: say(said, { what: step.what }) },
    );
  };
  return {
    undo() {
      const build = buildOf(store.getState());
      const step = build?.history.undoable.at(-1);
      if (build === null || step === undefined) return;
      const { undoable, redoable } = build.history;
      turn(build, step, 'said.undone', (now) => ({ undoable: undoable.slice(0, -1), redoable: [...redoable, now] }));
    },
    redo() {
      const build = buildOf(store.getState());
      const step = build?.history.redoable.at(-1);
      if (build === null || step === undefined) return;
      const { undoable, redoable } = build.history;
      turn(build, step, 'said.redone', (now) => ({ undoable: [...undoable, now], redoable: redoable.slice(0, -1) }));
    },
  };
}
