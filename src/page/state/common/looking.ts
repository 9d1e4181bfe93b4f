// How near the picture is looked at: the whole loop, or the selected stage from close by. Where that is a stage, the look follows the selection.
import type { StoreApi } from 'zustand/vanilla';
import { say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { selectable } from './selectors';
import type { PageActions, PageState, PageStore } from './state';

/** Whether the picture shows one stage from close by. */
export const looksClose = (state: Pick<PageState, 'closer' | 'selected'>): boolean => state.closer && state.selected !== null;

export function createLooking(store: StoreApi<PageStore>): Pick<PageActions, 'lookCloser'> {
  return {
    lookCloser(closer) {
      const { plan, selected } = store.getState();
      if (closer && (plan === null || selected === null)) return;
      const stages = plan === null ? [] : selectable(plan);
      store.setState({ closer, announcement: closer && selected !== null ? say('said.closer', { stage: stageName(stages, selected) }) : say('said.whole') });
    },
  };
}
