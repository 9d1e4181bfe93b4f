// What the page and the worker say to each other. Every request carries an id and gets one answer with the same id.
import type { Capabilities, KindSizes, StageControl, StageGroup } from '../model/stages/stageKind';
import type { Action, Plan } from '../season/plan';
import type { SeasonFault } from '../season/seasonError';
import type { DayChunk, SeasonSummary, StageCells } from '../season/trajectory';
import type { Pair, Outcome } from '../lessons/demonstration';
import type { Choice, Demonstration, Lesson, Measure } from '../lessons/lesson';
import type { MarkMet } from '../lessons/marks';
import type { OldFile } from '../lessons/oldFormats';
import type { Played } from '../lessons/playLesson';
import type { Problem } from '../lessons/problem';
import type { Settled } from '../lessons/predictions';

/** One kind of stage as the shelf and inspector need it; texts are keys into words. */
export interface CatalogueEntry extends Capabilities {
  kind: string;
  group: StageGroup;
  /** Settings a person may change while the season runs. */
  controls: readonly StageControl[];
  airMax_L_min: number;
  /** sizes that a plan may give it, with their ranges */
  sizes: KindSizes;
  cautions: readonly string[];
}

/** Levels and stands of a design, in m above the floor (the sump stands in a pit, so its floor is negative). */
export interface DesignStage {
  id: string;
  kind: string;
  /** water level at its outlet */
  level_m: number;
  /** underside of the tank */
  floor_m: number;
  /** inner water depth and drawn width and height of the vessel */
  depth_m: number;
  width_m: number;
  height_m: number;
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
export interface ComfortBand {
  applies: 'fish' | 'roots';
  variable: string;
  watchBelow?: number;
  actBelow?: number;
  watchAbove?: number;
  actAbove?: number;
}

/** Quantities of a stage's water that processes change: g a day; eq for alkalinity, g COD for organics, g dry for solids. */
export type WaterQuantity =
  'ammonia' | 'nitrite' | 'nitrate' | 'oxygen' | 'carbonDioxide' | 'sulfide' | 'alkalinity' | 'organics' | 'solids' | 'coarse' | 'fine';
/**
 * What slows a process down: it runs at half its rate where its variables sum to `half`. saturation: x / (half + x); acid: 1 / (1 + 10^(2
 * (half − pH))).
 */
export interface Limit {
  by:
    | 'ammonia'
    | 'nitrite'
    | 'oxygen'
    | 'pH'
    | 'alkalinity'
    | 'organics'
    | 'nitrogen'
    | 'phosphorus'
    | 'potassium'
    | 'calcium'
    | 'magnesium'
    | 'iron';
  variables: string[];
  half: number;
  shape: 'saturation' | 'acid';
}
/** What the page needs to tell why: effects of one unit of each process by its name, limits of some processes, limits of uptake by crop. */
export interface ProcessFacts {
  effects: Record<string, Partial<Record<WaterQuantity, number>>>;
  limits: Record<string, Limit[]>;
  crops: Record<string, Limit[]>;
  /** what one unit of each process's amount is */
  units: Record<string, string>;
}

export type Request =
  | { ask: 'catalogue' }
  | { ask: 'processes' }
  /** language: tag of the one whose texts are wanted, where the file has several. */
  | { ask: 'openLesson'; name: string; text: string; language: string }
  | { ask: 'checkDesign'; plan: Plan }
  | { ask: 'comfort'; plan: Plan }
  /** Runs the plan; days before `keepDays` need not be sent again (the page has them). */
  | { ask: 'run'; plan: Plan; keepDays: number; plantsWeight?: number }
  /**
   * What the lesson's marks ask and what the plan's season met (by the start of untilDay, else in all); its predictions settled. The order
   * is the plan's loop.
   */
  | { ask: 'judge'; plan: Plan; lesson: Lesson; untilDay?: number }
  /** How many places of a loop were changed from the one that the lesson gives. */
  | { ask: 'moves'; lesson: Pick<Lesson, 'given' | 'plan'>; built: string[] }
  /** Reads a lesson that is not to be opened. */
  | { ask: 'readLesson'; text: string; language: string }
  /** The two plans of a demonstration. */
  | { ask: 'pair'; lesson: Lesson; shown: Demonstration }
  /** One number off the seasons of two plans, and which choice right ÷ left is. */
  | { ask: 'compare'; plans: [Plan, Plan]; measure: Measure; choices: Choice[]; plantsWeight: number }
  /** Plays the lesson's reference, its mistakes and an idle player. */
  | { ask: 'play'; lesson: Lesson }
  /** The plan of one of the lesson's builds: its reference, or the mistake of that key. */
  | { ask: 'build'; lesson: Lesson; build: string };

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
  /** light of each day of the season, as the weather gives it, against the climate's usual (1) */
  sky: Float32Array;
}

export interface Answers {
  catalogue: CatalogueEntry[];
  processes: ProcessFacts;
  /** old: the file was of an older format, and what was changed in it */
  openLesson: { lesson: Lesson; old?: OldFile } | { problems: Problem[] };
  checkDesign: DesignCheck;
  comfort: ComfortBand[];
  run: SeasonAnswer;
  judge: { marks: MarkMet[]; predictions: Settled[] };
  moves: number;
  readLesson: { lesson: Lesson; old?: OldFile } | { problems: Problem[] };
  pair: Pair;
  compare: Outcome;
  play: Played[];
  build: Plan;
}

/** How a worker may end without a message of its own; an Error carries it as its message. */
export type BreakDown = 'workerStopped' | 'workerUnreadable';

export type ToWorker = { id: number; request: Request };
export type FromWorker = { id: number; answer: Answers[keyof Answers] } | { id: number; error: string; fault?: SeasonFault };
export type { Action, Plan };
