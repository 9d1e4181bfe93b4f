// Return pump: stands in the lowest tank; its lamp is lit while water moves.
import type { GameObjects } from 'phaser';
import { INK } from '../draw/palette';
import { pump as pumpInk } from '../draw/parts';
import type { Kit } from '../kit';
import type { PumpBox, StageBox } from '../layout';
import type { Live, Moment } from '../moment';

class Lamp implements Live {
  constructor(private readonly on: GameObjects.Image, private readonly host: string) {}

  update(moment: Moment): void {
    const runs = moment.read(this.host, 'flow_m3_d', 0) > 0;
    if (runs !== this.on.visible) this.on.setVisible(runs);
  }
}

/** Puts the pump and its riser into the tank that holds it. */
export function returnPump(kit: Kit, box: PumpBox, host: StageBox): Live[] {
  const space = { x: host.x - 2, y: box.y - 60, w: host.w + 4, h: 90 };
  const riser = `M${box.x + 18} ${box.y - 26}V${box.y - 46}H${host.x - 2}`;
  const draw = (on: boolean): GameObjects.Image => kit.studio.show(kit.studio.bake(space, (pen) => {
    pen.path(riser, { ink: INK.ink, width: 13, cap: 'butt' });
    pen.path(riser, { ink: INK.pipe, width: 9, cap: 'butt' });
    pen.at(box.x, box.y, () => pumpInk(pen, on));
  }));
  draw(false);
  return [new Lamp(draw(true).setVisible(false), host.id)];
}
