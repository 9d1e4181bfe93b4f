// Every process: its id, its place among the rates, and how many derivatives of it are kept.
import * as ID from './ids';

/** id → place of its rate */
export { ID };

export type ProcessName = keyof typeof ID;

const byPlace = (Object.entries(ID) as [ProcessName, number][]).sort(([, a], [, b]) => a - b);

/** The ids in the order their rates stand in. */
export const PROCESS_NAMES: readonly ProcessName[] = byPlace.map(([name]) => name);
export const PROCESSES = 90;

/** Derivatives kept per process. */
export const SLOTS = 3;
