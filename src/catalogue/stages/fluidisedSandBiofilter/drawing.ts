// Fluidised-sand biofilter: a tall housing; water goes down a pipe to arms at the foot and lifts the sand, whose sharp upper edge rises
// with the flow.
import type { StageBox } from '../../../page/picture/kit/boxes';
import { scatter } from '../../../page/picture/kit/curves';
import type { Dials } from '../../../page/picture/kit/dials';
import { FLOW_STEP_m3_d } from '../../../page/picture/kit/flow';
import { hullPath, hullShell, hullSupport } from '../../../page/picture/kit/hull';
import type { Kit, StageDrawing } from '../../../page/picture/kit/kit';
import type { Live } from '../../../page/picture/kit/moment';
import { INK } from '../../../page/picture/kit/palette';
import { arrowHead } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { closedOver } from '../../../page/picture/kit/shapes';
import { Specks } from '../../../page/picture/kit/solids';
import { Stepped } from '../../../page/picture/kit/stepped';
import { ShapedWater } from '../../../page/picture/kit/water';

/** Share of the housing that sand at rest fills, and the most that it is lifted to. */
const AT_REST = 0.4;
const LIFTED = 0.86;
/**
 * Flow over the volume of sand at rest, 1/d, at which it begins to lift and at which it stands twice as high; only the drawing depends on
 * them.
 */
const LIFTS_per_d = 430;
const TWICE_per_d = 2300;
/** Sand of a plan that leaves it out, m³, as the catalogue takes it. */
const USUAL_m3 = 0.03;
/** Heights of the sand that are drawn. */
const STEPS = 16;
const ARMS = 15;
const PIPE = 9;
const GRAIN = 30;

const within = (box: StageBox): number => box.floor - box.rim - 6;

/** Step of the sand's height for a flow: at rest up to where it lifts, then in a straight line. */
function stepAt(box: StageBox, flow_m3_d: number): number {
  const rate = flow_m3_d / ((box.spec.media_m3 ?? USUAL_m3) * (box.spec.count ?? 1));
  const lift = AT_REST * Math.max(0, (rate - LIFTS_per_d) / (TWICE_per_d - LIFTS_per_d));
  return Math.round(Math.min(1, lift / (LIFTED - AT_REST)) * STEPS);
}

const topAt = (box: StageBox, step: number): number => box.floor - within(box) * (AT_REST + ((LIFTED - AT_REST) * step) / STEPS);

/** The same grains at each height: the higher they are lifted, the farther they lie apart. */
function sand(pen: Pen, box: StageBox, step: number): void {
  const random = scatter(61);
  const top = topAt(box, step);
  const high = box.floor - top;
  const count = Math.round((box.w * within(box) * AT_REST) / GRAIN);
  pen.within(hullPath(box), () => {
    pen.rect(box.x, top, box.w, high, { fill: '#E2CB93', alpha: 0.95 - (0.3 * step) / STEPS });
    for (let i = 0; i < count; i += 1) {
      // denser towards the foot, as it is in a lifted bed
      const down = 1 - (1 - random()) ** (1 + step / STEPS);
      pen.circle(box.x + random() * box.w, top + 3 + down * (high - 4), 1.1 + random() * 0.8, {
        fill: random() > 0.35 ? '#A07F3C' : '#FBF0CF',
      });
    }
    pen.path(`M${box.x} ${top}q${box.w * 0.25} ${step === 0 ? 0 : 4} ${box.w * 0.5} 0t${box.w * 0.5} 0`, { ink: '#7A5B2C', width: 1.8 });
  });
}

/** The pipe that brings the water to the foot, and the arms with their holes. */
function arms(pen: Pen, box: StageBox): void {
  const y = box.floor - ARMS;
  const down = `M${box.x} ${box.level + 22}H${box.x + 13}V${y}H${box.x + box.w - 12}`;
  pen.path(down, { ink: INK.ink, width: PIPE + 4 });
  pen.path(down, { ink: INK.pipe, width: PIPE });
  for (let x = box.x + 26; x < box.x + box.w - 14; x += 11) pen.circle(x, y, 1.6, { fill: INK.ink });
  arrowHead(pen, box.x + 13, (box.level + 22 + y) / 2, Math.PI / 2, 0.5);
  for (const share of [0.45, 0.75]) arrowHead(pen, box.x + box.w * share, y - 22, -Math.PI / 2, 0.6);
}

/** Sand that stands as high as the flow lifts it. */
class Sand implements Live {
  private readonly picture: Stepped;
  private readonly dials: Dials;
  private readonly flow: number;
  /** heights by steps of flow, up to where it stands highest */
  private readonly heights: Uint8Array;

  constructor(kit: Kit, box: StageBox) {
    this.dials = kit.dials;
    this.flow = kit.dials.inSteps(box.id, 'flow_m3_d', 0, 10 * FLOW_STEP_m3_d);
    let most = 0;
    while (stepAt(box, most * 10 * FLOW_STEP_m3_d) < STEPS) most += 1;
    this.heights = Uint8Array.from({ length: most + 1 }, (_, step) => stepAt(box, step * 10 * FLOW_STEP_m3_d));
    this.picture = new Stepped(kit.studio, { x: box.x - 2, y: box.rim, w: box.w + 4, h: box.floor - box.rim + 2 }, (pen, step) =>
      sand(pen, box, step),
    );
  }

  update(): void {
    const flow = this.dials.steps[this.flow];
    const last = this.heights.length - 1;
    this.picture.show(this.heights[flow < 0 ? 0 : flow > last ? last : flow]);
  }
}

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [78, 96],
  inHand: [86, 200, 30],
  on: 'block',
  inlet: 'fitting',
  raise: closedOver,
  support: hullSupport,
  back(pen, box) {
    pen.path(hullPath(box), { fill: INK.back });
  },
  media(pen, box) {
    sand(pen, box, STEPS / 2);
    arms(pen, box);
  },
  live(kit, box) {
    const water = new ShapedWater(
      kit,
      { id: box.id, x: box.x, w: box.w, level: box.rim + 6, floor: box.floor, seed: 67, full: true },
      hullPath(box),
    );
    const bed = new Sand(kit, box);
    kit.studio.show(kit.studio.bake({ x: box.x - 8, y: box.rim, w: box.w + 16, h: box.floor - box.rim }, (pen) => arms(pen, box)));
    return [
      water,
      bed,
      new Specks(kit, { id: box.id, x: box.x + 20, w: box.w - 26, floor: topAt(box, STEPS), drift: 2, sink: -6 }, { level: box.rim + 14 }),
    ];
  },
  front(pen, box) {
    hullShell(pen, box, '#CFE0E2');
    const middle = box.x + box.w / 2;
    pen.rect(middle - 15, box.rim - 14, 30, 16, { fill: INK.steel, ink: INK.ink, width: 2.2 }, 3);
    pen.path(`M${middle - 11} ${box.rim - 6}h22`, { ink: INK.ink, width: 1.4 });
  },
  waterPath: (box) => hullPath(box),
};
