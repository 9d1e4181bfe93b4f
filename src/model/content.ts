// What one unit of each component holds of each element, and how solids weigh: the table that continuity sums over.
import { COMPONENTS } from './componentList';
import { STATES } from './components';
import { ELEMENTS } from './elements';
import type { Values } from './parameters/values';

/**
 * Content of every component (and outside reservoir) in every element.
 * @returns [ALL][ELEMENTS], g per unit of the component (charge in eq).
 */
export function contentTable(values: Values): Float64Array[] {
  return COMPONENTS.map(({ content }) => {
    const row = content?.(values.matter) ?? {};
    return Float64Array.from(ELEMENTS, (element) => row[element] ?? 0);
  });
}

/** Dry mass per unit of each component that is solid or living, g dry per unit. */
export const dryMass = (values: Values): Float64Array =>
  Float64Array.from(COMPONENTS.slice(0, STATES), ({ dry }) => (dry ? values.matter[dry] : 0));
