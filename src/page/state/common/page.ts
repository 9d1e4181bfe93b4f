// What the page knows, in slices: the game by its mode, how it is looked at, what the person prefers, the path, the paper. Types only.
import type { Problem } from '../../../lessons/problem';
import type { CatalogueEntry, ProcessFacts } from '../../../worker/messages';
import type { UnitSystem } from '../../../words/units';
import type { Build } from '../build/build';
import type { PaperState } from '../paper/sheets';
import type { KeptAnswers } from '../path/keptAnswers';
import type { PathState } from '../path/path';
import type { ClassLoop } from '../presenter/classLoop';
import type { Lived } from '../run/lived';
import type { PageActions } from './actions';
import type { Screen, TintId } from './state';

/** One member a mode, each with what there is in that mode and nothing else. */
export type Game = { mode: 'none' } | Build | Lived | ClassLoop;
/** A game with a lesson open. */
export type Opened = Build | Lived;

/** How the loop is looked at. */
export interface View {
  tint: TintId;
  selected: string | null;
  /** whether the picture shows the selected stage from close by */
  closer: boolean;
}

/** What a person prefers, in every lesson. */
export interface Preferences {
  /** units that numbers are shown in; the model and every plan stay metric */
  units: UnitSystem;
  /** whether the next thing to do is shown */
  hints: boolean;
  /** whether predictions are asked for at all */
  predicting: boolean;
  reducedMotion: boolean;
}

/** What the worker tells once: the kinds of stage, what processes do and what slows them. */
export interface Known {
  catalogue: CatalogueEntry[];
  facts: ProcessFacts;
}

export interface PageState {
  game: Game;
  view: View;
  preferences: Preferences;
  screen: Screen;
  /** the path of lessons, which one is open, and how far the learner came */
  path: PathState;
  /** what is chosen to go on paper, and the key as worked out for it */
  paper: PaperState;
  /** predictions of earlier seasons that this device has kept */
  earlier: KeptAnswers;
  /** null until the worker has answered */
  known: Known | null;
  /** what is wrong with a lesson that was to be opened */
  problems: Problem[];
  /** what the worker or the page could not do, in words for a person */
  failure: string | null;
  /** words for the live region, newest last */
  announcement: string;
}

export type PageStore = PageState & PageActions;
