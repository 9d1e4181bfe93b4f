// The plan: what fixes a season. Plain types; the schema that guards data from outside lives in lessons.
// Units stand in the names. Same plan, same bits.

import type { PumpCurve } from '../model/hydraulics/pump';
import type { CropName, SpeciesName, StageKind } from '../catalogue/kinds';
import type { Base } from '../model/processes/dosing';

export const PLAN_FORMAT = 'loopwright.plan/2';
export const MODEL_REVISION = '1.1';

export type { StageKind };
export type BaseKind = Base;
export type SpeciesKind = SpeciesName;
export type CropKind = CropName;

export interface Climate {
  air_C: { mean: number; daySwing: number; yearSwing: number; dayOfYear: number };
  /** Daily light integral of photosynthetic light at the leaves, mol/m²/d. */
  light_mol_m2_d: number;
  dayLength_h: number;
  /** 0 = the same light every day, 1 = strongly varying. */
  weather: number;
  /** If given, pins the water temperature, °C. */
  water_C?: number;
  /** Days that stand out: a hot week, a cold night, a dark spell. */
  spells?: Spell[];
}

/** From a day on, for so many days: air warmer by so much (°C), light times so much; between two hours of the day where they are given. */
export interface Spell {
  day: number;
  days: number;
  air_C?: number;
  light?: number;
  from_h?: number;
  to_h?: number;
}

/** Composition of a water: what a person would measure. Everything not given is zero. */
export interface Composition {
  pH?: number;
  alkalinity_meq_L?: number;
  DIC_mmol_L?: number;
  O2_mg_L?: number;
  TAN_mgN_L?: number;
  NO2_mgN_L?: number;
  NO3_mgN_L?: number;
  PO4_mgP_L?: number;
  K_mg_L?: number;
  Ca_mg_L?: number;
  Mg_mg_L?: number;
  Na_mg_L?: number;
  Cl_mg_L?: number;
  SO4_mgS_L?: number;
  Fe_mg_L?: number;
  sulfide_mgS_L?: number;
  CH4_mgCOD_L?: number;
  organics_mgCOD_L?: number;
  solidsCoarse_mg_L?: number;
  solidsFine_mg_L?: number;
  solidsSuperfine_mg_L?: number;
}

export interface CropPlan {
  kind: CropKind;
  plants_m2: number;
  plantedDay: number;
  replant: boolean;
}

/** One stage of the loop. Which sizes a kind takes stands in its folder of the catalogue. */
export interface StageSpec {
  id: string;
  kind: StageKind;
  count?: number;
  volume_m3?: number;
  area_m2?: number;
  depth_m?: number;
  air_L_min?: number;
  media_m3?: number;
  outlet?: 'bottomLift' | 'surface';
  /** electrical power of a lamp, W; mesh of a screen, µm; height of a packing or tower, m */
  lamp_W?: number;
  mesh_um?: number;
  height_m?: number;
  flow_m3_h?: number;
  /** the pump's curve, in place of a flow: its head against a shut valve and its flow against none */
  curve?: PumpCurve;
  /** inner diameter of the pipe that leaves it, mm; left out: wide enough for the pump's flow */
  pipe_mm?: number;
  /** height of the tank's underside over the ground, m; left out: 5 cm of fall from stage to stage */
  stand_m?: number;
  /** a float valve keeps the pump's tank full with source water; left out: yes */
  floatValve?: boolean;
  crop?: CropPlan;
}

export interface MineralisationSide {
  id: string;
  kind: StageKind;
  volume_m3: number;
  air_L_min: number;
  takes: string[];
  returnsTo: string;
}
export interface BaseDosingSide {
  id: string;
  kind: StageKind;
  into: string;
  base: BaseKind;
  g_d: number;
  targetPH: number;
}
export type SideSpec = MineralisationSide | BaseDosingSide;

/** What stands at the side either takes what others let out, or drips base into a tank. */
export const takesSolids = (side: SideSpec): side is MineralisationSide => 'takes' in side;
export const doses = (side: SideSpec): side is BaseDosingSide => 'into' in side;

export interface Stocking {
  tank: string;
  species: SpeciesKind;
  number: number;
  mass_g: number;
  day: number;
  unit?: number;
}

/** When an action is done: once (day, hour) or every so many days from a day to a day. Hours are whole, 0–23. */
export interface When {
  day?: number;
  hour?: number;
  every_d?: number;
  from?: number;
  to?: number;
}

export type Deed =
  | { do: 'feed'; tank: string; g_d: number; meals_h?: number[] }
  | { do: 'air'; stage: string; L_min: number }
  | { do: 'pump'; on: boolean }
  | { do: 'flow'; flow_m3_h: number }
  | { do: 'drain'; stage: string }
  | { do: 'rinse'; stage: string }
  | { do: 'backwash'; stage: string }
  | { do: 'base'; g_d: number; targetPH?: number; base?: BaseKind }
  /** base thrown into a tank at once */
  | { do: 'singleDose'; stage: string; base: BaseKind; g: number }
  | { do: 'salt'; stage: string; g: number }
  | { do: 'iron'; stage: string; g: number }
  | { do: 'exchange'; stage: string; fraction: number }
  | { do: 'topUp'; stage: string; L: number }
  /** of the stage that it hangs in; left out: the pump's tank. Each stage's heater counts by itself */
  | { do: 'heater'; stage?: string; power_W: number; target_C: number }
  /** on the bed that has lamps; left out: on all beds that have none of their own */
  | { do: 'light'; stage?: string; mol_m2_d: number }
  | { do: 'setting'; stage: string; lamp_W: number }
  | { do: 'stock'; tank: string; species: SpeciesKind; number: number; mass_g: number; unit?: number }
  | { do: 'takeFish'; tank: string; number: number; unit?: number }
  | { do: 'plant'; stage: string; crop: CropKind; plants_m2: number; replant: boolean }
  | { do: 'harvest'; stage: string }
  | { do: 'power'; on: boolean };

export type Action = When & Deed;

/** A bench experiment: the stages run once-through with a pinned inflow and, if wanted, pinned conditions. */
export interface Rig {
  inflow: Composition;
  flow_m3_d: number;
  hold?: { T_C?: number; pH?: number; O2_mg_L?: number };
}

export interface Plan {
  format: typeof PLAN_FORMAT;
  model: string;
  title: string;
  seed: string;
  days: number;
  climate: Climate;
  source: Composition;
  start: { water: 'source' | Composition; biofilm: 'bare' | 'seeded' | 'mature' };
  loop: StageSpec[];
  side: SideSpec[];
  fish: Stocking[];
  actions: Action[];
  /** hours that a battery keeps half of the air going when the power fails */
  backupAir_h?: number;
  rig: Rig | null;
}
