// The audit: what came in, went out, and is held, by element, from amounts alone. A season closes when nothing is missing.
import { ALL, ALK, ELEMENTS, FLOWING, STATES } from './components';

export interface Balance {
  start: number;
  inflow: number;
  outflow: number;
  end: number;
  closure: number;
}

/** Sum of one element over a state of all cells. */
export function held(content: readonly Float64Array[], y: Float64Array, element: number): number {
  let sum = 0;
  for (let i = 0; i < y.length; i++) sum += content[i % STATES][element] * y[i];
  return sum;
}

/** Sum of one element over amounts by component (length ALL, STATES or FLOWING). */
export function contentOf(content: readonly Float64Array[], amounts: Float64Array, element: number): number {
  let sum = 0;
  const n = Math.min(amounts.length, ALL);
  for (let i = 0; i < n; i++) sum += content[i][element] * amounts[i];
  return sum;
}

/**
 * Closure of one element: what is missing against what there was and came in.
 * @param start content at the start; @param inflow and outflow across the boundary; @param end content at the end
 */
export function close(start: number, inflow: number, outflow: number, end: number, scale: number): Balance {
  const missing = start + inflow - outflow - end;
  return { start, inflow, outflow, end, closure: scale > 0 ? missing / scale : missing };
}

/** Charge of every ion and of alkalinity summed without sign, eq: the scale that charge closes against. */
export function chargeScale(content: readonly Float64Array[], y: Float64Array): number {
  const charge = ELEMENTS.indexOf('charge');
  let sum = 0;
  for (let i = 0; i < y.length; i++) {
    const component = i % STATES;
    if (component < FLOWING && component !== ALK) sum += Math.abs(content[component][charge] * y[i]);
  }
  return sum;
}
