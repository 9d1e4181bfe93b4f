// What the page and the worker say to each other. Every request carries an id and gets one answer with the same id.
import type { Action, Plan } from '../season/plan';
import type { DayChunk, SeasonSummary, StageCells } from '../season/trajectory';
import type { Lesson, Problem } from '../lessons/lesson';

/** One kind of stage as the shelf and inspector need it; texts are keys into words. */
export interface CatalogueEntry {
  kind: string;
  group: 'keepFish' | 'catchSolids' | 'treatWater' | 'growPlants' | 'moveWater' | 'dosePolish';
  /** Settings a person may change while the season runs. */
  controls: ('air' | 'feed' | 'drain' | 'rinse' | 'backwash' | 'pump' | 'base' | 'lamp')[];
  airMax_L_min: number;
  cautions: string[];
}

/** Levels and stands of a design, in m above the floor (the sump stands in a pit, so its floor is negative). */
export interface DesignStage {
  id: string; kind: string;
  /** water level at its outlet */
  level_m: number;
  /** underside of the tank */
  floor_m: number;
  /** inner water depth and drawn width and height of the vessel */
  depth_m: number; width_m: number; height_m: number;
  volume_m3: number;
  /** fall from this level to the next stage's; for the pump, the lift (negative fall) */
  fall_m: number;
  retention_min: number;
}
export interface DesignCheck {
  stages: DesignStage[];
  totalVolume_m3: number;
  lift_m: number;
  problems: { stage: string; key: string; values: Record<string, number> }[];
}

/** Limits that turn a number into a mark: fine, watch, act. Computed from the species, the crop, temperature and pH. */
export interface ComfortBand { applies: 'fish' | 'roots'; variable: string; watchBelow?: number; actBelow?: number; watchAbove?: number; actAbove?: number }

export type Request =
  | { ask: 'catalogue' }
  | { ask: 'openLesson'; name: string; text: string }
  | { ask: 'checkDesign'; plan: Plan }
  | { ask: 'comfort'; plan: Plan }
  /** Runs the plan; days before `keepDays` need not be sent again (the page has them). */
  | { ask: 'run'; plan: Plan; keepDays: number; plantsWeight?: number };

export interface SeasonAnswer {
  stages: StageCells[];
  cells: number;
  variables: readonly string[];
  processNames: string[];
  initial: Float32Array;
  /** chunks from day `firstDay` on; earlier days are those of the run before */
  firstDay: number;
  days: DayChunk[];
  summary: SeasonSummary;
}

export interface Answers {
  catalogue: CatalogueEntry[];
  openLesson: { lesson: Lesson } | { problems: Problem[] };
  checkDesign: DesignCheck;
  comfort: ComfortBand[];
  run: SeasonAnswer;
}

export type ToWorker = { id: number; request: Request };
export type FromWorker = { id: number; answer: Answers[keyof Answers] } | { id: number; error: string };
export type { Action, Plan };
