// All that a season carries from day to day: copied whole into a checkpoint, so that a restart is bit-identical.
import type { BaseKind, CropKind, SpeciesKind } from './plan';

export interface FishState {
  tank: string;
  /** one of the tank's identical units from 1, or 0 for all alike */
  unit: number;
  species: SpeciesKind;
  cell: number;
  /** g of this group; the groups of a tank make up its fish */
  mass: number;
  number: number;
  stocked: number;
  /** g put in, g taken out alive, and what they would have gained with nothing limiting */
  stockedMass: number;
  takenMass: number;
  takenNumber: number;
  idealMass: number;
  idealTaken: number;
  /** sums over hours: welfare × number, number */
  welfareHours: number;
  hours: number;
  /** day of the last stocking */
  since: number;
  welfareNow: number;
  eatenToday: number;
  eatenYesterday: number;
}
export interface BedState {
  stage: string;
  crop: CropKind;
  first: number;
  cells: number;
  plants: number;
  replant: boolean;
  /** g dry: what the bed would bear with every water factor at 1, now and cut so far; g dry cut from the real one */
  ideal: number;
  idealCut: number;
  cut: number;
  planted: number;
}
export interface FeedState {
  tank: string;
  g_d: number;
  meals_h: number[];
}

export interface RunState {
  day: number;
  y: Float64Array;
  h: Float64Array;
  /** conditional constants, whose ionic strength is found from the ones before */
  constants: Float64Array;
  /** first accepted step of each segment, by the hour it began */
  firstSteps: Float64Array;
  T_C: number;
  air: Record<string, number>;
  /** lamp power by stage, W a unit */
  lamps: Record<string, number>;
  pumpOn: boolean;
  powerOn: boolean;
  /** hour since the start at which the power last failed */
  powerOffAt: number;
  /** m³/d that a person set */
  flow_m3_d: number;
  /** m³ of water in each cell; the float valve; whether the pump draws air; how the circuit runs now */
  volumes: Float64Array;
  floatValve: boolean;
  dry: boolean;
  /** its tank was emptied since the pump was last looked at */
  drewAir: boolean;
  /** what the circuit last settled for */
  settledFor: string;
  run: { flow_m3_d: number; level_m: number[]; arriving_m3_d: number[]; spill_m3_d: number[]; power_W: number };
  /** heaters by the stage that each hangs in; '' for the one of the pump's tank */
  heaters: Record<string, { power_W: number; target_C: number }>;
  /**
   * daily light that a person set in place of the climate's, mol/m²/d, on all beds; below 0: the climate's; and by the bed that has lamps
   * of its own
   */
  light: number;
  lights: Record<string, number>;
  /** kg of water that went as vapour since midnight */
  evaporated: number;
  feeds: FeedState[];
  base: {
    kind: BaseKind;
    g_d: number;
    targetPH: number;
    level: number;
    /** day at which the level last followed */
    at: number;
  };
  fish: FishState[];
  beds: BedState[];
  /** gas that left each cell's bed in the last segment, L/d */
  gas: Float64Array;
  /** extents of the whole season so far, summed over cells */
  extents: Float64Array;
  /** amounts put in and taken out by hand, per component; held oxygen */
  put: Float64Array;
  taken: Float64Array;
  held: number;
  clipped: Float64Array;
  water: { put: number; taken: number };
  waterUsed: number;
  discharged: { nitrogen: number; solids: number };
  energy_kWh: number;
  work_h: number;
  steps: number;
  rejections: number;
  warned: string[];
}

/** A deep copy; typed arrays are copied, not shared. */
export function copyState(state: RunState): RunState {
  return copy(state) as RunState;
}

function copy(value: unknown): unknown {
  if (value instanceof Float64Array) return value.slice();
  if (Array.isArray(value)) return value.map(copy);
  if (value !== null && typeof value === 'object')
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, copy(inner)]));
  return value;
}
