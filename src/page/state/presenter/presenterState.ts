// What stands before a class: the demonstrations there are, the one shown, its step, the votes, the clock of both loops. Types only.
import type { StoreApi } from 'zustand/vanilla';
import type { Outcome } from '../../../lessons/demonstration';
import type { Demonstration, Lesson } from '../../../lessons/lesson';
import type { Plan } from '../../../season/plan';
import type { Figure } from './pairFigures';
import type { Step } from './presenterSteps';
import type { Tint } from '../common/tints';
import type { PageStore } from '../common/page';
import type { SeasonView, TintId } from '../common/state';

/** Where demonstrations are found: one lesson file, read when it is asked for. */
export interface LessonText {
  name: string;
  read(): Promise<string>;
}

/** What is asked and told; nothing of where its loops come from. */
export type ShownDemonstration = Omit<Demonstration, 'left' | 'right' | 'tint'> & { tint: TintId };

export interface Shown {
  /** id of the lesson it is prepared in; null for branches of the season at hand */
  lesson: string | null;
  /** what it is a demonstration of: a lesson's title, or the season at hand */
  from: string;
  demonstration: ShownDemonstration;
  plans: readonly [Plan, Plan];
  seasons: readonly [SeasonView, SeasonView];
  steps: readonly Step[];
  figures: readonly [Figure, Figure];
  scale: Tint;
  days: number;
  plantsWeight: number;
}

export interface PresenterState {
  /** lessons with demonstrations, in the order of their files; null until somebody asks for them */
  lessons: readonly Lesson[] | null;
  reading: boolean;
  /** a demonstration is being worked out */
  busy: boolean;
  failure: string | null;
  /** null: the list to choose from */
  shown: Shown | null;
  step: number;
  /** hands counted for each choice */
  votes: readonly number[];
  /** null until the worker has answered */
  outcome: Outcome | null;
  now_h: number;
  /** the hour that the clock hurries to; null: it does not */
  toward: { hour: number; perSecond: number } | null;
  playing: boolean;
  announcement: string;
}

export interface PresenterActions {
  /** Reads the lessons for their demonstrations, once. */
  readAll(): Promise<void>;
  show(lessonId: string, key: string): Promise<void>;
  /** Two branches of the season at hand, side by side. */
  showBranches(left: number, right: number): Promise<void>;
  /** The next step, and after the last the next demonstration. */
  forth(): Promise<void>;
  back(): void;
  goTo(step: number): void;
  /** Adds hands to a choice, or takes some away. */
  vote(choice: number, by: number): void;
  setVotes(choice: number, n: number): void;
  play(on: boolean): void;
  /** Colours both waters by the next quantity, or the one before. */
  turnTint(by: 1 | -1): void;
  /** Moves the clock by whole days. */
  nudge(days: number): void;
  /** Back to the list. */
  choose(): void;
  /** advances the clock by real seconds; called once a frame */
  tick(seconds: number): void;
}

export type PresenterStore = PresenterState & PresenterActions;
/** The presenter's store, and a page of its own for each of the two loops, which the pictures draw. */
export interface Presenter {
  store: StoreApi<PresenterStore>;
  sides: readonly [StoreApi<PageStore>, StoreApi<PageStore>];
}
