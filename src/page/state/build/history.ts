// What was changed in a design, step by step: every step can be taken back and done again, without limit, while building.
import type { StoreApi } from 'zustand/vanilla';
import type { Plan } from '../../../season/plan';
import { say } from '../../../words/say';
import type { PageActions, PageState, PageStore, Step } from '../common/state';

/** A history with nothing in it, for a lesson just opened. */
export const NO_HISTORY: Pick<PageState, 'undoable' | 'redoable'> = { undoable: [], redoable: [] };

/** The history after one more step: what could be done again is forgotten. */
export function withStep(state: Pick<PageState, 'plan' | 'undoable'>, what: string): Pick<PageState, 'undoable' | 'redoable'> {
  return { undoable: state.plan === null ? state.undoable : [...state.undoable, { plan: state.plan, what }], redoable: [] };
}

/**
 * @param show puts a design on the table and has it checked, without making a step of it
 */
export function createHistory(store: StoreApi<PageStore>, show: (plan: Plan) => void): Pick<PageActions, 'undo' | 'redo'> {
  const turn = (from: readonly Step[], said: 'said.undone' | 'said.redone', history: (kept: Step[], back: Step) => Pick<PageState, 'undoable' | 'redoable'>): void => {
    const { plan, mode, selected } = store.getState();
    const step = from.at(-1);
    if (plan === null || mode !== 'build' || step === undefined) return;
    const standing = [...step.plan.loop, ...step.plan.side].some((stage) => stage.id === selected);
    store.setState({ ...history(from.slice(0, -1), { plan, what: step.what }), drag: null, selected: standing ? selected : null, announcement: say(said, { what: step.what }) });
    show(step.plan);
  };
  return {
    undo() {
      const { undoable, redoable } = store.getState();
      turn(undoable, 'said.undone', (kept, back) => ({ undoable: kept, redoable: [...redoable, back] }));
    },
    redo() {
      const { undoable, redoable } = store.getState();
      turn(redoable, 'said.redone', (kept, back) => ({ redoable: kept, undoable: [...undoable, back] }));
    },
  };
}
