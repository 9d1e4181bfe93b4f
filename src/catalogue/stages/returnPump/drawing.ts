// Return pump: stands in the lowest tank; its lamp is lit while water moves. A pump that has run dry is drawn with air in it, and says so.
import { INK } from '../../../page/picture/kit/palette';
import { pump as pumpInk } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import type { Dials } from '../../../page/picture/kit/dials';
import type { Kit, PumpDrawing } from '../../../page/picture/kit/kit';
import type { PumpBox } from '../../../page/picture/kit/boxes';
import type { Live, Moment } from '../../../page/picture/kit/moment';
import { RedCard } from '../../../page/picture/kit/redCard';
import type { Image } from '../../../page/picture/kit/studio';

class Lamp implements Live {
  private readonly flow: number;

  private readonly dials: Dials;

  constructor(
    private readonly kit: Kit,
    private readonly on: Image,
    private readonly air: Image,
    private readonly card: RedCard,
    private readonly host: string,
  ) {
    this.dials = kit.dials;
    this.flow = kit.dials.want(host, 'flow_m3_d', 0);
  }

  update(moment: Moment): void {
    if (!moment.glance) return;
    const runs = this.dials.at[this.flow] > 0;
    if (runs !== this.on.visible) this.on.setVisible(runs);
    const dry = !runs && this.kit.drewAir(this.host, moment);
    if (dry !== this.air.visible) this.air.setVisible(dry);
    this.card.show(dry);
  }
}

/** Air that the pump draws: a funnel from the surface into its mouth, and pockets of air in the riser. */
function air(pen: Pen, box: PumpBox): void {
  const bubble = (x: number, y: number, r: number): void => {
    pen.circle(x, y, r, { fill: '#fff', ink: INK.ink, width: 1.3 });
    pen.path(`M${x - r * 0.55} ${y - r * 0.1}A${r * 0.6} ${r * 0.6} 0 0 1 ${x} ${y - r * 0.6}`, { ink: INK.blue, width: 0.9, alpha: 0.5 });
  };
  const x = box.x - 30;
  pen.path(
    `M${x - 24} ${box.y - 20}Q${x - 7} ${box.y - 16} ${x - 2} ${box.y + 12}M${x + 10} ${box.y - 24}Q${x + 3} ${box.y - 14} ${x + 2} ${box.y + 12}`,
    { ink: INK.ink, width: 1.8 },
  );
  pen.path(`M${x - 16} ${box.y - 13}q9 6 21 1M${x - 9} ${box.y - 4}q6 4 12 0`, { ink: INK.ink, width: 1.3 });
  bubble(x + 3, box.y + 9, 3.4);
  bubble(x - 4, box.y + 15, 2.6);
  bubble(box.x - 2, box.y + 1, 6);
  bubble(box.x - 9, box.y - 4, 3);
  bubble(box.x + 18, box.y - 24, 4);
  bubble(box.x + 18, box.y - 36, 4.6);
  bubble(box.x + 12, box.y - 46, 4);
  bubble(box.x - 2, box.y - 46, 3.4);
}

export const drawing: PumpDrawing = {
  place: 'inTank',
  outline: { x: -36, y: -38, w: 72, h: 68 },
  live(kit, box, host, width) {
    const space = { x: host.x - 2, y: box.y - 60, w: host.w + 4, h: 90 };
    const riser = `M${box.x + 18} ${box.y - 26}V${box.y - 46}H${host.x - 2}`;
    const draw = (on: boolean): Image =>
      kit.studio.show(
        kit.studio.bake(space, (pen) => {
          pen.path(riser, { ink: INK.ink, width: 13, cap: 'butt' });
          pen.path(riser, { ink: INK.pipe, width: 9, cap: 'butt' });
          pen.at(box.x, box.y, () => pumpInk(pen, on));
        }),
      );
    draw(false);
    const lit = draw(true).setVisible(false);
    const dry = kit.studio.show(kit.studio.bake(space, (pen) => air(pen, box))).setVisible(false);
    const card = new RedCard(kit.studio, 'stage.returnPump.drewAir', {
      x: box.x - 24,
      y: box.y - 14,
      rise: Math.max(46, box.y - 14 - (host.level + host.floor) / 2 + 44),
      width,
      shift: -170,
    });
    return [new Lamp(kit, lit, dry, card, host.id)];
  },
};
