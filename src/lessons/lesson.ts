// A lesson: a plan with gaps, the parts on the shelf, what is asked and shown, goals, the reference and the mistakes it teaches by.
import type { Plan, StageSpec, Action, SpeciesKind } from '../season/plan';
import type { Scores, Variable } from '../season/trajectory';

export const LESSON_FORMAT = 'loopwright.lesson/2';

/** Sizes a lesson may leave to the person. */
export const FREE_SIZES = [
  'volume_m3',
  'area_m2',
  'media_m3',
  'depth_m',
  'height_m',
  'stand_m',
  'air_L_min',
  'flow_m3_h',
  'lamp_W',
  'count',
] as const;
export type FreeSize = (typeof FREE_SIZES)[number];

/** A stage given another size than the lesson gives it. */
export interface Resized {
  stage: string;
  size: FreeSize;
  value: number;
}

/**
 * A way to fill the loop: the ids of stages in flow order (fixed and shelf parts), and what the person does.
 * sizes: where they differ from the lesson's; without: side stages of the lesson that this build does without;
 * biofilm: another start than the lesson's, to compare with.
 */
export interface Build {
  order: string[];
  actions: Action[];
  sizes?: Resized[];
  without?: string[];
  biofilm?: Plan['start']['biofilm'];
}

/**
 * One number read off a season. Exactly one of: `variable` at a stage (hourly, made one number by the statistic),
 * `process` at a stage (what it did a day on average, in the process's own unit), `score` (at the season's end).
 * From the start of fromDay to the start of toDay, counted from 0; toDay left out: to the end.
 */
export interface Measure {
  stage?: string;
  variable?: Variable;
  process?: string;
  score?: keyof Scores;
  statistic: 'max' | 'min' | 'mean' | 'last' | 'sum';
  fromDay: number;
  toDay?: number;
}
/** A measure and the limits it must keep. */
export interface Statement extends Measure {
  atLeast?: number;
  atMost?: number;
}
/** What a mistake must show: a measure within limits, or as a ratio to the reference's, or both. */
export interface Consequence extends Statement {
  atLeastTimes?: number;
  atMostTimes?: number;
}
export interface Mistake extends Build {
  key: string;
  title: string;
  shows: Consequence[];
}

/**
 * One of the outcomes that a prediction chooses from: the measure is atLeast or more, and below. The choices of a prediction cover all
 * numbers, once.
 */
export interface Choice {
  key: string;
  text: string;
  atLeast?: number;
  below?: number;
}
/** A mechanism that may have been at work; the evidence says whether it was. */
export interface Explanation {
  key: string;
  text: string;
  evidence: Statement;
}
/** Asked at the start of askDay (0: before the run), settled at the start of dueDay by the person's own season. */
export interface Prediction {
  key: string;
  askDay: number;
  dueDay: number;
  question: string;
  look: string;
  measure: Measure;
  choices: Choice[];
  explanations: Explanation[];
}

/** A ladder of help: something to notice, something to think of, something to do. */
export interface Hint {
  about: string;
  notice: string;
  think: string;
  do: string;
}

/** What may colour the water. */
export const TINT_NAMES = ['ammonia', 'nitrite', 'nitrate', 'oxygen', 'carbonDioxide', 'hydrogenSulfide', 'solids', 'pH'] as const;
export type TintName = (typeof TINT_NAMES)[number];

/** A moment of a demonstration and what to say or look at then. */
export interface TurningPoint {
  day: number;
  hour: number;
  say: string;
}
/** Two builds in step for a class: "reference" or a mistake's key each. The choices are bands of right ÷ left. */
export interface Demonstration {
  key: string;
  title: string;
  left: string;
  right: string;
  leftName: string;
  rightName: string;
  tint: TintName;
  look: string;
  question: string;
  measure: Measure;
  choices: Choice[];
  turningPoints: TurningPoint[];
}

/** Fish that a person may put in when they think the water is ready. */
export interface StockOffer {
  tank: string;
  species: SpeciesKind;
  number: number;
  mass_g: number;
}
/** A size that the lesson leaves to the person, within limits. */
export interface SizeOffer {
  stage: string;
  size: FreeSize;
  from: number;
  to: number;
}

/**
 * Thresholds of one mark: both scores, and whatever else the lesson's point asks for. moves: places changed from the loop as given, at
 * most.
 */
export interface MarkRule {
  fishHealth: number;
  harvest: number;
  goals?: Goal[];
  moves?: number;
}
export interface Goal extends Statement {
  text: string;
}

export interface Lesson {
  format: typeof LESSON_FORMAT;
  id: string;
  title: string;
  /** Three lines that say what to do. */
  brief: string[];
  /** What a learner can explain afterwards, in one sentence. */
  aim: string;
  /** What the lesson is about, in a few words. */
  teaches: string;
  /** Time to play it, minutes; reckoned where a file does not say (minutes.ts). */
  minutes: number;
  /** Where the effect is weak, or what this water does not show. */
  caveats: string[];
  /** Nothing to reach: a bench to build at. */
  free: boolean;
  /** Everything but the loop's free stages; loop holds the fixed stages in order. */
  plan: Plan;
  /** Parts a person may place, each once unless count says otherwise. */
  shelf: StageSpec[];
  /** The loop as it stands when the lesson opens, fixed stages and parts; left out: the fixed stages alone. */
  given?: string[];
  sizes: SizeOffer[];
  stocks: StockOffer[];
  hints: Hint[];
  predictions: Prediction[];
  demonstrations: Demonstration[];
  scoring: { plantsWeight: number; marks: MarkRule[] };
  reference: Build;
  mistakes: Mistake[];
}
