// Choices kept on this device and nowhere else: units, and whether hints are shown. A browser that keeps nothing is no fault.
import { useEffect } from 'react';
import { usePageStore } from './pageStore';

const UNITS = 'loopwright.units';
const HINTS = 'loopwright.hints';

function kept(name: string): string | null {
  try {
    return localStorage.getItem(name);
  } catch {
    return null;
  }
}

function keep(name: string, value: string): void {
  try {
    localStorage.setItem(name, value);
  } catch {
    // the choice holds until the page is closed
  }
}

/** Takes up what was chosen on this device before, and keeps what is chosen from now on. */
export function useDeviceChoices(): void {
  const store = usePageStore();
  useEffect(() => {
    const { setUnits, setHints } = store.getState();
    if (kept(UNITS) === 'us') setUnits('us');
    if (kept(HINTS) === 'off') setHints(false);
    return store.subscribe((now, before) => {
      if (now.units !== before.units) keep(UNITS, now.units);
      if (now.hints !== before.hints) keep(HINTS, now.hints ? 'on' : 'off');
    });
  }, [store]);
}
