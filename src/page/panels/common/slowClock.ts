// A clock let through a few times a second, so that numbers can be read and most frames stay free for the picture.
import type { StoreApi } from 'zustand/vanilla';

/** As React reads a store outside of it. */
export interface SlowClock {
  subscribe(listener: () => void): () => void;
  hour(): number;
}

/**
 * @param hourOf the hour that a state stands at
 * @param wait_ms time between two showings; 0 where the clock stands and is shown at once
 */
export function slowClock<S>(
  store: Pick<StoreApi<S>, 'getState' | 'subscribe'>,
  hourOf: (state: S) => number,
  wait_ms: (state: S) => number,
): SlowClock {
  const listeners = new Set<() => void>();
  let shown = hourOf(store.getState());
  let shownAt = -Infinity;
  let timer: ReturnType<typeof setTimeout> | null = null;
  let stop: (() => void) | null = null;

  const show = (): void => {
    timer = null;
    shownAt = performance.now();
    shown = hourOf(store.getState());
    for (const listener of listeners) listener();
  };
  const changed = (state: S, before: S): void => {
    const every = wait_ms(state);
    if (hourOf(state) === hourOf(before) && every === wait_ms(before)) return;
    if (timer !== null) {
      if (every > 0) return;
      clearTimeout(timer);
    }
    const wait = Math.max(0, every - (performance.now() - shownAt));
    if (wait === 0) show();
    else timer = setTimeout(show, wait);
  };

  return {
    hour: () => shown,
    subscribe(listener) {
      if (listeners.size === 0) {
        shown = hourOf(store.getState());
        stop = store.subscribe(changed);
      }
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
        if (listeners.size > 0) return;
        stop?.();
        if (timer !== null) clearTimeout(timer);
        timer = null;
      };
    },
  };
}
