// A crop's own numbers for the inner loop: half saturations, room of its stores, how fast it fills them.
import { LN10, exp } from '../../../numerics/elementary';
import { keptBy } from '../../keptBy';
import type { Values } from '../../parameters/values';

export interface CropAt {
  halfN: number;
  halfP: number;
  halfK: number;
  halfCa: number;
  halfMg: number;
  halfFe: number;
  halfS: number;
  /** g/g dry that the leaf can hold in store above what growth needs at least: N, P, K, Ca, Fe */
  roomN: number;
  roomP: number;
  roomK: number;
  roomCa: number;
  roomFe: number;
  /** 1/d at which an empty store fills where nothing else is short */
  fill: number;
  /** mol/m³ of hydrogen ion at which half of the iron still serves */
  ironH: number;
}

/** Share of the least content that a store has room for at least: a guard, where a full content drawn lies below the least. */
const LEAST_STORE = 0.05;

/** The numbers of a crop, from all numbers of a run. */
export const cropAt = keptBy(reckon);

function reckon(values: Values, crop: string): CropAt {
  const c = values.crops[crop];
  const m = values.matter;
  const room = (full: number, least: number): number => Math.max(full - least, LEAST_STORE * least);
  return {
    halfN: c.halfN,
    halfP: c.halfP,
    halfK: c.halfK,
    halfCa: c.halfCa,
    halfMg: c.halfMg,
    halfFe: c.halfFe,
    halfS: c.halfS,
    roomN: room(c.quotaN, m.leafN),
    roomP: room(c.quotaP, m.leafP),
    roomK: room(c.quotaK, m.leafK),
    roomCa: room(c.quotaCa, m.leafCa),
    roomFe: room(c.quotaFe, m.leafFe),
    fill: values.kinetics.storeFill,
    ironH: exp(LN10 * (3 - c.ironHighPH)),
  };
}
