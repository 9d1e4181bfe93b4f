// What a process file says of each of its processes: stoichiometry, unit, where it runs, what it follows, which derivatives are kept.
import type { Values } from '../parameters/values';
import type { ProcessName } from './catalogue';
import type { Where } from './where';

/** A rate of first order in one component, at a constant that the stage sets at every cut; the kernel works it out itself. */
export interface Move {
  of: number;
  /** the constant: a number of the cell */
  at: 'settle0' | 'settle1' | 'settle2' | 'catch0' | 'catch1' | 'catch2' | 'shear' | 'stir' | 'release';
  /** the constant is m³/d of water cleared; else 1/d */
  clears?: true;
  /** the derivative is kept: the component is solved by itself */
  kept?: true;
}

export interface Definition {
  id: ProcessName;
  /** unit of the extent: what one unit of rate × day is */
  unit: string;
  fixed: (values: Values) => readonly (readonly [component: number, coefficient: number])[];
  unknowns: readonly number[];
  /** left out: everywhere */
  where?: Where;
  /** a component outside the dense block to which the derivative is kept: it is solved alone (methane, a gut, scarce phosphorus) */
  alone?: number;
  /** components of the dense block to which derivatives are kept */
  fast?: readonly number[];
  /** processes that this one follows: it runs at a share of their rates besides, and the share is kept */
  follows?: readonly ProcessName[];
  /** a process whose kept derivatives, turned round, are this one's: what the one gains at a component's cost the other loses */
  opposes?: ProcessName;
  moves?: Move;
  /** components that a step may overdraw by it, with the turn in which it is then undone */
  undone?: readonly (readonly [component: number, turn: number])[];
  /** what it brings comes from outside the loop: only charge closes */
  fromOutside?: boolean;
}
