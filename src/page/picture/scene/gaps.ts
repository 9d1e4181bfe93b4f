// The gaps of a loop: places between stages where a part can be dropped, and which of them a point means.
import type { StageBox } from '../kit/boxes';
import { lifts } from './drawingOf';
import type { StageSpec } from '../kit/terms';

/** Gap g stands before loop[g]; gap loop.length closes the loop, ahead of the fish tank. */
export interface GapBox {
  gap: number;
  x: number;
  w: number;
  top: number;
  bottom: number;
  /** stages up and down the water, on screen to the left and right */
  left: string | null;
  right: string | null;
  /** fall of the level from the left stage to the right one, cm */
  fall_cm: number | null;
}

/** Room kept free beside a wall. */
const BESIDE = 14;
/** A part is dropped into the nearest gap, if it is nearer than this. */
const REACH = 220;

/**
 * Gaps from left to right. The pump stands in the tank ahead of it, so no gap parts the two.
 * @param boxes the tanks from left to right
 */
export function gapsOf(loop: readonly StageSpec[], boxes: readonly StageBox[], width: number): GapBox[] {
  const pump = loop.findIndex((stage) => lifts(stage.kind));
  const gaps: GapBox[] = [];
  const add = (gap: number, left: StageBox | null, right: StageBox | null): void => {
    const from = left === null ? Math.max(34, (right?.x ?? 0) - 140) + BESIDE : left.x + left.w + BESIDE;
    const to = right === null ? Math.min(width - 20, from + 140) : right.x - BESIDE;
    const top = Math.min(left?.rim ?? 0, right?.rim ?? 0) - 14;
    const fall = left !== null && right !== null ? left.level_cm - right.level_cm : null;
    gaps.push({
      gap,
      x: from,
      w: Math.max(24, to - from),
      top,
      bottom: -4,
      left: left?.id ?? null,
      right: right?.id ?? null,
      fall_cm: fall,
    });
  };
  boxes.forEach((box, i) => {
    const before = i > 0 ? boxes[i - 1] : null;
    if (before === null) {
      if (pump >= 0) add(pump + 1, null, box);
    } else if (box.index === 0) add(loop.length, before, box);
    else add(box.index, before, box);
  });
  if (pump < 0) add(loop.length, boxes[boxes.length - 1] ?? null, null);
  return gaps;
}

/**
 * The gap a point means: the nearest one, measured along the picture.
 * @param x world units
 * @returns null where no gap is near
 */
export function gapNear(gaps: readonly GapBox[], x: number): number | null {
  let best: number | null = null;
  let least = REACH;
  for (const gap of gaps) {
    const off = Math.max(0, gap.x - x, x - gap.x - gap.w);
    if (off < least) {
      least = off;
      best = gap.gap;
    }
  }
  return best;
}

/** Whether a part of the shelf waits to be placed. */
export function hasUnplaced(shelf: readonly { id: string }[], loop: readonly { id: string }[]): boolean {
  for (let i = 0; i < shelf.length; i += 1) {
    let placed = false;
    for (let j = 0; j < loop.length; j += 1) placed ||= loop[j].id === shelf[i].id;
    if (!placed) return true;
  }
  return false;
}
