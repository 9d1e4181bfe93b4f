// The browser's Back button, and closing or reloading the page: both ask first where they would end a season that was acted in.
// While such a season runs, a step of history with the same address lies in front of the page's own. Back takes it away, which leaves
// the page where it is and tells it so; then it asks. To stay lays the step there again, to leave goes back for good.
import { useEffect, useRef } from 'react';
import { underWay } from '../../state/run/branches';
import type { Guard } from '../common/askFirst';
import { usePage, usePageStore } from '../common/pageStore';

/** The entry of a step in the history that this page laid. */
const KEY = 'asksBefore';
/** A page that is still here after so long has nothing behind it to go back to, ms. */
const STILL_HERE_ms = 700;

/** A step that asks: the address before which it lies, and its number among those laid. */
interface Step {
  hash: string;
  number: number;
}

/** The present step of history as one that asks; null where it is one like any other. */
function askingStep(state: unknown): Step | null {
  if (typeof state !== 'object' || state === null || !(KEY in state)) return null;
  return { hash: location.hash, number: Number(state[KEY]) };
}

/** @param guard does a deed at once where nothing would be lost, and asks first where a season would */
export function useBackAsks(guard: Guard): void {
  const store = usePageStore();
  const needed = usePage(underWay);
  const step = useRef(askingStep(history.state));
  /** the address that the person has said to leave: nothing is asked again on the way */
  const leaving = useRef<string | null>(null);
  const asks = useRef(guard);
  useEffect(() => {
    asks.current = guard;
  });
  useEffect(() => {
    const lay = (): void => {
      step.current = { hash: location.hash, number: Date.now() };
      history.pushState({ [KEY]: step.current.number }, '', location.href);
    };
    const leave = (): void => {
      const asked = underWay(store.getState());
      leaving.current = location.hash;
      history.back();
      setTimeout(() => {
        if (leaving.current !== null && asked) store.getState().setScreen('lessons');
        leaving.current = null;
      }, STILL_HERE_ms);
    };
    // a page with nothing behind it has no way back to ask about
    if (needed && history.length > 1) lay();
    const moved = (event: PopStateEvent): void => {
      const before = step.current;
      const now = askingStep(event.state);
      step.current = now;
      if (leaving.current !== null) {
        if (leaving.current === location.hash) history.back();
        else leaving.current = null;
        return;
      }
      // other addresses are other lessons, which the page follows; a later step is one forward
      if (before === null || before.hash !== location.hash || (now !== null && now.number >= before.number)) return;
      asks.current(leave, lay);
    };
    const closed = (event: BeforeUnloadEvent): void => {
      if (needed && leaving.current === null) event.preventDefault();
    };
    window.addEventListener('popstate', moved);
    if (needed) window.addEventListener('beforeunload', closed);
    return () => {
      window.removeEventListener('popstate', moved);
      window.removeEventListener('beforeunload', closed);
    };
  }, [store, needed]);
}
