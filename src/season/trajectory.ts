// What a season yields: immutable day chunks of hourly output, day by day sums, and a summary.

/** Hourly output of every cell, in this order. The first ones are the columns of the season command. */
export const VARIABLES = [
  'TAN_mgN_L',
  'NO2_mgN_L',
  'NO3_mgN_L',
  'NH3_mgN_L',
  'O2_mg_L',
  'CO2_mg_L',
  'pH',
  'alkalinity_meq_L',
  'H2S_ug_L',
  'CH4_mg_L',
  'organics_mgCOD_L',
  'solidsCoarse_mg_L',
  'solidsFine_mg_L',
  'PO4_mgP_L',
  'K_mg_L',
  'Ca_mg_L',
  'Fe_mg_L',
  'sludge_g',
  'T_C',
  'flow_m3_d',
  'level_m',
  // fish tanks (zero elsewhere)
  'number',
  'mass_g',
  'eaten_g_d',
  'welfare',
  // beds (zero elsewhere)
  'leafDry_g_m2',
  'rootHealth',
  'rootMat_g_m2',
  'cut_kg',
  // for the picture: share of the cone or floor filled with sludge 0–1, share of the filter's pores blocked 0–1,
  // solids caught in the filter or media g, gas leaving the sludge L/d, air L/min, salts dosed g/d
  'sludgeFill',
  'clog',
  'caught_g',
  'gas_L_d',
  'air_L_min',
  'dose_g_d',
  // free bacteria (index, 1 in a clean loop), magnesium, water over the rim, and the fullness 0–1 of a crop's scarcest store
  'freeBacteria',
  'Mg_mg_L',
  'spill_m3_d',
  'leafStore',
  // oxygen at the surface of the roots, under their coat; share of the roots that rots
  'rootO2_mg_L',
  'rootRot',
] as const;
export type Variable = (typeof VARIABLES)[number];

/** One stage's place among the cells. A long bed has three cells in series; "out" is its last. Pumps have none. */
export interface StageCells {
  id: string;
  kind: string;
  first: number;
  cells: number;
  volume_m3: number;
}

export type EventKind =
  | 'stocked'
  | 'planted'
  | 'harvested'
  | 'fishDied'
  | 'fed'
  | 'drained'
  | 'rinsed'
  | 'pumpOff'
  | 'pumpOn'
  | 'airSet'
  | 'baseSet'
  | 'flowSet'
  | 'salted'
  | 'ironAdded'
  | 'exchanged'
  | 'fishTaken'
  | 'powerOff'
  | 'powerOn'
  | 'sludgeFull'
  | 'filterBlocked'
  | 'spilled'
  | 'pumpDry'
  | 'toppedUp'
  | 'heaterSet'
  | 'lightSet'
  | 'lampSet'
  | 'backwashed';
/** Something that happened: at an hour since the start, to a stage, with an amount whose unit the kind implies. */
export interface SeasonEvent {
  hour: number;
  kind: EventKind;
  stage: string;
  amount: number;
  byPerson: boolean;
}

export interface DayChunk {
  day: number;
  /** [24][cells][variables]: the state at the end of hour 1…24 of this day. */
  hourly: Float32Array;
  /** [cells][processes]: what each process did in this day, in its own unit (see processNames, processUnits). */
  extents: Float64Array;
  /** Scores as they stand at the end of this day. */
  scores: Scores;
  events: SeasonEvent[];
}

export interface Scores {
  /** 0–100 = 100 × survival × mean welfare. */
  fishHealth: number;
  survival: number;
  meanWelfare: number;
  /** 0–100 = 100 × (w·plants/plants* + (1−w)·gain/gain*). */
  harvest: number;
  plants_kg: number;
  plantsIdeal_kg: number;
  gain_kg: number;
  gainIdeal_kg: number;
  stewardship: number;
  waterUsed_L: number;
  nitrogenDischarged_g: number;
  solidsDischarged_g: number;
  energy_kWh: number;
  work_h: number;
}

/** The scores by name. */
export const SCORE_NAMES = [
  'fishHealth',
  'survival',
  'meanWelfare',
  'harvest',
  'plants_kg',
  'plantsIdeal_kg',
  'gain_kg',
  'gainIdeal_kg',
  'stewardship',
  'waterUsed_L',
  'nitrogenDischarged_g',
  'solidsDischarged_g',
  'energy_kWh',
  'work_h',
] as const satisfies readonly (keyof Scores)[];

export interface LedgerLine {
  element: 'N' | 'P' | 'C' | 'S' | 'COD' | 'charge' | 'water';
  start: number;
  inflow: number;
  outflow: number;
  end: number;
  closure: number;
}

export interface SeasonSummary {
  days: number;
  scores: Scores;
  ledger: LedgerLine[];
  clipped: number;
  steps: number;
  rejections: number;
}

export interface Trajectory {
  stages: StageCells[];
  cells: number;
  variables: readonly string[];
  processNames: string[];
  /** [cells][variables] at the start of day 0. */
  initial: Float32Array;
  days: DayChunk[];
  summary: SeasonSummary;
}
