// Base-dosing tank on a small table over the tank it drips into; it drips while base is dosed.
import { INK } from '../../../page/picture/kit/palette';
import { tankCut } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import type { Dials } from '../../../page/picture/kit/dials';
import type { Kit, SideDrawing } from '../../../page/picture/kit/kit';
import type { SideBox, StageBox } from '../../../page/picture/kit/boxes';
import type { Live, Moment } from '../../../page/picture/kit/moment';
import type { Image } from '../../../page/picture/kit/studio';

const WALL = 5;
const DROPS = 3;
/** Doses are read in steps of this; less is none. */
const LEAST_DOSE_g_d = 0.01;
/** Fall of a drop, units per second at first, and how far apart drops follow, s. */
const PERIOD_s = 1.5;

function ink(pen: Pen, box: SideBox, host: StageBox): void {
  const h = box.floor - box.rim;
  const middle = box.x + box.w / 2;
  const y = box.floor + 14;
  for (const x of [middle - 46, middle + 38]) pen.rect(x, y, 8, Math.max(6, Math.min(host.rim, 0) - y), { fill: INK.wood, ink: INK.ink });
  pen.rect(middle - 52, y, 104, 8, { fill: INK.wood, ink: INK.ink, width: 2.2 });
  pen.rect(box.x, box.rim, box.w, h, { fill: INK.white });
  const filled = `M${box.x} ${box.level}h${box.w}V${box.floor}h${-box.w}Z`;
  pen.path(filled, { fill: INK.base });
  pen.hatch(filled, box.x, box.level, box.w, box.floor - box.level, 9, 0.28, -1);
  pen.line(box.x, box.level, box.x + box.w, box.level, { ink: INK.ink, width: 1.6 });
  tankCut(pen, box.x, box.rim, box.w, h, WALL);
  pen.rect(middle - 6, box.floor + WALL, 12, 9, { fill: INK.steel, ink: INK.ink, width: 1.8 }, 2);
  pen.path(`M${middle} ${y + 8}v6`, { ink: INK.ink, width: 4 });
}

class Drip implements Live {
  private readonly drops: Image[] = [];
  private readonly dials: Dials;
  private readonly dose: number;
  private dosing = false;

  constructor(
    kit: Kit,
    x: number,
    private readonly top: number,
    private readonly host: StageBox,
  ) {
    this.dials = kit.dials;
    this.dose = kit.dials.inSteps(host.id, 'dose_g_d', 0, LEAST_DOSE_g_d);
    for (let i = 0; i < DROPS; i += 1) this.drops.push(kit.sheets.bits.image('drop', x, top).setVisible(false));
  }

  update(moment: Moment): void {
    const dosing = this.dials.steps[this.dose] > 0;
    if (dosing !== this.dosing) {
      this.dosing = dosing;
      for (let i = 0; i < DROPS; i += 1) this.drops[i].setVisible(dosing);
    }
    if (!dosing) return;
    const fall = this.host.level - this.top - 12;
    for (let i = 0; i < DROPS; i += 1) {
      const p = moment.moving ? (moment.gasTime / PERIOD_s + i / DROPS) % 1 : (i + 0.3) / DROPS;
      this.drops[i].y = this.top + fall * p * p;
    }
  }
}

export const drawing: SideDrawing = {
  place: 'overRim',
  size: { w: 66, rim: -60, level: -42, floor: 0 },
  live(kit, box, host) {
    const middle = box.x + box.w / 2;
    const space = { x: middle - 60, y: box.rim - 10, w: 120, h: Math.max(4, host.rim) - box.rim + 20 };
    const drip = new Drip(kit, middle, box.floor + 28, host);
    kit.studio.show(kit.studio.bake(space, (pen) => ink(pen, box, host)));
    return [drip];
  },
};
