// What the page knows: the latest trajectory view and the page's own choices. Types only; store.ts holds the value.
import type { Answers, CatalogueEntry, ComfortBand, DesignCheck, ProcessFacts, Request, SeasonAnswer } from '../worker/messages';
import type { Lesson, Problem } from '../lessons/lesson';
import type { BaseKind, Action, Deed, Plan, StageSpec } from '../season/plan';
import type { DayChunk, Scores, SeasonSummary, StageCells } from '../season/trajectory';
import type { UnitSystem } from '../words/units';

export type LensId = 'ammonia' | 'nitrite' | 'nitrate' | 'oxygen' | 'carbonDioxide' | 'hydrogenSulfide' | 'solids' | 'pH';
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
  lens: LensId;
  selected: string | null;
  drag: Drag | null;
  /** words for the live region, newest last */
  announcement: string;
  reducedMotion: boolean;
  /** units that numbers are shown in; the model and every plan stay metric */
  units: UnitSystem;
  /** whether the next thing to do is shown */
  hints: boolean;
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
  /** Takes back the last step of building; does it again. */
  undo(): void;
  redo(): void;
  select(stageId: string | null): void;
  setLens(lens: LensId): void;
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
  setUnits(units: UnitSystem): void;
  setHints(shown: boolean): void;
  setReducedMotion(reduced: boolean): void;
}

/** Whoever answers the store's questions: the worker's client, or a stand-in in tests. */
export interface Client { ask<R extends Request>(request: R): Promise<Answers[R['ask']]> }

export type PageStore = PageState & PageActions;
export type { Action, SeasonAnswer };
