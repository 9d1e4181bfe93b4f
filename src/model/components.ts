// What flows and what resides: the components of a cell's state and the order they stand in.
// A cell's state is MASS: g, but mol C for inorganic carbon, eq for alkalinity, g COD for organics, solids, films and methane.

// --- flowing, dissolved; the first eight are solved together (the fast dense block)
export const O2 = 0, TAN = 1, NO2 = 2, NO3 = 3, IC = 4, ALK = 5, S2 = 6, SS = 7;
export const CH4 = 8, N2 = 9, SO4 = 10, P = 11, K = 12, CA = 13, MG = 14, NA = 15, CL = 16, FE = 17;
// --- flowing without mass: free-floating bacteria, index × m³
export const OP = 18;
// --- flowing solids: coarse, fine, superfine, each fast-degradable, slow-degradable, inert
export const CF = 19, CS = 20, CI = 21, FF = 22, FS = 23, FI = 24, UF = 25, US = 26, UI = 27;
// --- resident: sludge on the floor or in the cone; solids caught in mats, media or roots; films of three guilds
export const SF = 28, SL = 29, SI = 30, MF = 31, MS = 32, MI = 33, BA = 34, BN = 35, BH = 36;
// --- resident in the sludge's pore water: organics, sulfide
export const PO = 37, PS = 38;
// --- organisms: feed in the gut (g feed), fish (g wet), leaf (g dry) and its stores of N, P, K, Ca, Fe (g);
// indices without mass: root health, filter blockage
export const GUT = 39, FISH = 40, LEAF = 41, QN = 42, QP = 43, QK = 44, QCA = 45, QFE = 46, ROOT = 47, CLOG = 48;

export const FLOWING = 28;
export const FAST = 8;
export const STATES = 49;

/** The reservoirs outside the water: the air, and iron that fell out. They are booked, not simulated. */
export const AIR_O2 = 49, AIR_CO2 = 50, AIR_N2 = 51, AIR_H2S = 52, AIR_CH4 = 53, AIR_NH3 = 54, RUST = 55;
export const ALL = 56;

export const NAMES: readonly string[] = [
  'O2', 'TAN', 'NO2', 'NO3', 'IC', 'ALK', 'S2', 'SS', 'CH4', 'N2', 'SO4', 'P', 'K', 'CA', 'MG', 'NA', 'CL', 'FE', 'OP',
  'CF', 'CS', 'CI', 'FF', 'FS', 'FI', 'UF', 'US', 'UI', 'SF', 'SL', 'SI', 'MF', 'MS', 'MI', 'BA', 'BN', 'BH', 'PO', 'PS',
  'GUT', 'FISH', 'LEAF', 'QN', 'QP', 'QK', 'QCA', 'QFE', 'ROOT', 'CLOG', 'AIR_O2', 'AIR_CO2', 'AIR_N2', 'AIR_H2S', 'AIR_CH4', 'AIR_NH3', 'RUST',
];

/** What continuity sums over. Charge is that of the species at the alkalinity end point, in eq. */
export const ELEMENTS = ['COD', 'N', 'P', 'C', 'S', 'K', 'Ca', 'Mg', 'Na', 'Fe', 'Cl', 'charge'] as const;
export type Element = (typeof ELEMENTS)[number];

/** Atomic masses, g/mol (IUPAC standard atomic weights, abridged). */
export const ATOM = { C: 12.011, N: 14.007, P: 30.974, S: 32.06, K: 39.098, Ca: 40.078, Mg: 24.305, Na: 22.990, Cl: 35.45, O: 15.999, H: 1.008 } as const;

/** Solids by size and part: row of size (0 coarse, 1 fine, 2 superfine), column of part (0 fast, 1 slow, 2 inert). */
export const SOLIDS: readonly (readonly number[])[] = [[CF, CS, CI], [FF, FS, FI], [UF, US, UI]];
export const SLUDGE: readonly number[] = [SF, SL, SI];
export const CAUGHT: readonly number[] = [MF, MS, MI];
/** A crop's stores, g. */
export const STORES: readonly number[] = [QN, QP, QK, QCA, QFE];
