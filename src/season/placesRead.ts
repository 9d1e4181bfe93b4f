// What hourly rows read of the state: the places that interpolation between steps has to fill.
import type { Cell } from '../model/cell';
import {
  ALK,
  CA,
  CF,
  CH4,
  CL,
  CLOG,
  FE,
  FISH,
  IC,
  K,
  LEAF,
  MF,
  MG,
  MI,
  MS,
  NO2,
  NO3,
  O2,
  OP,
  P,
  QCA,
  QFE,
  QK,
  QN,
  QP,
  ROOT,
  ROT,
  S2,
  SF,
  SI,
  SL,
  SS,
  STATES,
  TAN,
  UI,
} from '../model/components';

const EVERYWHERE = [
  TAN,
  NO2,
  NO3,
  O2,
  IC,
  ALK,
  S2,
  CH4,
  SS,
  P,
  K,
  CA,
  FE,
  MG,
  OP,
  SF,
  SL,
  SI,
  MF,
  MS,
  MI,
  ...Array.from({ length: UI - CF + 1 }, (_, i) => CF + i),
];
const OF_FISH = [FISH, CL];
const OF_FILTER = [CLOG];
const OF_BED = [LEAF, ROOT, ROT, QN, QP, QK, QCA, QFE];

/** Places in the state of a loop, ascending. */
export const placesRead = (cells: readonly Cell[]): Int32Array =>
  Int32Array.from(
    cells.flatMap((cell) =>
      [...EVERYWHERE, ...(cell.fish ? OF_FISH : []), ...(cell.filter ? OF_FILTER : []), ...(cell.bed ? OF_BED : [])].map(
        (component) => cell.index * STATES + component,
      ),
    ),
  ).sort();
