// The shapes that world and panels draw, handed on from the engine's side: types only, so that both know the store alone.
export type { Action, BaseKind, Plan, StageKind, StageSpec } from '../season/plan';
export type { EventKind, Scores, SeasonEvent } from '../season/trajectory';
export type { ComfortBand, DesignCheck, DesignStage } from '../worker/messages';
export type { Lesson } from '../lessons/lesson';
