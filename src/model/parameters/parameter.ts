// What a constant of the model carries with it: no number stands bare.
// A Parameter is one number; a Correlation is a published formula's set of coefficients with the range it holds in.

/**
 * Where a value comes from: printed in the source named; computed from such a value; recalled, not looked up;
 * fitted to the measurement named; or assumed.
 */
export type Flag = 'published' | 'derived' | 'memory' | 'calibrated' | 'assumption';

export interface Parameter {
  value: number;
  unit: string;
  /** The range the value may be drawn from; low ≤ value ≤ high, in the same unit. */
  low: number;
  high: number;
  source: string;
  flag: Flag;
  /** why it cannot be drawn or replaced in a run: it is a definition, or the same in every loop; left out where it can */
  fixed?: string;
}

export type ParameterGroup = Record<string, Parameter>;

/** Coefficients that only mean something together; the formula stands in `formula`, in the order of the coefficients. */
export interface Correlation<N extends readonly number[] = readonly number[]> {
  coefficients: N;
  formula: string;
  unit: string;
  /** Water temperatures the formula was fitted over, °C. */
  from_C: number;
  to_C: number;
  source: string;
  flag: Flag;
}
