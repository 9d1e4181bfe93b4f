// Heights of vessels whose water is not where a plain tank has it: hulls that close over it, and bars that spray it over packing. Pure.
import type { StageBox } from './boxes';

/** How far under its rim the bar of a sprayed stage lies. */
export const BAR_UNDER_RIM = 16;
/** The bar of a sprayed stage never stands closer to its basin than this. */
const LEAST_SPRAY = 130;
/** A basin under a sprayed stage stands this high over the ground, if the fall allows it. */
const LEAST_STAND = 22;
/** Depth of the basin under a sprayed stage, and of the water in it. */
export const BASIN = 34;
export const BASIN_WATER = 20;
/** A hull's top stands at least this high over the level its water comes in at. */
const HULL_OVER = 26;
/** A floor deeper than this under the ground lies in a pit. */
export const PIT = 12;

/** A sprayed stage hangs under the level its water comes in at. @param drop the fall that it may use, world units */
export function sprayed(box: StageBox, drop: number): void {
  box.rim = box.level - BAR_UNDER_RIM;
  box.floor = Math.max(box.level + LEAST_SPRAY, Math.min(box.level + drop + BASIN_WATER, -LEAST_STAND));
  box.level = box.floor - BASIN_WATER;
  box.stand = box.floor > PIT ? 'pit' : 'block';
}

/** A hull closes over its water. */
export function closedOver(box: StageBox): void {
  box.rim = Math.min(box.rim, box.level - HULL_OVER);
}
