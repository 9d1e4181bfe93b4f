// What flows and what resides: the places of the components in a cell's state. What each is stands in componentList.ts.
// Written by `npm run kernels` from the tables of components and processes: never edited, stale copies fail a test.
export { ATOM, ELEMENTS } from './elements';
export type { Element } from './elements';

// --- flowing, dissolved, solved together in one dense block
export const O2 = 0, TAN = 1, NO2 = 2, NO3 = 3, IC = 4, ALK = 5, S2 = 6, SS = 7;

// --- flowing, dissolved
export const CH4 = 8, N2 = 9, SO4 = 10, P = 11, K = 12, CA = 13, MG = 14, NA = 15, CL = 16, FE = 17;

// --- flowing without mass
export const OP = 18;

// --- flowing solids
export const CF = 19, CS = 20, CI = 21, FF = 22, FS = 23, FI = 24, UF = 25, US = 26, UI = 27;

// --- resident: they stay in their cell
export const SF = 28, SL = 29, SI = 30, MF = 31, MS = 32, MI = 33, BA = 34, BN = 35, BH = 36, PO = 37, PS = 38, GUT = 39, FISH = 40,
  LEAF = 41, QN = 42, QP = 43, QK = 44, QCA = 45, QFE = 46, ROOT = 47, ROT = 48, CLOG = 49;

// --- outside the water: booked, not simulated
export const AIR_O2 = 50, AIR_CO2 = 51, AIR_N2 = 52, AIR_H2S = 53, AIR_CH4 = 54, AIR_NH3 = 55, RUST = 56;

export const FAST = 8, FLOWING = 28, STATES = 50, ALL = 57;

export const NAMES: readonly string[] = ['O2', 'TAN', 'NO2', 'NO3', 'IC', 'ALK', 'S2', 'SS', 'CH4', 'N2', 'SO4', 'P', 'K', 'CA', 'MG', 'NA',
  'CL', 'FE', 'OP', 'CF', 'CS', 'CI', 'FF', 'FS', 'FI', 'UF', 'US', 'UI', 'SF', 'SL', 'SI', 'MF', 'MS', 'MI', 'BA', 'BN', 'BH', 'PO', 'PS',
  'GUT', 'FISH', 'LEAF', 'QN', 'QP', 'QK', 'QCA', 'QFE', 'ROOT', 'ROT', 'CLOG', 'AIR_O2', 'AIR_CO2', 'AIR_N2', 'AIR_H2S', 'AIR_CH4',
  'AIR_NH3', 'RUST'];

/** Solids by size and part: row of size (0 coarse, 1 fine, 2 superfine), column of part (0 fast, 1 slow, 2 inert). */
export const SOLIDS: readonly (readonly number[])[] = [[CF, CS, CI], [FF, FS, FI], [UF, US, UI]];
/** At rest and caught, by part; a crop's stores, g. */
export const SLUDGE: readonly number[] = [SF, SL, SI];
export const CAUGHT: readonly number[] = [MF, MS, MI];
export const STORES: readonly number[] = [QN, QP, QK, QCA, QFE];
/** What lasts on its way round the loop, neither a fast reactant nor a solid that settles. */
export const LASTING: readonly number[] = [TAN, NO2, NO3, IC, ALK, N2, SO4, P, K, CA, MG, NA, CL, FE, OP];
