// Where the small things of a stage lie in the picture: its number tag, its air hose, how high its name stands. Pure.
import { grows, hasCone, isClosed, isSprayed } from './kinds';
import type { StageBox } from './layout';

/** Where the air hose goes down into a tank. */
export function dropX(box: StageBox): number {
  return box.kind === 'fishTank' ? box.x + box.w - 52 : box.x + box.w - 10;
}

export function tagX(box: StageBox): number {
  if (box.kind === 'fishTank') return box.x + (box.w - 42) / 2;
  if (box.kind === 'mediaBed') return box.x + (box.w - 48) / 2;
  return box.x + box.w / 2 - (box.stand === 'pit' ? 38 : 0);
}

/** @param scale of the tag against its art */
export function tagY(box: StageBox, scale: number): number {
  if (hasCone(box.kind)) return box.level + (box.floor - box.level) * (box.kind === 'radialFlowSettler' ? 0.4 : 0.5);
  if (box.kind === 'filmChannel') return box.floor + 14 * scale;
  if (grows(box.kind) || isSprayed(box.kind)) return box.floor + 4;
  if (box.kind === 'screenFilter') return box.floor + 6;
  if (box.kind === 'uvUnit') return box.floor + 12 + 10 * scale;
  if (isClosed(box.kind)) return box.floor + 22 + 10 * scale;
  if (box.stand === 'pit') return box.floor + 12;
  return box.floor - 14 - 12 * scale;
}

/** Room over a rim that is taken by what stands there, up to the name. @param reach of the crop over its bed */
export function nameAbove(box: StageBox, reach: number): number {
  if (box.kind === 'tower') return 22;
  if (grows(box.kind)) return (box.kind === 'filmChannel' ? 0 : 10) + reach;
  if (box.kind === 'degassingTank' || box.kind === 'movingBed' || box.kind === 'tricklingFilter') return 62;
  if (box.kind === 'uvUnit') return 12;
  if (isClosed(box.kind)) return 46;
  return 24;
}
