// What the page knows: the latest trajectory view and the page's own choices. Types only; store.ts holds the value.
import type { Answers, CatalogueEntry, ComfortBand, DesignCheck, Request, SeasonAnswer } from '../worker/messages';
import type { Lesson, Problem } from '../lessons/lesson';
import type { BaseKind, Action, Deed, Plan, StageSpec } from '../season/plan';
import type { DayChunk, SeasonSummary, StageCells } from '../season/trajectory';

export type LensId = 'ammonia' | 'nitrite' | 'nitrate' | 'oxygen' | 'carbonDioxide' | 'hydrogenSulfide' | 'solids' | 'pH';
export type Speed = 'paused' | 'hours6' | 'day1' | 'days5';
export type Mode = 'build' | 'run' | 'result';
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
}

/** A part in the hand: from the shelf, or lifted out of the loop. Screen coordinates, CSS pixels. */
export interface Drag { stage: StageSpec; from: 'shelf' | 'loop'; x: number; y: number; overGap: number | null }

/** What the person did while the season ran. every_d null: once; n > 0: a chore from then on, every n days; 0: that chore ends. */
export interface Act { hour: number; deed: Deed; every_d: number | null }

/** Chores a person may set to be done every so many days. */
export type Chore = 'drain' | 'rinse';

export interface PageState {
  lesson: Lesson | null;
  problems: Problem[];
  /** what the worker or the page could not do, in words for a person */
  failure: string | null;
  catalogue: CatalogueEntry[];
  mode: Mode;
  /** the design in hand: plan.loop is the order on screen; actions the log so far */
  plan: Plan | null;
  /** the design as it stood when the season began; null while building */
  built: Plan | null;
  /** what the person did since the season began, oldest first */
  acts: Act[];
  design: DesignCheck | null;
  comfort: ComfortBand[];
  season: SeasonView | null;
  /** a season is being computed */
  busy: boolean;
  /** hours since the start that the page shows, fractional */
  now_h: number;
  /** hours lived so far; the future beyond is not shown */
  lived_h: number;
  speed: Speed;
  lens: LensId;
  selected: string | null;
  drag: Drag | null;
  /** words for the live region, newest last */
  announcement: string;
  reducedMotion: boolean;
}

export interface PageActions {
  openLesson(name: string, text: string): Promise<void>;
  /** Gaps are numbered 0…loop.length: gap g stands before loop[g]; gap 0 is not offered (the loop begins at the fish tank). */
  place(stageId: string, gap: number): void;
  remove(stageId: string): void;
  /** Moves a placed stage one place along the loop (−1 towards the fish tank). */
  shift(stageId: string, by: -1 | 1): void;
  dragStart(stageId: string, x: number, y: number): void;
  dragMove(x: number, y: number, overGap: number | null): void;
  /**
   * Lets go of the part. drop true over a gap places it there; drop true over no gap takes a part that was lifted out of
   * the loop back to the shelf; drop false leaves everything as it was. A lifted part stays in plan.loop until then.
   */
  dragEnd(drop: boolean): void;
  select(stageId: string | null): void;
  setLens(lens: LensId): void;
  setFeed(g_d: number): void;
  setAir(stageId: string, L_min: number): void;
  setBase(base: BaseKind, g_d: number, targetPH: number): void;
  drain(stageId: string): void;
  rinse(stageId: string): void;
  setPump(on: boolean): void;
  /** Begins a chore done every so many days, or ends it (0). */
  setRoutine(stageId: string, chore: Chore, every_d: number): void;
  run(): Promise<void>;
  setSpeed(speed: Speed): void;
  stepDay(): void;
  scrub(hour: number): void;
  backToBuild(): void;
  /** advances the clock by real seconds; called once a frame */
  tick(seconds: number): void;
  dismissFailure(): void;
  /** Shows a failure of the page itself, in words for a person. */
  reportFailure(words: string): void;
  setReducedMotion(reduced: boolean): void;
}

/** Whoever answers the store's questions: the worker's client, or a stand-in in tests. */
export interface Client { ask<R extends Request>(request: R): Promise<Answers[R['ask']]> }

export type PageStore = PageState & PageActions;
export type { Action, SeasonAnswer };
