// What can be done on the page: every action of its store. Types only.
import type { FreeSize } from '../../../lessons/lesson';
import type { BaseKind } from '../../../season/plan';
import type { UnitSystem } from '../../../words/units';
import type { PaperChoice } from '../paper/sheets';
import type { PathActions } from '../path/path';
import type { Chore, Screen, Speed, TintId } from './state';

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
  /**
   * Puts in fish that the lesson offers, by their place among its offers: from the start while building, else at the next whole hour. Once
   * each.
   */
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
  /** Shows the card of the result, or puts it away to look at the loop. */
  showResult(shown: boolean): void;
  /** advances the clock by real seconds; called once a frame */
  tick(seconds: number): void;
  dismissFailure(): void;
  /** Shows a failure of the page itself, in words for a person. */
  reportFailure(words: string): void;
  setScreen(screen: Screen): void;
  choosePaper(choice: Partial<PaperChoice>): void;
  /** Has the worker play the lesson for the teacher's key, unless it is at hand. */
  workOutKey(): Promise<void>;
  setUnits(units: UnitSystem): void;
  setHints(shown: boolean): void;
  setReducedMotion(reduced: boolean): void;
}
