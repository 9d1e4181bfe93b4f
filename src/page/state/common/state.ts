// What the page knows: the latest trajectory view and the page's own choices. Types only; store.ts holds the value.
import type { Answers, CatalogueEntry, ComfortBand, DesignCheck, ProcessFacts, Request, SeasonAnswer } from '../../../worker/messages';
import type { FreeSize, TintName, Lesson } from '../../../lessons/lesson';
import type { Problem } from '../../../lessons/problem';
import type { MarkMet } from '../../../lessons/marks';
import type { Settled } from '../../../lessons/predictions';
import type { BaseKind, Action, Deed, Plan, StageSpec } from '../../../season/plan';
import type { DayChunk, Scores, SeasonSummary, StageCells } from '../../../season/trajectory';
import type { KeptAnswers } from '../path/keptAnswers';
import type { UnitSystem } from '../../../words/units';
import type { Tint } from './tints';
import type { PathActions, PathState } from '../path/path';
import type { PaperState } from '../paper/paper';

export type TintId = TintName;
export type Speed = 'paused' | 'hours6' | 'day1' | 'days5';
export type Mode = 'build' | 'run' | 'result';
/** What fills the page: the loop with its panels, or something opened over it. */
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
export interface Drag { stage: StageSpec; from: 'shelf' | 'loop'; x: number; y: number; overGap: number | null }

/** What the person did while the season ran. every_d null: once; n > 0: a chore from then on, every n days; 0: that chore ends. */
export interface Act { hour: number; deed: Deed; every_d: number | null }

/** Chores a person may set to be done every so many days. */
export type Chore = 'drain' | 'rinse' | 'backwash';

/** One step of building: the design before it (or after it, once taken back), and in words what was done. */
export interface Step { plan: Plan; what: string }

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

/** A question that is open on the page: a prediction to make, or one come due to explain. resume: the speed to go on at. */
export interface Question { key: string; part: 'ask' | 'explain'; resume: Speed }

/** What the lesson asks, answered by the whole season of the plan in hand; never shown before it is lived. */
export interface Judged { marks: MarkMet[]; predictions: Settled[] }

export interface PageState {
  lesson: Lesson | null;
  problems: Problem[];
  /** what the worker or the page could not do, in words for a person */
  failure: string | null;
  catalogue: CatalogueEntry[];
  /** what processes do and what slows them, for telling why; null until the worker has answered */
  facts: ProcessFacts | null;
  mode: Mode;
  screen: Screen;
  /** the path of lessons, which one is open, and how far the learner came */
  path: PathState;
  /** what is chosen to go on paper, and the key as worked out for it */
  paper: PaperState;
  /** the design in hand: plan.loop is the order on screen; actions the log so far */
  plan: Plan | null;
  /** the design as it stood when the season began; null while building */
  built: Plan | null;
  /** what the person did since the season began, oldest first */
  acts: Act[];
  /** steps of building that can be taken back, and done again; newest last */
  undoable: readonly Step[];
  redoable: readonly Step[];
  design: DesignCheck | null;
  comfort: ComfortBand[];
  season: SeasonView | null;
  /** every course of this season; the present one's entry is brought up to date when it is left */
  branches: Branch[];
  present: number;
  /** the branch shown as a ghost beside the present one */
  compared: number | null;
  /** a season is being computed */
  busy: boolean;
  /** hours since the start that the page shows, fractional */
  now_h: number;
  /** hours lived so far; the future beyond is not shown */
  lived_h: number;
  speed: Speed;
  tint: TintId;
  /** another scale of the tint than its usual one, shared by loops shown side by side; null: the usual one */
  scale: Tint | null;
  /** stages whose name and number are shown in the picture; null: all */
  told: readonly string[] | null;
  selected: string | null;
  /** whether the picture shows the selected stage from close by */
  closer: boolean;
  drag: Drag | null;
  /** words for the live region, newest last */
  announcement: string;
  reducedMotion: boolean;
  /** units that numbers are shown in; the model and every plan stay metric */
  units: UnitSystem;
  /** whether the next thing to do is shown */
  hints: boolean;
  /** whether predictions are asked for at all; quiet: no more in this season */
  predicting: boolean;
  quiet: boolean;
  /** predictions of this season, in the order they were answered */
  answers: readonly Answer[];
  question: Question | null;
  /** predictions of earlier seasons that this device has kept */
  earlier: KeptAnswers;
  /** null until the worker has answered */
  judged: Judged | null;
  /** the marks by what was lived by the start of a day; asked for where a lesson has goals of its own */
  soFar: { day: number; marks: MarkMet[] } | null;
  /** changes made to the loop as given, in a lesson that counts them */
  moved: number | null;
}

export interface PageActions extends PathActions {
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
  /** Takes back the last step of building; does it again. */
  undo(): void;
  redo(): void;
  select(stageId: string | null): void;
  /** Shows the selected stage from close by, or the whole loop again. */
  lookCloser(closer: boolean): void;
  setTint(tint: TintId): void;
  setFeed(g_d: number): void;
  setAir(stageId: string, L_min: number): void;
  setBase(base: BaseKind, g_d: number, targetPH: number): void;
  setLamp(stageId: string, lamp_W: number): void;
  /** the loop's heater: power at most, W, and the temperature it keeps, °C */
  setHeater(power_W: number, target_C: number): void;
  /** daily light at the leaves in place of the climate's, mol/m²/d */
  setLight(mol_m2_d: number): void;
  /** Does a chore once, at the next whole hour. */
  doChore(stageId: string, chore: Chore): void;
  /** Puts in the fish that the lesson offers, by their place among its offers: from the start while building, else at the next whole hour. Each offer once. */
  stock(offer: number): void;
  /** Gives a stage a size that the lesson leaves free, while building; null lets a stand follow the falls again. */
  setSize(stageId: string, size: FreeSize, value: number | null): void;
  /** Commits to a choice of the open question, with a reason: the key of an explanation, or own words. */
  predict(choice: string, reason: string | null, words: string): void;
  /** Leaves the open question unanswered and goes on. */
  skipQuestion(): void;
  /** Leaves it, and asks no more in this season. */
  askNoMore(): void;
  /** Chooses what explains the outcome of the open question. */
  explain(explanation: string): void;
  /** Goes on after an outcome was explained, or without. */
  goOn(): void;
  setPredicting(asked: boolean): void;
  setPump(on: boolean): void;
  /** Begins a chore done every so many days, or ends it (0). */
  setRoutine(stageId: string, chore: Chore, every_d: number): void;
  run(): Promise<void>;
  /** Goes on in another branch; the one left becomes the ghost. */
  switchTo(branch: number): Promise<void>;
  /** Shows another branch as a ghost beside the present one, or none. */
  compareWith(branch: number | null): Promise<void>;
  setSpeed(speed: Speed): void;
  stepDay(): void;
  scrub(hour: number): void;
  backToBuild(): void;
  /** advances the clock by real seconds; called once a frame */
  tick(seconds: number): void;
  dismissFailure(): void;
  /** Shows a failure of the page itself, in words for a person. */
  reportFailure(words: string): void;
  setScreen(screen: Screen): void;
  choosePaper(choice: Partial<Pick<PaperState, 'sheet' | 'size' | 'version'>>): void;
  /** Has the worker play the lesson for the teacher's key, unless it is at hand. */
  workOutKey(): Promise<void>;
  setUnits(units: UnitSystem): void;
  setHints(shown: boolean): void;
  setReducedMotion(reduced: boolean): void;
}

/** Whoever answers the store's questions: the worker's client, or a stand-in in tests. */
export interface Client { ask<R extends Request>(request: R): Promise<Answers[R['ask']]> }

export type PageStore = PageState & PageActions;
export type { Action, SeasonAnswer };
