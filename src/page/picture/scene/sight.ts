// Where the picture is looked at from: all of the loop, or one stage from close by, and the way between. Pure.
import type { WorldLayout } from './layout';
import { grows } from './drawingOf';

/** How the picture lies on the page: page pixels of a world unit, and the world's x and y in the upper left corner. */
export interface View {
  scale: number;
  left: number;
  top: number;
}
/** What of the world is in view. */
export interface Frame {
  x: number;
  y: number;
  w: number;
  h: number;
}

/** Room beside a stage, over it, over the leaves of a bed, and under it, world units. */
const BESIDE = 64;
const OVER = 64;
const OVER_BED = 128;
const UNDER = 56;
/** A close look makes things at least and at most so many times as large, and is at most so many page pixels a world unit. */
const LEAST = 1.25;
const MOST = 3.2;
const MOST_SCALE = 2.6;

/** The whole loop fills the width; spare height is left to the sky. */
export function wholeView(layout: WorldLayout, width: number, height: number): View {
  const scale = width / layout.width;
  return { scale, left: 0, top: layout.bottom - height / scale };
}

/** What a close look at a stage must show. @returns null where there is no such stage */
function around(layout: WorldLayout, id: string): Frame | null {
  const shown = layout.pump?.id === id ? layout.pump.host : id;
  const box = layout.stages.find((one) => one.id === shown) ?? layout.sides.find((one) => one.id === shown);
  if (box === undefined) return null;
  const top = Math.min(box.rim, box.level) - (grows(box.kind) ? OVER_BED : OVER);
  return { x: box.x - BESIDE, y: top, w: box.w + 2 * BESIDE, h: box.floor + UNDER - top };
}

/** A close look at a stage, in the middle of the view and never past the edges of the whole. @returns null where there is no such stage */
export function closeView(layout: WorldLayout, id: string, width: number, height: number): View | null {
  const frame = around(layout, id);
  if (frame === null) return null;
  const whole = wholeView(layout, width, height);
  const fits = Math.min(width / frame.w, height / frame.h, MOST_SCALE, whole.scale * MOST);
  const scale = Math.max(fits, whole.scale * LEAST);
  const [w, h] = [width / scale, height / scale];
  const left = Math.max(0, Math.min(layout.width - w, frame.x + frame.w / 2 - w / 2));
  return { scale, left, top: Math.max(whole.top, Math.min(layout.bottom - h, frame.y + frame.h / 2 - h / 2)) };
}

/** What of the world a view shows. */
export function frameOf(view: View, width: number, height: number): Frame {
  return { x: view.left, y: view.top, w: width / view.scale, h: height / view.scale };
}

/**
 * A view on the way from one to another; the point that both hold still stays where it is.
 * @param t 0 the first, 1 the second
 */
export function viewBetween(from: View, to: View, t: number): View {
  const eased = t * t * (3 - 2 * t);
  const scale = from.scale * (to.scale / from.scale) ** eased;
  // corners move in proportion to the width shown, so that the way is straight
  const [a, b] = [1 / from.scale, 1 / to.scale];
  const share = Math.abs(a - b) < 1e-9 ? eased : (a - 1 / scale) / (a - b);
  return { scale, left: from.left + (to.left - from.left) * share, top: from.top + (to.top - from.top) * share };
}
