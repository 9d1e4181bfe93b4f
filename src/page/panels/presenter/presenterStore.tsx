// How the panels of presenter mode reach its store, and how their clock is let through a few times a second.
import { createContext, useContext, useEffect, useState, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { Presenter, PresenterStore } from '../../state/presenter/presenterState';

const PresenterContext = createContext<Presenter | null>(null);
/** Time between two showings of the clock and the figures, ms. */
const EVERY_MS = 150;

export function PresenterProvider({ presenter, children }: { presenter: Presenter; children: ReactNode }) {
  return <PresenterContext.Provider value={presenter}>{children}</PresenterContext.Provider>;
}

export function usePresenter(): Presenter {
  const presenter = useContext(PresenterContext);
  if (presenter === null) throw new Error('These panels must stand inside PresenterProvider.');
  return presenter;
}

/** A selected part of the presenter's state; renders again when it changes. */
export function usePresented<T>(select: (state: PresenterStore) => T): T {
  return useStore(usePresenter().store, select);
}

/** Hours since the start that both loops show, a few times a second while they run. */
export function usePresentedHour(): number {
  const { store } = usePresenter();
  const [hour, setHour] = useState(() => store.getState().now_h);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | null = null;
    const show = (): void => {
      timer = null;
      setHour(store.getState().now_h);
    };
    show();
    const stop = store.subscribe((state, before) => {
      if (state.now_h === before.now_h) return;
      const still = state.toward === null && !state.playing;
      if (still && timer !== null) clearTimeout(timer);
      if (still) show();
      else timer ??= setTimeout(show, EVERY_MS);
    });
    return () => {
      stop();
      if (timer !== null) clearTimeout(timer);
    };
  }, [store]);
  return hour;
}
