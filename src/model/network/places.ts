// Where things stand in the flat tables, one exported constant each, so that a build can write the number where it is used: a name
// that has to be looked up costs more than the sum it serves.
// --- where a process's column begins in the matrix's table
export const A = 0, N = 49, H = 98, D = 147;
/** The three guilds are of one stuff, so one column each serves for what they let go as solids and dissolved. */
export const G = 294, L = 441;
export const S = 490, M = 539;
export const QUICK = 588, TOUGH = 637;
export const CAUGHT_QUICK = 882, CAUGHT_TOUGH = 931;
export const BED_QUICK = 980, BED_TOUGH = 1029;
export const BA_O = 1078, BA_N = 1127, BA_S = 1176, BA_M = 1225, BA_G = 1274;
export const PS_O = 1421, PS_N = 1470;
export const NH3 = 3136;
export const EAT = 3234, SPEND = 3283, BURN = 3332;
export const UN = 3381, UT = 3430, UP = 3479, UK = 3528, UC = 3577;
export const GROW = 3675;
export const CLUMP_QUICK = 3822, CLUMP_TOUGH = 3871;

// --- where a process's kept derivatives begin among a cell's; slots in the order of each definition's `fast`
export const A_TAN = 0, A_O2 = 1;
export const N_NO2 = 3, N_O2 = 4;
export const H_SS = 6, H_O2 = 7, H_TAN = 8;
export const D_SS = 9, D_NO3 = 10, D_TAN = 11;
export const S_S2 = 30, S_O2 = 31;
/** Of what films let go: the derivative to phosphorus, the share of growth that leaves, the derivative to oxygen. */
export const A_SCARCE = 12, A_SLOUGH = 13, A_STIFLED = 14, A_LYSIS = 22;
export const N_SCARCE = 15, N_SLOUGH = 16, N_STIFLED = 17, N_LYSIS = 25;
export const H_SCARCE = 18, H_SLOUGH = 19, H_STIFLED = 20, H_LYSIS = 28;
export const AIR_O2 = 180, AIR_IC = 183, AIR_ALK = 184, AIR_S2 = 186, AIR_TAN = 192;
export const BURNT_CH4 = 33, AIR_CH4 = 189, AIR_N2 = 195, DECAY_OP = 243, KILL_OP = 246;
export const GUT_EAT = 198, GUT_SPEND = 201;
export const UN_NO3 = 207, UT_TAN = 210, UP_P = 213, UK_K = 216, UC_CA = 219, UF_FE = 222;

/** Pore organics by oxygen, nitrate, sulfate, to methane, to gas, out; pore sulfide rising, by oxygen, by nitrate, with gas, out with gas. */
export const BED_O = 66, BED_N = 69, BED_S = 72, BED_M = 75, BED_G = 78, BED_LEAK = 81;
export const PS_UP = 84, PS_BY_O = 87, PS_BY_N = 90, PS_GAS = 93, PS_OUT = 96;

// --- rows of a dense block, in the order of fastBlock.ts; columns are an eighth of these
export const oxygen = 0, ammonia = 8, nitrite = 16, nitrate = 24, sulfide = 32, organics = 40, alkalinity = 48, carbon = 56;

// --- a dense block: its rows and columns, its numbers, the rows that are solved together
export const WIDTH = 8, BLOCK = 64, CORE = 6;
/** Where alkalinity's row and carbon's begin. */
export const ALK_ROW = 48, IC_ROW = 56;
/** Numbers kept of a factorised block: the core's factors, and the inverted diagonals of alkalinity and carbon. */
export const FACTORS = 38, ALK_INVERSE = 36, IC_INVERSE = 37;
