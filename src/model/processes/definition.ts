// What a process file says of each of its processes: stoichiometry, unit, and which derivatives of its rate are kept.
import type { Values } from '../parameters/values';
import type { ProcessName } from './catalogue';

export interface Definition {
  id: ProcessName;
  /** unit of the extent: what one unit of rate × day is */
  unit: string;
  fixed: (values: Values) => readonly (readonly [component: number, coefficient: number])[];
  unknowns: readonly number[];
  /** a component outside the dense block to which the derivative is kept: it is solved by itself (solids, methane, a gut, scarce phosphorus) */
  alone?: number;
  /** components of the dense block to which derivatives are kept, in the order of their slots */
  fast?: readonly number[];
  /** what it brings comes from outside the loop: only charge closes */
  fromOutside?: boolean;
}
