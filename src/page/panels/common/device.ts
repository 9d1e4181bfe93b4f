// Choices kept on this device and nowhere else: units, paper, cautions read, and whether hints are shown and predictions asked for. A
// browser that keeps nothing is no fault.
import { useEffect } from 'react';
import { keptIn } from '../../state/common/device';
import { PAPER_SIZES, type PaperSize } from '../../state/paper/sheets';
import { usePageStore } from './pageStore';

const UNITS = 'loopwright.units';
const HINTS = 'loopwright.hints';
const PREDICTING = 'loopwright.predicting';
const CAUTIONS = 'loopwright.cautions';
const PAPER = 'loopwright.paper';
/** Where sheets are 8.5 by 11 inches. */
const LETTER_LANDS: ReadonlySet<string> = new Set(['US', 'CA', 'MX', 'CL', 'CO', 'CR', 'GT', 'PA', 'PH', 'SV', 'VE']);

const device = keptIn(() => localStorage);

/** Whether the cautions were shown on this device before. */
export const cautionsSeen = (): boolean => device.read(CAUTIONS) !== null;
export const keepCautionsSeen = (): void => device.write(CAUTIONS, 'read');

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
    choosePaper({ size: PAPER_SIZES.find((size) => size === device.read(PAPER)) ?? usualPaper() });
    if (device.read(UNITS) === 'us') setUnits('us');
    if (device.read(HINTS) === 'off') setHints(false);
    if (device.read(PREDICTING) === 'off') setPredicting(false);
    return store.subscribe(({ preferences: now, paper }, { preferences: before, paper: paperBefore }) => {
      if (now.units !== before.units) device.write(UNITS, now.units);
      if (now.hints !== before.hints) device.write(HINTS, now.hints ? 'on' : 'off');
      if (paper.size !== paperBefore.size) device.write(PAPER, paper.size);
      if (now.predicting !== before.predicting) device.write(PREDICTING, now.predicting ? 'on' : 'off');
    });
  }, [store]);
}
