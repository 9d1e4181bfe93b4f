// The terms of the page's state that every part of it shares: seasons as the page holds them, acts, branches, answers and questions. Types
// only.
import type { Answers, Request } from '../../../worker/messages';
import type { TintName } from '../../../lessons/lesson';
import type { MarkMet } from '../../../lessons/marks';
import type { Settled } from '../../../lessons/predictions';
import type { Deed, Plan, StageSpec } from '../../../season/plan';
import type { DayChunk, Scores, SeasonSummary, StageCells } from '../../../season/trajectory';

export type TintId = TintName;
export type Speed = 'paused' | 'hours6' | 'day1' | 'days5';
/**
 * What fills the page: the loop with its panels, or something opened over it. What was chosen in each outlives it, so it stands in slices
 * of its own.
 */
export type Screen = 'loop' | 'lessons' | 'presenter' | 'paper';
export type Mark = 'fine' | 'watch' | 'act';

/** A trajectory as the page holds it; columns are looked up by name through `column`. */
export interface SeasonView {
  stages: StageCells[];
  cells: number;
  variables: readonly string[];
  /** variable name → index */
  column: Readonly<Record<string, number>>;
  processNames: string[];
  initial: Float32Array;
  days: DayChunk[];
  summary: SeasonSummary;
  /** light of each day against the climate's usual (1), as the weather gives it */
  sky: Float32Array;
}

/** A part in the hand: from the shelf, or lifted out of the loop. Screen coordinates, CSS pixels. */
export interface Drag {
  stage: StageSpec;
  from: 'shelf' | 'loop';
  x: number;
  y: number;
  overGap: number | null;
}

/** What the person did while the season ran. every_d null: once; n > 0: a chore from then on, every n days; 0: that chore ends. */
export interface Act {
  hour: number;
  deed: Deed;
  every_d: number | null;
}

/** Chores a person may set to be done every so many days. */
export type Chore = 'drain' | 'rinse' | 'backwash';

/** One step of building: the design before it (or after it, once taken back), and in words what was done. */
export interface Step {
  plan: Plan;
  what: string;
}

/** One course of a season: what was done in it and how far it was lived. Those of one season share their past up to where they split. */
export interface Branch {
  id: number;
  /** the branch it was opened from, and the hour at which */
  from: number | null;
  split_h: number;
  acts: Act[];
  lived_h: number;
  /** scores where it was left */
  scores: Scores | null;
  /** full output, of the compared branch alone (the present one's is the page's own) */
  season: SeasonView | null;
}

/** What a person said to one prediction of a season, and what came of it. */
export interface Answer {
  key: string;
  /** key of the choice; null: skipped */
  choice: string | null;
  /** key of the explanation given as a reason beforehand; null: in their own words, or none */
  reason: string | null;
  words: string;
  /** what the season measured, once it was lived to the due day; it stays as it is whatever is done afterwards */
  settled: Settled | null;
  /** key of the explanation chosen afterwards; null: went on without one; undefined: not asked yet */
  explained?: string | null;
}

/** A prediction to make before the season begins; it begins once that is made or left. */
export interface QuestionBefore {
  part: 'ask';
  key: string;
}

/** A question that stops the season's clock: a prediction to make, or one come due to explain. resume: the speed to go on at. */
export type Question = { part: 'ask'; key: string; resume: Speed } | { part: 'explain'; key: string; resume: Speed };

/** What the lesson asks, answered by the whole season of the plan in hand; never shown before it is lived. */
export interface Judged {
  marks: MarkMet[];
  predictions: Settled[];
}

/** Whoever answers the store's questions: the worker's client, or a stand-in in tests. */
export interface Client {
  ask<R extends Request>(request: R): Promise<Answers[R['ask']]>;
}
