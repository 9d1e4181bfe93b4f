// The shapes that world and panels draw, handed on from the engine's side: types only, so that both know the store alone.
export type { Capabilities } from '../../../model/stages/stageKind';
export type { Action, BaseKind, Deed, Plan, StageKind, StageSpec } from '../../../season/plan';
export type { EventKind, Scores, SeasonEvent } from '../../../season/trajectory';
export type { CatalogueEntry, ComfortBand, DesignCheck, DesignStage, ProcessFacts } from '../../../worker/messages';
export type {
  Choice,
  Explanation,
  Goal,
  Hint as Ladder,
  Lesson,
  Measure,
  Prediction,
  SizeOffer,
  Statement,
  StockOffer,
} from '../../../lessons/lesson';
export type { GoalMet, MarkMet } from '../../../lessons/marks';
export type { Settled } from '../../../lessons/predictions';
export type { Asked, Played } from '../../../lessons/playLesson';
export type { Shown } from '../../../lessons/consequences';
export type { Problem } from '../../../lessons/problem';
export type { OldFile } from '../../../lessons/oldFormats';
export type { LessonCard } from '../../../lessons/card';
