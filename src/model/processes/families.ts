// The families of processes: a file each, with its definitions and the function of their rates, in the order these are called.
import type { Definition } from './definition';
import { dosingDefinitions, doseRates } from './dosing';
import { filmDefinitions, filmRates } from './film';
import { fishDefinitions, fishRates } from './fish';
import { gasDefinitions, gasRates } from './gas';
import { hydrolysisDefinitions, hydrolysisRates } from './hydrolysis';
import { freeBacteriaDefinitions, freeBacteriaRates } from './freeBacteria';
import { rootDefinitions, rootRates } from './roots';
import { plantDefinitions, plantRates } from './plants';
import { sludgeDefinitions, sludgeRates } from './sludge';
import { solidsDefinitions, solidsRates } from './solids';
import type { RateNumbers, Workspace } from './workspace';

export interface Family {
  /** its file, without ending */
  file: string;
  /** the function of that file that writes its rates and kept derivatives; called where any of its processes runs */
  rates: (w: Workspace, numbers: RateNumbers) => void;
  definitions: readonly Definition[];
}

/** Gas transfer keeps what sludge and fish take of the oxygen, and what nitrifiers take of carbon: it comes after them. */
export const FAMILIES: readonly Family[] = [
  { file: 'film', rates: filmRates, definitions: filmDefinitions },
  { file: 'roots', rates: rootRates, definitions: rootDefinitions },
  { file: 'hydrolysis', rates: hydrolysisRates, definitions: hydrolysisDefinitions },
  { file: 'sludge', rates: sludgeRates, definitions: sludgeDefinitions },
  { file: 'solids', rates: solidsRates, definitions: solidsDefinitions },
  { file: 'fish', rates: fishRates, definitions: fishDefinitions },
  { file: 'gas', rates: gasRates, definitions: gasDefinitions },
  { file: 'plants', rates: plantRates, definitions: plantDefinitions },
  { file: 'freeBacteria', rates: freeBacteriaRates, definitions: freeBacteriaDefinitions },
  { file: 'dosing', rates: doseRates, definitions: dosingDefinitions },
];
