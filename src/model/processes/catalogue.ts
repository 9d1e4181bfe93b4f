// Every process by its id: the place of its rate, of its kept derivatives, and of those of its coefficients that depend on parameters.
import * as ID from '../kernel/ids';
import * as KEPT from '../kernel/kept';
import * as TABLE from '../kernel/table';

/** id → place of its rate */
export { ID };
/** id_COMPONENT, or id_share of what it follows → place among a cell's kept derivatives */
export { KEPT };
/** id_COMPONENT → place in the matrix's table */
export { TABLE };

export type ProcessName = keyof typeof ID;

const byPlace = (Object.entries(ID) as [ProcessName, number][]).sort(([, a], [, b]) => a - b);

/** The ids in the order their rates stand in. */
export const PROCESS_NAMES: readonly ProcessName[] = byPlace.map(([name]) => name);
export { PROCESSES } from '../kernel/sizes';
