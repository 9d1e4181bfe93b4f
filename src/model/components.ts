// What flows and what resides: the components of a cell's state and the order they stand in.
// A cell's state is MASS: g, but mol C for inorganic carbon, eq for alkalinity, g COD for organics, solids, films and methane.

// --- flowing, dissolved; the first eight are solved together (the fast dense block)
export const O2 = 0, TAN = 1, NO2 = 2, NO3 = 3, IC = 4, ALK = 5, S2 = 6, SS = 7;
export const CH4 = 8, N2 = 9, SO4 = 10, P = 11, K = 12, CA = 13, NA = 14, CL = 15, FE = 16;
// --- flowing solids: coarse, fine, superfine, each fast-degradable, slow-degradable, inert
export const CF = 17, CS = 18, CI = 19, FF = 20, FS = 21, FI = 22, UF = 23, US = 24, UI = 25;
// --- resident: sludge on the floor or in the cone; solids caught in mats, media or roots; films of three guilds
export const SF = 26, SL = 27, SI = 28, MF = 29, MS = 30, MI = 31, BA = 32, BN = 33, BH = 34;
// --- resident in the sludge's pore water: organics, sulfide
export const PO = 35, PS = 36;
// --- organisms: feed in the gut (g feed), fish (g wet), leaf (g dry); indices without mass: root health, filter blockage
export const GUT = 37, FISH = 38, LEAF = 39, ROOT = 40, CLOG = 41;

export const FLOWING = 26;
export const FAST = 8;
export const STATES = 42;

/** The reservoirs outside the water: the air, and whatever pins a rig. They are booked, not simulated. */
export const AIR_O2 = 42, AIR_CO2 = 43, AIR_N2 = 44, AIR_H2S = 45, AIR_CH4 = 46, AIR_NH3 = 47;
export const ALL = 48;

export const NAMES: readonly string[] = [
  'O2', 'TAN', 'NO2', 'NO3', 'IC', 'ALK', 'S2', 'SS', 'CH4', 'N2', 'SO4', 'P', 'K', 'CA', 'NA', 'CL', 'FE',
  'CF', 'CS', 'CI', 'FF', 'FS', 'FI', 'UF', 'US', 'UI', 'SF', 'SL', 'SI', 'MF', 'MS', 'MI', 'BA', 'BN', 'BH', 'PO', 'PS',
  'GUT', 'FISH', 'LEAF', 'ROOT', 'CLOG', 'AIR_O2', 'AIR_CO2', 'AIR_N2', 'AIR_H2S', 'AIR_CH4', 'AIR_NH3',
];

/** What continuity sums over. Charge is that of the species at the alkalinity end point, in eq. */
export const ELEMENTS = ['COD', 'N', 'P', 'C', 'S', 'K', 'Ca', 'Na', 'Fe', 'Cl', 'charge'] as const;
export type Element = (typeof ELEMENTS)[number];

/** Atomic masses, g/mol (IUPAC standard atomic weights, abridged). */
export const ATOM = { C: 12.011, N: 14.007, P: 30.974, S: 32.06, K: 39.098, Ca: 40.078, Na: 22.990, Cl: 35.45, O: 15.999, H: 1.008 } as const;

/** Solids by size and part: row of size (0 coarse, 1 fine, 2 superfine), column of part (0 fast, 1 slow, 2 inert). */
export const SOLIDS: readonly (readonly number[])[] = [[CF, CS, CI], [FF, FS, FI], [UF, US, UI]];
export const SLUDGE: readonly number[] = [SF, SL, SI];
export const CAUGHT: readonly number[] = [MF, MS, MI];
