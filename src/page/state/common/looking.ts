// How the loop is looked at: what is selected, what colours the water, and whether the picture is close by. A close look follows the
// selection.
import type { StoreApi } from 'zustand/vanilla';
import { say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import type { PageActions } from './actions';
import type { PageState, PageStore } from './page';
import { planOf, selectable } from './selectors';

/** Whether the picture shows one stage from close by. */
export const looksClose = ({ view }: Pick<PageState, 'view'>): boolean => view.closer && view.selected !== null;

export function createLooking(store: StoreApi<PageStore>): Pick<PageActions, 'select' | 'setTint' | 'lookCloser'> {
  return {
    select: (selected) => store.setState(({ view }) => ({ view: { ...view, selected } })),
    setTint: (tint) =>
      store.setState(({ view }) => ({ view: { ...view, tint }, announcement: say('said.tint', { tint: say(`tint.${tint}`) }) })),
    lookCloser(closer) {
      const { view, game } = store.getState();
      const plan = planOf({ game });
      if (closer && (plan === null || view.selected === null)) return;
      const said =
        closer && plan !== null && view.selected !== null
          ? say('said.closer', { stage: stageName(selectable(plan), view.selected) })
          : say('said.whole');
      store.setState({ view: { ...view, closer }, announcement: said });
    },
  };
}
