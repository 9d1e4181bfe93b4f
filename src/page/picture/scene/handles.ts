// Handles by which a size that the lesson leaves free is pulled in the picture: where they stand, and which size a pull gives. Pure.
import type { SizeOffer } from '../../state/common/contract';
import { inSteps, sizeNow } from '../../state/build/sizing';
import type { WorldLayout } from './layout';
import type { DesignCheck, Plan } from '../kit/terms';

/** along: pulled sideways; up: pulled up and down, true to the height; stand: the same, with the whole tank on it. */
export type Pull = 'along' | 'up' | 'stand';
export interface Handle {
  offer: SizeOffer;
  pull: Pull;
  /** its middle, world units */
  x: number;
  y: number;
  /** the size it shows, metric */
  value: number;
}
/** A handle that is being pulled: how far it has come, world units, and the size that gives. */
export interface Pulled {
  handle: Handle;
  dx: number;
  dy: number;
  value: number;
}

const PULLS: Readonly<Partial<Record<SizeOffer['size'], Pull>>> = {
  stand_m: 'stand',
  volume_m3: 'along',
  area_m2: 'along',
  media_m3: 'along',
  height_m: 'up',
  depth_m: 'up',
};
const ORDER: readonly Pull[] = ['stand', 'along', 'up'];
const MOST = 2;
/** Middle of a handle from the drawn tank. */
const OFF = 22;
/** A handle over the rim stands at this share of the width, beside the name. */
const SHARE = 0.8;
/** A pull sideways of so many page pixels goes through the whole offer. */
const WHOLE_px = 240;
/** A finger that only rests moves nothing, page pixels. */
const STILL_px = 3;
/** A finger finds a handle within this distance of its middle, page pixels. */
export const REACH_px = 24;

/** The handles of all stages: one for each way to pull, two at most a stage. */
export function handlesOf(layout: WorldLayout, sizes: readonly SizeOffer[], plan: Plan, design: DesignCheck): Handle[] {
  const handles: Handle[] = [];
  for (const box of [...layout.stages, ...layout.sides]) {
    const offers = sizes.filter((offer) => offer.stage === box.id);
    const found = ORDER.flatMap((pull) =>
      offers
        .filter((offer) => PULLS[offer.size] === pull)
        .slice(0, 1)
        .map((offer) => ({ offer, pull })),
    ).slice(0, MOST);
    for (const { offer, pull } of found) {
      const floor_m = design.stages.find((stage) => stage.id === box.id)?.floor_m;
      const value = sizeNow(plan, box.id, offer.size) ?? (pull === 'stand' ? floor_m : undefined) ?? offer.from;
      const x = pull === 'along' ? box.x + box.w + OFF : box.x + box.w * (pull === 'stand' ? 0.5 : SHARE);
      const y =
        pull === 'along' ? (box.rim + box.floor) / 2 : pull === 'stand' ? Math.min(box.floor + OFF, layout.bottom - OFF) : box.rim - OFF;
      handles.push({ offer, pull, x, y, value });
    }
  }
  return handles;
}

/** The handle of a stage that a finger at this point means. @param scale page pixels of a world unit */
export function handleNear(handles: readonly Handle[], stage: string | null, x: number, y: number, scale: number): Handle | null {
  let best: Handle | null = null;
  let least = REACH_px / scale;
  for (const handle of handles) {
    if (handle.offer.stage !== stage) continue;
    const off = Math.hypot(handle.x - x, handle.y - y);
    if (off > least) continue;
    least = off;
    best = handle;
  }
  return best;
}

/**
 * What a pull gives: a height is true to the picture, other sizes go through their offer by even ratios.
 * @param dx how far the finger has come, world units
 * @param scale page pixels of a world unit
 */
export function pulledTo(handle: Handle, dx: number, dy: number, scale: number, unitsPerM: number): Pulled {
  const { offer, pull, value } = handle;
  const sideways = pull === 'along';
  if (Math.abs(sideways ? dx : dy) * scale < STILL_px) return { handle, dx: 0, dy: 0, value };
  const { from, to } = offer;
  if (sideways) {
    const share = (dx * scale) / WHOLE_px;
    const wanted = inSteps(offer, from > 0 ? value * (to / from) ** share : value + (to - from) * share);
    const most =
      (WHOLE_px / scale)
      * (from > 0 ? Math.log((dx > 0 ? to : from) / value) / Math.log(to / from) : ((dx > 0 ? to : from) - value) / (to - from));
    return { handle, dx: dx > 0 ? Math.min(dx, Math.max(0, most)) : Math.max(dx, Math.min(0, most)), dy: 0, value: wanted };
  }
  const wanted = inSteps(offer, value - dy / unitsPerM);
  return { handle, dx: 0, dy: (value - wanted) * unitsPerM, value: wanted };
}
