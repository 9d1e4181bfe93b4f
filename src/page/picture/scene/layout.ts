// Where everything of a loop stands in the picture: heights true to the design's levels, widths fitted to the view.
// World units; the ground is y = 0, up is negative.
import { gapsOf, type GapBox } from './gaps';
import { type PumpBox, type SideBox, type Stand, type StageBox, WALL } from '../kit/boxes';
import { PIT } from '../kit/shapes';
import { drawingOf, lifts, sideDrawingOf } from './drawingOf';
import { pipesOf, returnPipe, sidePipes, type PipeRun } from '../water/plumbing';
import type { DesignCheck, DesignStage, SideSpec, StageSpec } from '../kit/terms';

/** Height of a metre in a low view, and how much taller it may stand in a high one. */
const LEAST_UNITS_PER_M = 200;
const MOST_STRETCH = 1.45;
/** A settler's valve needs this room over the ground; its cone is drawn that much shorter where it stands low. */
const VALVE_ROOM = 34;
/** The basin of a sprayed stage stands this much over the next level. */
const BASIN_OVER_NEXT_m = 0.1;
/** What a rim stands over its water at least, as the hydraulics take it. */
const LEAST_FREEBOARD_m = 0.05;
export interface WorldLayout {
  /** height of a metre */
  unitsPerM: number;
  width: number;
  /** highest and lowest y the picture must show */
  top: number;
  bottom: number;
  /** height of the main air line */
  airLine: number;
  stages: StageBox[];
  sides: SideBox[];
  gaps: GapBox[];
  pump: PumpBox | null;
  pipes: PipeRun[];
}

const GAP_MIN = 58;
const GAP_MAX = 190;
const LEFT = 50;
const RIGHT = 52;
/** Room over the highest rim for names, the air line and the roof. */
const HEADROOM = 236;
const PIT_ROOM = 62;
/** A tank over a rim stands this high over it, and over the ground. */
const OVER_HOST = 40;

export interface LayoutInput {
  design: DesignCheck;
  loop: readonly StageSpec[];
  side: readonly SideSpec[];
  /** width over height of the view */
  aspect: number;
}

function standOf(kind: string, floor: number): Stand {
  return floor > PIT ? 'pit' : drawingOf(kind).on;
}

/** Loop order → order on screen: what the pump lifts water into stands at the far left, then the fish tank and all that follows. */
export function screenOrder(loop: readonly StageSpec[]): number[] {
  const pump = loop.findIndex((stage) => lifts(stage.kind));
  const order: number[] = [];
  if (pump >= 0) for (let i = pump + 1; i < loop.length; i += 1) order.push(i);
  for (let i = 0; i < (pump >= 0 ? pump : loop.length); i += 1) order.push(i);
  return order;
}

/**
 * Places the loop. The picture's proportions follow the view: it is widened until it fills it, and spare height is left to the sky.
 * @returns null while the design does not speak about every stage of the loop
 */
export function layOut(input: LayoutInput): WorldLayout | null {
  const { design, loop, side, aspect } = input;
  const order = screenOrder(loop);
  const found = new Map<string, DesignStage>(design.stages.map((stage) => [stage.id, stage]));
  if (order.length === 0 || order.some((i) => !found.has(loop[i].id))) return null;

  const boxes: StageBox[] = [];
  for (const index of order) {
    const spec = loop[index];
    const stage = found.get(spec.id);
    if (stage === undefined) return null;
    boxes.push({
      id: spec.id,
      kind: spec.kind,
      spec,
      index,
      x: 0,
      w: 0,
      rim: 0,
      level: 0,
      floor: 0,
      brim: 0,
      stand: 'block',
      entry: 'wall',
      level_cm: stage.level_m * 100,
      fall_cm: stage.fall_m * 100,
    });
  }
  const shallow = Math.max(60, ...side.map(({ kind }) => sideDrawingOf(kind)).map(({ place, size }) => (place === 'pit' ? size.floor : 0)));
  let span = raise(boxes, found, LEAST_UNITS_PER_M, shallow);
  const width = fitWidths(boxes, (span.bottom - span.top) * aspect, design);
  // a tall view lets a metre stand taller, and every fall with it
  const fixed = HEADROOM + WALL + PIT_ROOM;
  const stretch = (width / aspect - fixed) / (span.bottom - span.top - fixed);
  const unitsPerM = LEAST_UNITS_PER_M * Math.max(1, Math.min(MOST_STRETCH, stretch));
  span = raise(boxes, found, unitsPerM, shallow);
  const { top, bottom } = span;
  const sides = placeSides(side, boxes, loop);
  const pumpSpec = loop.find((stage) => lifts(stage.kind));
  const pump = pumpSpec === undefined ? null : placePump(pumpSpec, boxes, loop);
  const trench = bottom - PIT_ROOM + 30;
  const pipes = pipesOf(loop, boxes);
  const layout: WorldLayout = {
    unitsPerM,
    width,
    top,
    bottom,
    airLine: top + 134,
    stages: boxes,
    sides,
    gaps: gapsOf(loop, boxes, width),
    pump,
    pipes,
  };
  const back = pump === null ? null : returnPipe(pump, boxes, trench);
  if (back !== null) pipes.push(back);
  for (const box of boxes)
    if (pipes.some((run) => run.to === box.id && run.pour !== null && run.pour.top < box.level - 12)) box.entry = 'above';
  pipes.push(...sidePipes(side, sides, boxes));
  return layout;
}

/** Sets the heights of all tanks for a height of a metre. */
function raise(
  boxes: readonly StageBox[],
  found: ReadonlyMap<string, DesignStage>,
  unitsPerM: number,
  shallow: number,
): { top: number; bottom: number } {
  let top = 0;
  let deepest = shallow;
  for (const box of boxes) {
    const stage = found.get(box.id);
    if (stage === undefined) continue;
    box.level = -stage.level_m * unitsPerM;
    box.floor = -Math.max(stage.floor_m, stage.level_m - stage.depth_m) * unitsPerM;
    box.brim = -Math.max(stage.floor_m + stage.height_m, stage.level_m + LEAST_FREEBOARD_m) * unitsPerM;
    box.rim = Math.min(-(stage.floor_m + stage.height_m) * unitsPerM, box.level - 12);
    box.stand = standOf(box.kind, box.floor);
    if (box.stand === 'legs') box.floor = Math.max(box.level + 40, Math.min(box.floor, -VALVE_ROOM));
    drawingOf(box.kind).raise?.(box, Math.min(stage.fall_m - BASIN_OVER_NEXT_m, stage.height_m - BASIN_OVER_NEXT_m) * unitsPerM);
    top = Math.min(top, box.rim);
    deepest = Math.max(deepest, box.floor);
  }
  return { top: top - HEADROOM, bottom: deepest + WALL + PIT_ROOM };
}

function fitWidths(boxes: StageBox[], wanted: number, design: DesignCheck): number {
  const gaps = boxes.length;
  const limits = boxes.map((box) => drawingOf(box.kind).widths);
  const preferred = boxes.map((box, i) => {
    const metres = design.stages.find((stage) => stage.id === box.id)?.width_m ?? 0;
    return Math.max(limits[i][0], Math.min(limits[i][1], metres * LEAST_UNITS_PER_M));
  });
  const least = limits.reduce((sum, limit) => sum + limit[0], 0) + gaps * GAP_MIN + LEFT + RIGHT;
  const most = preferred.reduce((sum, w) => sum + w, 0) + gaps * GAP_MIN + LEFT + RIGHT;
  const share = most > least ? Math.max(0, Math.min(1, (wanted - least) / (most - least))) : 0;
  const width = Math.max(wanted, least);
  let taken = LEFT + RIGHT;
  boxes.forEach((box, i) => {
    box.w = limits[i][0] + (preferred[i] - limits[i][0]) * share;
    taken += box.w;
  });
  // room that even wide gaps do not use makes the tanks wider
  const unused = width - taken - gaps * GAP_MAX;
  const growth = limits.reduce((sum, limit, i) => sum + limit[1] - boxes[i].w, 0);
  if (unused > 0 && growth > 0) {
    const part = Math.min(1, unused / growth);
    boxes.forEach((box, i) => {
      box.w += (limits[i][1] - box.w) * part;
    });
    taken += growth * part;
  }
  const gap = Math.min(GAP_MAX, (width - taken) / gaps);
  const spare = width - taken - gap * gaps;
  let x = LEFT + spare / 2;
  for (const box of boxes) {
    x += gap;
    box.x = x;
    x += box.w;
  }
  return width;
}

function placePump({ id, kind }: StageSpec, boxes: readonly StageBox[], loop: readonly StageSpec[]): PumpBox | null {
  const at = loop.findIndex((stage) => lifts(stage.kind));
  const host = boxes.find((box) => box.index === at - 1);
  return host === undefined ? null : { id, kind, host: host.id, x: host.x + host.w - 40, y: host.floor - 19 };
}

function placeSides(side: readonly SideSpec[], boxes: readonly StageBox[], loop: readonly StageSpec[]): SideBox[] {
  return side.flatMap((one) => {
    const { place, size } = sideDrawingOf(one.kind);
    const over = 'into' in one ? boxes.find((box) => box.id === one.into) : undefined;
    const drained =
      'takes' in one ? (boxes.find((box) => one.takes.includes(box.id)) ?? boxes.find((box) => box.id === loop[0].id)) : undefined;
    const host = over ?? drained;
    if (host === undefined) return [];
    const floor = place === 'pit' ? 0 : Math.min(host.rim - OVER_HOST, -OVER_HOST);
    return [
      {
        id: one.id,
        kind: one.kind,
        host: host.id,
        x: host.x + (host.w - size.w) / 2,
        w: size.w,
        rim: floor + size.rim,
        level: floor + size.level,
        floor: floor + size.floor,
      },
    ];
  });
}
