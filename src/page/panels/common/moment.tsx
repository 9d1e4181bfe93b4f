// The moment that panels show: the page's clock, let through a few times a second so that reading stays possible.
import { createContext, useContext, useEffect, useState, type ReactNode } from 'react';
import { usePageStore } from './pageStore';

/** Time between two showings, ms: numbers can be read, and most frames stay free for the picture. */
const EVERY_MS = 120;
/** With reduced motion values step once a second. */
const REDUCED_MS = 1000;

const MomentContext = createContext(0);

export function MomentProvider({ children }: { children: ReactNode }) {
  const store = usePageStore();
  const [moment, setMoment] = useState(() => store.getState().now_h);
  useEffect(() => {
    let shownAt = 0;
    let timer: ReturnType<typeof setTimeout> | null = null;
    const show = (): void => {
      timer = null;
      shownAt = performance.now();
      setMoment(store.getState().now_h);
    };
    const stop = store.subscribe((state, before) => {
      if (state.now_h === before.now_h && state.speed === before.speed) return;
      if (timer !== null) {
        if (state.speed !== 'paused') return;
        clearTimeout(timer);
      }
      const every = state.reducedMotion ? REDUCED_MS : EVERY_MS;
      const wait = state.speed === 'paused' ? 0 : Math.max(0, every - (performance.now() - shownAt));
      if (wait === 0) show();
      else timer = setTimeout(show, wait);
    });
    return () => {
      stop();
      if (timer !== null) clearTimeout(timer);
    };
  }, [store]);
  return <MomentContext.Provider value={moment}>{children}</MomentContext.Provider>;
}

/** Hours since the start, as shown in the panels. */
export function useMoment(): number {
  return useContext(MomentContext);
}
