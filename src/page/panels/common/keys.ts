// The keys that work everywhere on the page: Space runs and pauses, Ctrl or Cmd with Z takes back and does again, Z alone looks closer.
import { useEffect } from 'react';
import { looksClose } from '../../state/common/looking';
import { buildOf, livedOf } from '../../state/common/selectors';
import { usePageStore } from './pageStore';

const CONTROLS = 'a, button, input, select, textarea, summary, dialog, [role="tab"], [contenteditable]';
/** What is being typed has an undo of its own. */
const TYPING = 'input[type="number"], textarea, dialog';

/** Space runs and pauses, as long as nothing that has its own use for Space is in focus. */
export function useSpaceBar(): void {
  const store = usePageStore();
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      const { target } = event;
      if (
        event.key !== ' '
        || event.ctrlKey
        || event.metaKey
        || event.altKey
        || (target instanceof Element && target.closest(CONTROLS) !== null)
      )
        return;
      const page = store.getState();
      const lived = livedOf(page);
      if (lived === null || page.screen !== 'loop') return;
      event.preventDefault();
      page.setSpeed(lived.speed === 'paused' ? lived.pace : 'paused');
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [store]);
}

/** While building: Ctrl+Z or Cmd+Z takes the last step back, with Shift (or Ctrl+Y) it is done again. */
export function useUndoKeys(): void {
  const store = usePageStore();
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      const { target } = event;
      const key = event.key.toLowerCase();
      if (!(event.ctrlKey || event.metaKey) || event.altKey || (key !== 'z' && key !== 'y')) return;
      const { screen, undo, redo } = store.getState();
      if (buildOf(store.getState()) === null || screen !== 'loop' || (target instanceof Element && target.closest(TYPING) !== null)) return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) redo();
      else undo();
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [store]);
}

/** Z looks at the selected stage from close by, and back; Escape goes back. */
export function useLookKeys(): void {
  const store = usePageStore();
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      const { target } = event;
      const key = event.key.toLowerCase();
      const { screen, lookCloser } = store.getState();
      if ((key !== 'z' && key !== 'escape') || event.ctrlKey || event.metaKey || event.altKey || screen !== 'loop') return;
      if (target instanceof Element && target.closest(`${TYPING}, select`) !== null) return;
      const close = looksClose(store.getState());
      if (close || key === 'z') lookCloser(!close);
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [store]);
}
