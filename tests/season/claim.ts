// A claim: what a lesson says of a loop, as a pair of plans and one shown quantity.
import type { Plan } from '../../src/season/plan';
import type { Trajectory } from '../../src/season/trajectory';

export interface Claim {
  id: string;
  statement: string;
  right: Plan;
  wrong: Plan;
  /** the shown quantity of one season */
  shown: (trajectory: Trajectory) => number;
  /** wrong over right is at least this (where below 1: at most this) */
  ratio: number;
  /** parameters behind it, whose calibrated or assumed values are halved and doubled in the wide sweep */
  behind: readonly RegExp[];
}
