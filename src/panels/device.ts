// Choices kept on this device and nowhere else: units, paper, cautions read, and whether hints are shown and predictions asked for. A browser that keeps nothing is no fault.
import { useEffect } from 'react';
import { PAPER_SIZES, type PaperSize } from '../store/paper';
import { usePageStore } from './pageStore';

const UNITS = 'loopwright.units';
const HINTS = 'loopwright.hints';
const PREDICTING = 'loopwright.predicting';
const CAUTIONS = 'loopwright.cautions';
const PAPER = 'loopwright.paper';
/** Where sheets are 8.5 by 11 inches. */
const LETTER_LANDS: ReadonlySet<string> = new Set(['US', 'CA', 'MX', 'CL', 'CO', 'CR', 'GT', 'PA', 'PH', 'SV', 'VE']);

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

/** Whether the cautions were shown on this device before. */
export const cautionsSeen = (): boolean => kept(CAUTIONS) !== null;
export const keepCautionsSeen = (): void => keep(CAUTIONS, 'read');

/** The paper that is usual where the browser's language is at home. */
function usualPaper(): PaperSize {
  const region = /-([A-Z]{2})(?![A-Za-z])/.exec(navigator.language)?.[1];
  return region !== undefined && LETTER_LANDS.has(region) ? 'Letter' : 'A4';
}

/** Takes up what was chosen on this device before, and keeps what is chosen from now on. */
export function useDeviceChoices(): void {
  const store = usePageStore();
  useEffect(() => {
    const { setUnits, setHints, setPredicting, choosePaper } = store.getState();
    choosePaper({ size: PAPER_SIZES.find((size) => size === kept(PAPER)) ?? usualPaper() });
    if (kept(UNITS) === 'us') setUnits('us');
    if (kept(HINTS) === 'off') setHints(false);
    if (kept(PREDICTING) === 'off') setPredicting(false);
    return store.subscribe((now, before) => {
      if (now.units !== before.units) keep(UNITS, now.units);
      if (now.hints !== before.hints) keep(HINTS, now.hints ? 'on' : 'off');
      if (now.paper.size !== before.paper.size) keep(PAPER, now.paper.size);
      if (now.predicting !== before.predicting) keep(PREDICTING, now.predicting ? 'on' : 'off');
    });
  }, [store]);
}
