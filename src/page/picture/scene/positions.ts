// Where the small things of a stage lie in the picture: its number tag, its air hose, how high its name stands. Pure.
import { WALL, type SideBox, type StageBox } from '../kit/boxes';
import { drawingOf, grows } from './drawingOf';

/** Where the air hose goes down into a tank. */
export function dropX(box: StageBox): number {
  return box.x + box.w - 10 - (drawingOf(box.kind).fitting ?? 0);
}

export function tagX(box: StageBox): number {
  return box.x + (box.w - (drawingOf(box.kind).fitting ?? 0)) / 2 - (box.stand === 'pit' ? 38 : 0);
}

/** @param scale of the tag against its art */
export function tagY(box: StageBox, scale: number): number {
  const drawing = drawingOf(box.kind);
  if (drawing.tagY !== undefined) return drawing.tagY(box, scale);
  if (drawing.on === 'legs') return box.level + (box.floor - box.level) * 0.5;
  if (grows(box.kind) || drawing.inlet === 'bar') return box.floor + 4;
  if (drawing.inlet === 'fitting') return box.floor + 22 + 10 * scale;
  if (box.stand === 'pit') return box.floor + 12;
  return box.floor - 14 - 12 * scale;
}

/** Where a large number stands that is to hide nothing: in the ground under its tank, beside the close look at roots. */
function soilX(box: StageBox): number {
  return box.x + box.w * (grows(box.kind) ? 0.8 : 0.5);
}

/** @param scale of the tag against its art */
export function soilY(scale: number): number {
  return 8 + 22 * scale;
}

/** A number tag of a size, by its middle. */
export interface TagSpot {
  x: number;
  y: number;
  half: number;
}

/**
 * Heights of tags such that none lies over another: one that would steps over or under what is in its way, the shorter way.
 * @param high height of a tag
 */
export function steppedTags(spots: readonly TagSpot[], high: number, bottom: number): number[] {
  const ys: number[] = [];
  spots.forEach((spot, i) => {
    const near = spots
      .slice(0, i)
      .map((other, j) => ({ ...other, y: ys[j] }))
      .filter((other) => Math.abs(other.x - spot.x) < other.half + spot.half);
    const free = (y: number): boolean => near.every((other) => Math.abs(other.y - y) >= high - 0.001);
    const ways = [spot.y, ...near.flatMap(({ y }) => [y - high, y + high])].filter((y) => free(y) && y + high / 2 <= bottom);
    ys.push(ways.reduce((best, y) => (Math.abs(y - spot.y) < Math.abs(best - spot.y) ? y : best), ways[0] ?? spot.y));
  });
  return ys;
}

/** Something of a width in a row: a tag that may give way, or what stands fast. */
export interface InRow {
  x: number;
  half: number;
  fast: boolean;
}

/** Middles of the things of a row, moved apart so that none lies over another; what stands fast stays. */
export function spread(row: readonly InRow[], gap: number): number[] {
  const order = row.map((_, index) => index).sort((a, b) => row[a].x - row[b].x);
  const xs = row.map((one) => one.x);
  const least = (a: number, b: number): number => row[a].half + row[b].half + gap;
  for (let i = order.length - 2; i >= 0; i -= 1)
    if (!row[order[i]].fast) xs[order[i]] = Math.min(xs[order[i]], xs[order[i + 1]] - least(order[i], order[i + 1]));
  for (let i = 1; i < order.length; i += 1)
    if (!row[order[i]].fast) xs[order[i]] = Math.max(xs[order[i]], xs[order[i - 1]] + least(order[i - 1], order[i]));
  return xs;
}

/** Between two numbers in the ground, world units. */
const SOIL_GAP = 8;

/**
 * Where the numbers of stages stand in the ground, beside the close look at roots and the pits.
 * @param named the stages that are numbered there
 * @param roots what the close look at roots takes of the ground
 * @param halfOf half the width of a number of a kind
 * @returns x by the stage's id
 */
export function soilRow(
  stages: readonly StageBox[],
  named: readonly StageBox[],
  roots: readonly { x: number; half: number }[],
  halfOf: (kind: string) => number,
): Map<string, number> {
  const fast = [
    { x: 0, half: 0, fast: true },
    ...stages.filter((box) => box.stand === 'pit').map((box) => ({ x: box.x + box.w / 2, half: box.w / 2 + WALL, fast: true })),
    ...roots.map((span) => ({ ...span, fast: true })),
  ];
  const xs = spread([...named.map((box) => ({ x: soilX(box), half: halfOf(box.kind), fast: false })), ...fast], SOIL_GAP);
  return new Map(named.map((box, index) => [box.id, xs[index]]));
}

/** Room over a rim that is taken by what stands there, up to the name. @param reach of the crop over its bed */
export function nameAbove(box: StageBox, reach: number): number {
  const { over, inlet, lives } = drawingOf(box.kind);
  return (over ?? (inlet === 'fitting' ? 46 : 24)) + (lives === 'plants' ? reach : 0);
}

/** Half the width of the small table a dosing tank stands on, and its height under the tank. */
const HALF_TABLE = 52;
const UNDER_TANK = 40;

/** What a tank under the ground takes. */
export function pitOf(box: { x: number; w: number; rim: number; floor: number }): { x: number; y: number; w: number; h: number } {
  return { x: box.x - 9, y: box.rim, w: box.w + 18, h: box.floor + 9 - box.rim };
}

/** What a dosing tank and its table take over their host. */
export function tableOf(box: SideBox): { x: number; y: number; w: number; h: number } {
  return { x: box.x + box.w / 2 - HALF_TABLE, y: box.rim, w: 2 * HALF_TABLE, h: box.floor + UNDER_TANK - box.rim };
}
