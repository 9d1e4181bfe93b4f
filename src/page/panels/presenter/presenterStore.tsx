// How the panels of presenter mode reach its store, and how their clock is let through a few times a second.
import { createContext, useContext, useState, useSyncExternalStore, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { Presenter, PresenterStore } from '../../state/presenter/presenterState';
import { slowClock, type SlowClock } from '../common/slowClock';

const PresenterContext = createContext<Presenter | null>(null);
const ClockContext = createContext<SlowClock>({ subscribe: () => () => undefined, hour: () => 0 });
/** Time between two showings of the clock and the figures, ms. */
const EVERY_MS = 150;

export function PresenterProvider({ presenter, children }: { presenter: Presenter; children: ReactNode }) {
  const [clock] = useState(() =>
    slowClock(
      presenter.store,
      ({ now_h }) => now_h,
      ({ toward, playing }) => (toward === null && !playing ? 0 : EVERY_MS),
    ),
  );
  return (
    <PresenterContext.Provider value={presenter}>
      <ClockContext.Provider value={clock}>{children}</ClockContext.Provider>
    </PresenterContext.Provider>
  );
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
  const clock = useContext(ClockContext);
  return useSyncExternalStore(clock.subscribe, clock.hour, clock.hour);
}
