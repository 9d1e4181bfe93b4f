// Drum filter: water passes from inside a turning drum out through its mesh; as the mesh covers, a bar washes the catch into a trough.
import { INK } from '../../../page/picture/kit/palette';
import { arrowHead, block, speck, tankCut } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { scatter } from '../../../page/picture/kit/curves';
import type { Kit, StageDrawing } from '../../../page/picture/kit/kit';
import { type StageBox, WALL } from '../../../page/picture/kit/boxes';
import type { Dials } from '../../../page/picture/kit/dials';
import type { Live, Moment } from '../../../page/picture/kit/moment';
import { lately } from '../../../page/picture/kit/happenings';
import { Specks } from '../../../page/picture/kit/solids';
import { Stepped } from '../../../page/picture/kit/stepped';
import { StraightWater } from '../../../page/picture/kit/water';
import type { Image } from '../../../page/picture/kit/studio';

const MESH = 5;
/** Turn of the drum, radians a second. */
const TURN = 0.5;
/** Blockage from which the bar washes; a wash is shown for so many hours after it was done. */
const WASH_FROM = 0.25;
const WASH_SHOWN_h = 1;
const DIRT_STEPS = 12;

interface Drum {
  x: number;
  y: number;
  r: number;
}
const drumOf = (box: StageBox): Drum => {
  const r = Math.min(box.w * 0.4, (box.floor - box.rim) * 0.47);
  return { x: box.x + box.w / 2, y: Math.max(box.rim + r * 0.75, box.floor - r - 14), r };
};

/** The drum seen end on: mesh, ribs and axle. */
function drum(pen: Pen, r: number): void {
  pen.circle(0, 0, r, { fill: '#EFF3F0', alpha: 0.42 });
  pen.circle(0, 0, r - MESH / 2, { ink: INK.matLight, width: MESH });
  pen.circle(0, 0, r - MESH / 2, { ink: INK.mat, width: MESH, dash: [1.6, 2.6], cap: 'butt' });
  pen.circle(0, 0, r, { ink: INK.ink, width: 1.8 });
  pen.circle(0, 0, r - MESH, { ink: INK.ink, width: 1.4 });
  for (let i = 0; i < 6; i += 1) {
    const a = (i * Math.PI) / 3;
    const [c, s] = [Math.cos(a), Math.sin(a)];
    pen.line(c * 8, s * 8, c * (r - MESH), s * (r - MESH), { ink: INK.ink, width: 3.4 });
    pen.line(c * 8, s * 8, c * (r - MESH), s * (r - MESH), { ink: INK.steel, width: 1.4 });
  }
  pen.circle(0, 0, 8, { fill: INK.steel, ink: INK.ink });
}

/** Wash bar with nozzles over the drum, and its feed. */
function bar(pen: Pen, box: StageBox): void {
  const { x, y, r } = drumOf(box);
  const at = y - r - 13;
  pen.path(`M${x - 26} ${at}H${box.x + box.w + 4}V${box.rim - 2}`, { ink: INK.ink, width: 8 });
  pen.path(`M${x - 26} ${at}H${box.x + box.w + 4}V${box.rim - 2}`, { ink: INK.pipe, width: 4.4 });
  for (const dx of [-20, 0, 20]) pen.path(`M${x + dx - 3} ${at + 4}h6l2 5h-10Z`, { fill: INK.steel, ink: INK.ink, width: 1.4 });
}

/** Trough inside the drum that takes what the bar washes off, with its drain. */
function trough(pen: Pen, box: StageBox): void {
  const { x, y, r } = drumOf(box);
  const top = y - r * 0.42;
  const half = r * 0.5;
  pen.path(`M${x - half} ${top}L${x - half * 0.45} ${top + 15}H${x + half * 0.45}L${x + half} ${top}`, {
    fill: INK.wall,
    ink: INK.ink,
    width: 2,
  });
  pen.path(`M${x - half * 0.7} ${top + 7}H${x + half * 0.7}L${x + half * 0.45} ${top + 14}H${x - half * 0.45}Z`, {
    fill: INK.sludge,
    alpha: 0.8,
  });
  pen.circle(x, top + 10, 4.4, { fill: INK.pump, ink: INK.ink, width: 1.6 });
}

/** Turning drum, wash and what sticks to the mesh. */
class Screen implements Live {
  private readonly drum: Image;
  private readonly spray: Image;
  private readonly dirt: Stepped;
  private readonly dials: Dials;
  private readonly clog: number;
  private readonly flow: number;
  private readonly covered: number;
  private washes = false;
  private flows = false;
  private turn = 0;

  constructor(
    kit: Kit,
    private readonly box: StageBox,
  ) {
    this.dials = kit.dials;
    this.clog = kit.dials.want(box.id, 'clog', 0);
    this.covered = kit.dials.step(this.clog, 1 / DIRT_STEPS);
    this.flow = kit.dials.want(box.id, 'flow_m3_d', 0);
    const { x, y, r } = drumOf(box);
    this.dirt = new Stepped(kit.studio, { x: x - r - 6, y: y - r - 6, w: 2 * r + 12, h: 2 * r + 12 }, (pen, step) =>
      this.paint(pen, step / DIRT_STEPS),
    );
    this.drum = kit.studio
      .show(kit.studio.bake({ x: -r - 2, y: -r - 2, w: 2 * r + 4, h: 2 * r + 4 }, (pen) => drum(pen, r)))
      .setOrigin(0.5, 0.5)
      .setPosition(x, y);
    this.spray = kit.studio
      .show(
        kit.studio.bake({ x: x - 40, y: y - r - 8, w: 80, h: r * 0.7 + 8 }, (pen) => {
          for (const dx of [-20, 0, 20])
            pen.path(`M${x + dx} ${y - r - 5}l-5 ${r * 0.5}M${x + dx} ${y - r - 5}v${r * 0.55}M${x + dx} ${y - r - 5}l5 ${r * 0.5}`, {
              ink: '#fff',
              width: 2.4,
              dash: [7, 4],
            });
        }),
      )
      .setVisible(false);
  }

  update(moment: Moment): void {
    if (moment.glance) this.look(moment);
    if (this.washes !== this.spray.visible) this.spray.setVisible(this.washes);
    if (this.flows && moment.flowing) {
      this.turn += moment.dt * TURN * (this.washes ? 2 : 1);
      this.drum.rotation = this.turn;
    }
    this.dirt.show(Math.max(0, Math.min(DIRT_STEPS, this.dials.steps[this.covered])));
  }

  private look(moment: Moment): void {
    this.flows = this.dials.at[this.flow] > 0;
    this.washes =
      this.flows
      && moment.view !== null
      && (this.dials.at[this.clog] > WASH_FROM || lately(moment.view, 'backwashed', this.box.id, moment, WASH_SHOWN_h) > 0);
  }

  private paint(pen: Pen, share: number): void {
    const { x, y, r } = drumOf(this.box);
    const random = scatter(77);
    for (let i = 0; i < 130; i += 1) {
      const a = 0.25 + random() * (Math.PI - 0.5);
      const out = r - MESH - 2 - random() * random() * 12;
      const size = 1.3 + random() * 1.6;
      if (i < share * 130) speck(pen, x + Math.cos(a) * out, y + Math.sin(a) * out, size, random() * 3);
    }
  }
}

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [112, 132],
  inHand: [124, 110, 50],
  on: 'block',
  inlet: 'side',
  tagY: (box) => box.floor + 6,
  support(pen, box) {
    block(pen, box.x - 12, box.floor + WALL, box.w + 24, -box.floor - WALL);
  },
  media(pen, box) {
    const { x, y, r } = drumOf(box);
    pen.at(x, y, () => drum(pen, r));
  },
  live(kit, box) {
    const water = new StraightWater(kit, {
      id: box.id,
      x: box.x,
      w: box.w,
      rim: box.rim,
      level: box.level,
      floor: box.floor,
      seed: 19,
      sign: box.w * 0.88,
    });
    const { x, r } = drumOf(box);
    const screen = new Screen(kit, box);
    const specks = new Specks(kit, { id: box.id, x: x - r * 0.7, w: r * 1.4, floor: box.floor - 16, drift: 3, sink: 2 }, water);
    return [water, screen, specks];
  },
  front(pen, box) {
    trough(pen, box);
    bar(pen, box);
    const { x, y, r } = drumOf(box);
    arrowHead(pen, x - r * 0.45, y + r * 0.62, 2.2, 0.56);
    arrowHead(pen, x + r * 0.45, y + r * 0.62, 0.94, 0.56);
    tankCut(pen, box.x, box.rim, box.w, box.floor - box.rim);
  },
  waterPath: (box) => `M${box.x} ${box.level}h${box.w}V${box.floor}h${-box.w}Z`,
};
