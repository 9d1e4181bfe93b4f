// Fine-solids filter: water sinks through a mat and pebbles, then rises in a side channel to the overflow.
import { INK } from '../../../page/picture/kit/palette';
import { arrowHead, block, pebbles, tankCut } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import { SludgeGas } from '../../../page/picture/kit/gas';
import { type Kit, type StageDrawing } from '../../../page/picture/kit/kit';
import { type StageBox, WALL } from '../../../page/picture/kit/boxes';
import type { Live } from '../../../page/picture/kit/moment';
import { MatDirt, Specks } from '../../../page/picture/kit/solids';
import { StraightWater } from '../../../page/picture/kit/water';

const CHANNEL = 26;

const matTop = (box: StageBox): number => box.level + Math.min(30, (box.floor - box.level) * 0.2);
const matHeight = (box: StageBox): number => (box.floor - box.level) * 0.32;

function media(pen: Pen, box: StageBox): void {
  const w = box.w - CHANNEL - 1;
  const y = matTop(box);
  const h = matHeight(box);
  pen.rect(box.x + 1, y, w, h, { fill: INK.mat });
  let weave = '';
  for (let row = y + 2; row < y + h; row += 4) {
    weave += `M${box.x + 1} ${row}`;
    for (let x = 0; x < w; x += 8) weave += 'q2 -3 4 0t4 0';
  }
  pen.within(`M${box.x + 1} ${y}h${w}v${h}h${-w}Z`, () => pen.path(weave, { ink: INK.matLight, width: 1.5 }));
  pen.rect(box.x + 1, y, w, h, { ink: INK.ink, width: 1.8 });
  const bed = y + h + 9;
  pebbles(pen, box.x + 1, bed, w - 1, box.floor - bed - 13, 9, 8.4);
  pen.path(`M${box.x} ${box.floor - 11}h${w}M${box.x} ${bed - 3}h${w}`, { ink: INK.ink, width: 1.8, dash: [6, 5] });
}

function parts(kit: Kit, box: StageBox): Live[] {
  const inner = box.w - CHANNEL;
  const over = new StraightWater(kit, {
    id: box.id,
    x: box.x,
    w: inner,
    rim: box.rim,
    level: box.level,
    floor: box.floor,
    seed: 12,
    sign: inner * 0.7,
  });
  const channel = new StraightWater(kit, {
    id: box.id,
    x: box.x + inner,
    w: CHANNEL,
    rim: box.rim,
    level: box.level,
    floor: box.floor,
    seed: 13,
    behind: true,
  });
  kit.studio.show(
    kit.studio.bake({ x: box.x, y: matTop(box) - 3, w: box.w - CHANNEL, h: box.floor - matTop(box) }, (pen) => media(pen, box)),
  );
  const dirt = new MatDirt(kit, box.id, box.x + 2, matTop(box), inner - 4, matHeight(box));
  const specks = new Specks(kit, { id: box.id, x: box.x, w: inner, floor: matTop(box) + 4, drift: 4, sink: 4 }, over);
  const gas = new SludgeGas(kit, box.id, box.x + inner / 2, inner * 0.3, { top: matTop(box) }, over);
  return [over, channel, dirt, specks, gas];
}

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [100, 120],
  inHand: [112, 168, 24],
  on: 'block',
  inlet: 'side',
  support(pen, box) {
    block(pen, box.x - 12, box.floor + WALL, box.w + 24, -box.floor - WALL);
  },
  media,
  live: parts,
  front(pen, box) {
    const x = box.x + box.w - CHANNEL;
    pen.path(`M${x} ${box.rim}V${box.floor - 10}`, { ink: INK.ink, width: 2.6 });
    arrowHead(pen, x + 13, (box.level + box.floor) / 2, -Math.PI / 2, 0.62);
    tankCut(pen, box.x, box.rim, box.w, box.floor - box.rim);
  },
  waterPath: (box) => `M${box.x} ${box.level}h${box.w}V${box.floor}h${-box.w}Z`,
};
