// Where a cell's rates are worked out: views into the state, rates and derivatives, and the water's acid-base state.
import type { Cell } from '../cell';
import type { Matrix } from '../network/matrix';
import type { Saturation } from './saturation';
import type { Kinetics } from './kineticsAt';

/** Everything a rate function reads and writes. One object, moved from cell to cell; nothing is allocated in a step. */
export interface Workspace {
  cell: Cell;
  /** state of all cells and where this cell begins */
  y: Float64Array;
  o: number;
  /** rates, per day, and derivatives; where this cell's begin */
  r: Float64Array;
  ro: number;
  g: Float64Array;
  go: number;
  /** whether derivatives are asked for: at the first stage of a step */
  keeps: boolean;
  /** 1/volume */
  perVolume: number;
  /**
   * acid-base state: h = 10^(3−pH) mol/m³; un-ionised shares of TAN and sulfide; CO2 mol/m³ with its derivatives to IC and ALK
   * concentration
   */
  h: number;
  nh3: number;
  h2s: number;
  co2: number;
  co2IC: number;
  co2ALK: number;
  /** inorganic carbon mol/m³, the alkalinity it makes up eq/m³, and the dissociation constants that tie it to CO2 */
  carbon: number;
  carbonate: number;
  k1: number;
  k12: number;
  /** h that a rig holds, or 0 */
  pinned: number;
  /** 0–1: what pH and alkalinity leave of nitrification */
  nitrifying: number;
  /** d(oxygen drawn by the sludge bed)/d(oxygen), 1/d; 0 without a bed */
  pull: number;
  /** light now against its daily mean, 0 at night */
  light: number;
}

/** The numbers of a run that rates are worked out from. */
export interface RateNumbers {
  kinetics: Kinetics;
  saturation: Saturation;
  matrix: Pick<Matrix, 'table'>;
}
