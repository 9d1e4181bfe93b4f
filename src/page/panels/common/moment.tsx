// The moment that panels show: the page's clock, let through a few times a second so that reading stays possible.
import { createContext, useContext, useState, useSyncExternalStore, type ReactNode } from 'react';
import { actingHour } from '../../state/run/inForce';
import { hourOf, speedOf } from '../../state/common/selectors';
import { usePage, usePageStore } from './pageStore';
import { slowClock, type SlowClock } from './slowClock';

/** Time between two showings, ms: numbers can be read, and most frames stay free for the picture. */
const EVERY_MS = 120;
/** With reduced motion values step once a second. */
const REDUCED_MS = 1000;

const MomentContext = createContext<SlowClock>({ subscribe: () => () => undefined, hour: () => 0 });

export function MomentProvider({ children }: { children: ReactNode }) {
  const store = usePageStore();
  const [clock] = useState(() =>
    slowClock(store, hourOf, (page) => (speedOf(page) === 'paused' ? 0 : page.preferences.reducedMotion ? REDUCED_MS : EVERY_MS)),
  );
  return <MomentContext.Provider value={clock}>{children}</MomentContext.Provider>;
}

/** Hours since the start, as shown in the panels. */
export function useMoment(): number {
  const clock = useContext(MomentContext);
  return useSyncExternalStore(clock.subscribe, clock.hour, clock.hour);
}

/** The hour at which a deed done at the moment shown takes hold. */
export function useActingHour(): number {
  const now_h = useMoment();
  const mode = usePage((page) => page.game.mode);
  return actingHour({ mode, now_h: mode === 'build' ? undefined : now_h });
}
