// Ultraviolet unit: water passes along a lamp in a steel tube with a viewing window; the lamp glows while it has power.
import { INK } from '../../../page/picture/kit/palette';
import { block } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { closedOver } from '../../../page/picture/kit/shapes';
import type { StageDrawing } from '../../../page/picture/kit/kit';
import type { StageBox } from '../../../page/picture/kit/boxes';
import type { Live, Moment } from '../../../page/picture/kit/moment';
import { lampShines } from '../../../page/picture/kit/happenings';
import { Specks } from '../../../page/picture/kit/solids';
import { ShapedWater } from '../../../page/picture/kit/water';
import type { Image } from '../../../page/picture/kit/studio';

const LAMP = '#7A5BB5';
const GLOW = '#D9C6FF';

const top = (box: StageBox): number => box.level + 4;
const middle = (box: StageBox): number => (top(box) + box.floor) / 2;

function tube(box: StageBox, grow = 0): string {
  const y = top(box) - grow;
  const h = box.floor - top(box) + 2 * grow;
  const r = Math.min(14, h / 2);
  const x = box.x - grow;
  const w = box.w + 2 * grow;
  return `M${x + r} ${y}h${w - 2 * r}a${r} ${r} 0 0 1 ${r} ${r}v${h - 2 * r}a${r} ${r} 0 0 1 ${-r} ${r}h${-(w - 2 * r)}a${r} ${r} 0 0 1 ${-r} ${-r}v${-(h - 2 * r)}a${r} ${r} 0 0 1 ${r} ${-r}Z`;
}

function lamp(pen: Pen, box: StageBox, lit: boolean): void {
  const y = middle(box);
  const x = box.x + 16;
  const w = box.w - 32;
  if (lit) {
    const c = pen.context;
    const glow = c.createLinearGradient(0, top(box), 0, box.floor);
    glow.addColorStop(0, 'rgba(150,110,230,.2)');
    glow.addColorStop(0.5, 'rgba(236,222,255,1)');
    glow.addColorStop(1, 'rgba(150,110,230,.2)');
    pen.within(tube(box), () => {
      c.fillStyle = glow;
      c.fillRect(box.x, top(box), box.w, box.floor - top(box));
    });
    let rays = '';
    for (let i = 0; i < 7; i += 1) {
      const at = x + 8 + (i * (w - 16)) / 6;
      rays += `M${at} ${y - 13}l-2 -6M${at} ${y + 13}l2 6`;
    }
    pen.path(rays, { ink: LAMP, width: 2 });
  }
  pen.rect(x - 6, y - 9, w + 12, 18, { fill: lit ? '#F3EAFF' : '#DDE3E4', ink: INK.ink, width: 1.6, alpha: 0.92 }, 8);
  pen.rect(x, y - 4.5, w, 9, { fill: lit ? GLOW : INK.steel, ink: lit ? LAMP : INK.ink2, width: lit ? 2.6 : 1.6 }, 4.5);
  if (lit) pen.line(x + 6, y, x + w - 6, y, { ink: '#fff', width: 3 });
}

/** Ballast on the tube; its small light is lit with the lamp. */
function ballast(pen: Pen, box: StageBox, lit: boolean): void {
  const x = box.x + box.w - 46;
  pen.rect(x, top(box) - 26, 38, 20, { fill: INK.pump, ink: INK.ink, width: 2.2 }, 4);
  pen.circle(x + 9, top(box) - 16, 3.2, { fill: lit ? '#C9A8FF' : '#6B5A55', ink: INK.ink, width: 1 });
  pen.path(`M${x + 17} ${top(box) - 19}h15M${x + 17} ${top(box) - 13}h15`, { ink: INK.steel, width: 1.6 });
}

/** Shows the lamp dark or lit. */
class Lamp implements Live {
  constructor(
    private readonly lit: Image,
    private readonly box: StageBox,
  ) {}

  update(moment: Moment): void {
    if (!moment.glance) return;
    const on = moment.view !== null && lampShines(moment.view, this.box.id, this.box.spec.lamp_W ?? 0, moment);
    if (on !== this.lit.visible) this.lit.setVisible(on);
  }
}

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [118, 150],
  inHand: [136, 50, 12],
  on: 'block',
  inlet: 'fitting',
  over: 12,
  raise: closedOver,
  tagY: (box, scale) => box.floor + 12 + 10 * scale,
  support(pen, box) {
    block(pen, box.x + 6, box.floor + 12, box.w - 12, -box.floor - 12);
    for (const x of [box.x + 16, box.x + box.w - 28])
      pen.rect(x, box.floor, 12, Math.max(6, Math.min(12, -box.floor)), { fill: INK.steelDark, ink: INK.ink });
  },
  back: (pen, box) => {
    pen.path(tube(box), { fill: INK.back });
  },
  media(pen, box) {
    lamp(pen, box, false);
    ballast(pen, box, false);
  },
  live(kit, box) {
    const water = new ShapedWater(
      kit,
      { id: box.id, x: box.x, w: box.w, level: top(box), floor: box.floor, seed: 47, full: true },
      tube(box),
    );
    const specks = new Specks(
      kit,
      { id: box.id, x: box.x + 8, w: box.w - 16, floor: box.floor + 2, drift: 26, sink: 0 },
      { level: top(box) - 4 },
    );
    const space = { x: box.x - 2, y: top(box) - 30, w: box.w + 4, h: box.floor - top(box) + 34 };
    const show = (lit: boolean): Image =>
      kit.studio.show(
        kit.studio.bake(space, (pen) => {
          lamp(pen, box, lit);
          ballast(pen, box, lit);
        }),
      );
    show(false);
    return [water, specks, new Lamp(show(true).setVisible(false), box)];
  },
  front(pen, box) {
    const outer = tube(box, 7);
    pen.between(outer, tube(box), () => {
      pen.path(outer, { fill: INK.steel });
      pen.hatch(outer, box.x - 8, top(box) - 8, box.w + 16, box.floor - top(box) + 16, 7, 0.42);
    });
    pen.path(outer, { ink: INK.ink, width: 2.6 });
    pen.path(tube(box), { ink: INK.ink, width: 2 });
    for (const x of [box.x - 14, box.x + box.w + 2])
      pen.rect(x, top(box) + 4, 12, box.floor - top(box) - 8, { fill: INK.steelDark, ink: INK.ink }, 3);
  },
  waterPath: (box) => tube(box),
};
