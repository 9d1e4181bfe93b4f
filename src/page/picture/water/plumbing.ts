// The course of every pipe: from overflow to overflow by gravity, and from the pump back to the top, buried under the ground.
import type { PumpBox, SideBox, StageBox } from '../kit/boxes';
import { BAR_UNDER_RIM } from '../kit/shapes';
import { drawingOf, lifts } from '../scene/drawingOf';
import type { SideSpec, StageSpec } from '../kit/terms';

export interface PipeRun {
  key: string;
  /** whose outflow it carries, and where it leads */
  from: string;
  to: string;
  /** x, y, x, y … along the flow */
  points: number[];
  width: number;
  /** free fall from the mouth of the pipe to the water below */
  pour: { x: number; top: number; bottom: number } | null;
  arrows: { x: number; y: number; turn: number }[];
}

/** How far under the level a pipe leaves its tank. */
const OUTLET = 9;
const GRAVITY_WIDTH = 15;
/** A fall larger than this pours over the rim, a smaller one runs straight through the walls. */
export const OVER_RIM = 56;
const STRAIGHT = 34;

/** How far under the level a pipe enters a closed hull. */
const INTO_HULL = 22;

/**
 * Where water that comes over the rim falls in: a settler takes it into its centre well, hulls and bars in their middle, other tanks near
 * the left wall.
 */
function mouthOf(box: StageBox, beside: number): number {
  return drawingOf(box.kind).inlet === 'side' ? box.x + beside : box.x + box.w / 2;
}

/** A pipe that leads to a height without a free fall: into a hull's side or onto a spray bar. */
function joined(from: StageBox, to: StageBox, out: number, y: number, end: number): PipeRun {
  const start = from.x + from.w - 6;
  const middle = (from.x + from.w + to.x) / 2;
  const level = Math.abs(y - out) < 14;
  return {
    key: `${from.id}>${to.id}`,
    from: from.id,
    to: to.id,
    width: GRAVITY_WIDTH,
    pour: null,
    points: level ? [start, out, end, out] : [start, out, middle, out, middle, y, end, y],
    arrows: [{ x: middle, y: level ? out : (out + y) / 2, turn: level ? 0 : Math.sign(y - out) * (Math.PI / 2) }],
  };
}

function gravity(from: StageBox, to: StageBox): PipeRun {
  const key = `${from.id}>${to.id}`;
  const start = from.x + from.w - 6;
  const out = from.level + OUTLET;
  const fall = to.level - from.level;
  const { inlet, on } = drawingOf(to.kind);
  if (inlet === 'bar') return joined(from, to, out, to.rim + BAR_UNDER_RIM, to.x + 4);
  if (inlet === 'fitting') return joined(from, to, out, to.level + INTO_HULL, to.x + 4);
  const middle = (from.x + from.w + to.x) / 2;
  if (fall >= OVER_RIM && to.rim > out) {
    const y = to.rim - 16;
    const x = mouthOf(to, 17);
    return {
      key,
      from: from.id,
      to: to.id,
      width: GRAVITY_WIDTH,
      points: [start, out, middle, out, middle, y, x, y, x, to.rim + 4],
      pour: { x, top: to.rim + 4, bottom: to.level },
      arrows: y - out > 50 ? [{ x: middle, y: (out + y) / 2, turn: Math.PI / 2 }] : [],
    };
  }
  if (fall >= STRAIGHT) {
    const y = to.level + 16;
    return {
      key,
      from: from.id,
      to: to.id,
      width: GRAVITY_WIDTH,
      points: [start, out, middle, out, middle, y, to.x + 12, y],
      pour: null,
      arrows: [{ x: middle, y: (out + y) / 2, turn: Math.PI / 2 }],
    };
  }
  return {
    key,
    from: from.id,
    to: to.id,
    width: GRAVITY_WIDTH,
    points: [start, out, to.x + 6, out],
    pour: fall > 4 && on !== 'legs' ? { x: to.x + 5, top: out - 4, bottom: to.level } : null,
    arrows: [{ x: middle, y: out, turn: 0 }],
  };
}

/**
 * Pipes by gravity, between stages that follow each other with no pump between them; the last one after the pump pours into the fish tank.
 */
export function pipesOf(loop: readonly StageSpec[], boxes: readonly StageBox[]): PipeRun[] {
  const pump = loop.findIndex((stage) => lifts(stage.kind));
  const runs: PipeRun[] = [];
  for (let i = 0; i + 1 < boxes.length; i += 1) {
    const next = boxes[i].index + 1 === loop.length ? 0 : boxes[i].index + 1;
    if (next === boxes[i + 1].index && next !== pump) runs.push(gravity(boxes[i], boxes[i + 1]));
  }
  return runs;
}

/** The pipe from the pump, under the ground and up at the far left, into the first tank on screen. */
export function returnPipe(pump: PumpBox, boxes: readonly StageBox[], trench: number): PipeRun | null {
  const host = boxes.find((box) => box.id === pump.host);
  const first = boxes[0];
  if (host === undefined || first === undefined) return null;
  const x0 = pump.x + 18;
  const wall = host.x - 26;
  const over = first.rim - 32;
  const mouth = mouthOf(first, Math.min(46, first.w * 0.24));
  const turn = pump.y - 46;
  const { inlet } = drawingOf(first.kind);
  const inside = inlet === 'fitting' || inlet === 'bar';
  const end = inlet === 'bar' ? first.rim + BAR_UNDER_RIM : first.rim + 2;
  const points = [x0, pump.y - 30, x0, turn, wall, turn, wall, trench, 26, trench, 26, over, mouth, over, mouth, end];
  const arrows = [{ x: 26, y: (over + trench) / 2 - 30, turn: -Math.PI / 2 }];
  const run = wall - 26;
  const count = Math.max(1, Math.floor(run / 400));
  for (let i = 0; i < count; i += 1) arrows.push({ x: 26 + (run * (i + 0.5)) / count, y: trench, turn: Math.PI });
  return {
    key: `${pump.id}>${first.id}`,
    from: host.id,
    to: first.id,
    points,
    width: GRAVITY_WIDTH,
    pour: inside ? null : { x: mouth, top: first.rim + 2, bottom: first.level },
    arrows,
  };
}

/** Sludge lines into side tanks and the pipe that returns their water. */
export function sidePipes(side: readonly SideSpec[], sides: readonly SideBox[], boxes: readonly StageBox[]): PipeRun[] {
  const runs: PipeRun[] = [];
  for (const one of side) {
    const tank = sides.find((box) => box.id === one.id);
    if (!('takes' in one) || tank === undefined) continue;
    for (const id of one.takes) {
      const from = boxes.find((box) => box.id === id);
      if (from === undefined) continue;
      const x = from.x + from.w / 2;
      const end = Math.max(tank.x + 20, Math.min(tank.x + tank.w - 20, x));
      runs.push({
        key: `${id}>${tank.id}`,
        from: id,
        to: tank.id,
        width: 12,
        pour: null,
        arrows: [],
        points: x === end ? [x, from.floor + 10, x, tank.level - 10] : [x, from.floor + 10, x, 14, end, 14, end, tank.level - 10],
      });
    }
    const home = boxes.find((box) => box.id === one.returnsTo);
    if (home === undefined) continue;
    const y = tank.level + 12;
    const start = tank.x + tank.w - 4;
    runs.push({
      key: `${tank.id}>${home.id}`,
      from: tank.id,
      to: home.id,
      width: 11,
      pour: null,
      points: [start, y, home.x + 6, y],
      arrows: [{ x: (start + home.x) / 2, y, turn: 0 }],
    });
  }
  return runs;
}
