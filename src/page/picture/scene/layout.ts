// Where everything of a loop stands in the picture: heights true to the design's levels, widths fitted to the view.
// World units; the ground is y = 0, up is negative.
import { gapsOf, type GapBox } from './gaps';
import { BAR_UNDER_RIM, BASIN_WATER, CHANNEL_OVER, CHANNEL_UNDER, hasCone, HULL_OVER, isClosed, isSprayed, LEAST_SPRAY, onTable, widthsOf } from '../kit/kinds';
import { pipesOf, returnPipe, sidePipes, type PipeRun } from '../water/plumbing';
import type { DesignCheck, DesignStage, SideSpec, StageSpec } from '../kit/terms';

/** Height of a metre in a low view, and how much taller it may stand in a high one. */
const LEAST_UNITS_PER_M = 200;
const MOST_STRETCH = 1.45;
/** A settler's valve needs this room over the ground; its cone is drawn that much shorter where it stands low. */
const VALVE_ROOM = 34;
/** A basin under a sprayed stage stands this high over the ground, if the fall allows it. */
const LEAST_STAND = 22;
/** The basin of a sprayed stage stands this much over the next level. */
const BASIN_OVER_NEXT_m = 0.1;
/** What a rim stands over its water at least, as the hydraulics take it. */
const LEAST_FREEBOARD_m = 0.05;
/** Thickness of a cut wall. */
export const WALL = 9;

export type Stand = 'block' | 'legs' | 'table' | 'pit';

/** A tank: x and w are its inner left edge and inner width; y of rim, of the water at rest and of the inner floor. */
export interface StageBox {
  id: string; kind: string; spec: StageSpec;
  /** place in the loop */
  index: number;
  x: number; w: number; rim: number; level: number; floor: number;
  /** y at which its water runs over, true to the design; the drawn rim may stand higher */
  brim: number;
  stand: Stand;
  /** whether its water comes over the rim or through the wall on the left */
  entry: 'above' | 'wall';
  /** level above the ground, cm, and the fall to the next stage, cm, as designed */
  level_cm: number; fall_cm: number;
}
export interface SideBox { id: string; kind: 'mineralisationTank' | 'baseDosing'; host: string; x: number; w: number; rim: number; level: number; floor: number }
export interface PumpBox { id: string; host: string; x: number; y: number }
export interface WorldLayout {
  /** height of a metre */
  unitsPerM: number;
  width: number;
  /** highest and lowest y the picture must show */
  top: number; bottom: number;
  /** height of the main air line */
  airLine: number;
  stages: StageBox[]; sides: SideBox[]; gaps: GapBox[]; pump: PumpBox | null; pipes: PipeRun[];
}

const GAP_MIN = 58;
const GAP_MAX = 190;
const LEFT = 50;
const RIGHT = 52;
/** Room over the highest rim for names, the air line and the roof. */
const HEADROOM = 236;
const PIT_ROOM = 62;

export interface LayoutInput {
  design: DesignCheck; loop: readonly StageSpec[]; side: readonly SideSpec[];
  /** width over height of the view */
  aspect: number;
}

function standOf(kind: string, floor: number): Stand {
  if (floor > 12) return 'pit';
  if (hasCone(kind)) return 'legs';
  return onTable(kind) ? 'table' : 'block';
}

/** Loop order → order on screen: what the pump lifts water into stands at the far left, then the fish tank and all that follows. */
export function screenOrder(loop: readonly StageSpec[]): number[] {
  const pump = loop.findIndex((stage) => stage.kind === 'returnPump');
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
    boxes.push({ id: spec.id, kind: spec.kind, spec, index, x: 0, w: 0, rim: 0, level: 0, floor: 0, brim: 0, stand: 'block', entry: 'wall', level_cm: stage.level_m * 100, fall_cm: stage.fall_m * 100 });
  }
  const shallow = side.some((one) => one.kind === 'mineralisationTank') ? 150 : 60;
  let span = raise(boxes, found, LEAST_UNITS_PER_M, shallow);
  const width = fitWidths(boxes, (span.bottom - span.top) * aspect, design);
  // a tall view lets a metre stand taller, and every fall with it
  const fixed = HEADROOM + WALL + PIT_ROOM;
  const stretch = (width / aspect - fixed) / (span.bottom - span.top - fixed);
  const unitsPerM = LEAST_UNITS_PER_M * Math.max(1, Math.min(MOST_STRETCH, stretch));
  span = raise(boxes, found, unitsPerM, shallow);
  const { top, bottom } = span;
  const sides = placeSides(side, boxes, loop);
  const pumpSpec = loop.find((stage) => stage.kind === 'returnPump');
  const pump = pumpSpec === undefined ? null : placePump(pumpSpec.id, boxes, loop);
  const trench = bottom - PIT_ROOM + 30;
  const pipes = pipesOf(loop, boxes);
  const layout: WorldLayout = { unitsPerM, width, top, bottom, airLine: top + 134, stages: boxes, sides, gaps: gapsOf(loop, boxes, width), pump, pipes };
  const back = pump === null ? null : returnPipe(pump, boxes, trench);
  if (back !== null) pipes.push(back);
  for (const box of boxes) if (pipes.some((run) => run.to === box.id && run.pour !== null && run.pour.top < box.level - 12)) box.entry = 'above';
  pipes.push(...sidePipes(side, sides, boxes));
  return layout;
}

/** Sets the heights of all tanks for a height of a metre. */
function raise(boxes: readonly StageBox[], found: ReadonlyMap<string, DesignStage>, unitsPerM: number, shallow: number): { top: number; bottom: number } {
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
    shape(box, Math.min(stage.fall_m - BASIN_OVER_NEXT_m, stage.height_m - BASIN_OVER_NEXT_m) * unitsPerM);
    top = Math.min(top, box.rim);
    deepest = Math.max(deepest, box.floor);
  }
  return { top: top - HEADROOM, bottom: deepest + WALL + PIT_ROOM };
}

/** Kinds whose water is not where a plain tank has it: sprayed ones hang under their level, films are drawn deeper, hulls close over the water. */
function shape(box: StageBox, drop: number): void {
  if (isSprayed(box.kind)) {
    box.rim = box.level - BAR_UNDER_RIM;
    box.floor = Math.max(box.level + LEAST_SPRAY, Math.min(box.level + drop + BASIN_WATER, -LEAST_STAND));
    box.level = box.floor - BASIN_WATER;
    box.stand = box.floor > 12 ? 'pit' : 'block';
  } else if (box.kind === 'nftChannel') {
    box.rim = box.level - CHANNEL_OVER;
    box.floor = box.level + CHANNEL_UNDER;
  } else if (isClosed(box.kind)) box.rim = Math.min(box.rim, box.level - HULL_OVER);
}

function fitWidths(boxes: StageBox[], wanted: number, design: DesignCheck): number {
  const gaps = boxes.length;
  const limits = boxes.map((box) => widthsOf(box.kind));
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

function placePump(id: string, boxes: readonly StageBox[], loop: readonly StageSpec[]): PumpBox | null {
  const at = loop.findIndex((stage) => stage.kind === 'returnPump');
  const host = boxes.find((box) => box.index === at - 1);
  return host === undefined ? null : { id, host: host.id, x: host.x + host.w - 40, y: host.floor - 19 };
}

function placeSides(side: readonly SideSpec[], boxes: readonly StageBox[], loop: readonly StageSpec[]): SideBox[] {
  const placed: SideBox[] = [];
  for (const one of side) {
    if (one.kind === 'baseDosing') {
      const host = boxes.find((box) => box.id === one.into);
      if (host === undefined) continue;
      const floor = Math.min(host.rim - 40, -40);
      placed.push({ id: one.id, kind: one.kind, host: host.id, x: host.x + host.w / 2 - 30, w: 66, rim: floor - 60, level: floor - 42, floor });
    } else {
      const host = boxes.find((box) => one.takes.includes(box.id)) ?? boxes.find((box) => box.id === loop[0].id);
      if (host === undefined) continue;
      placed.push({ id: one.id, kind: one.kind, host: host.id, x: host.x + host.w / 2 - 73, w: 146, rim: 24, level: 52, floor: 150 });
    }
  }
  return placed;
}
