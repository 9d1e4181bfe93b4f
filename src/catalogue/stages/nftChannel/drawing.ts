// NFT channel: a long covered channel that slopes a little; a film of water runs past the root mats of plants that stand in its holes.
import type { Place } from '../../../page/picture/kit/crops';
import { INK } from '../../../page/picture/kit/palette';
import { table } from '../../../page/picture/kit/parts';
import type { Pen } from '../../../page/picture/kit/pen';
import type { Dials } from '../../../page/picture/kit/dials';
import type { Kit, StageDrawing } from '../../../page/picture/kit/kit';
import type { StageBox } from '../../../page/picture/kit/boxes';
import type { Live, Moment } from '../../../page/picture/kit/moment';
import { Specks } from '../../../page/picture/kit/solids';
import { BandColour } from '../../../page/picture/kit/bandColour';
import { dashSpeed } from '../../../page/picture/kit/flow';
import type { Image } from '../../../page/picture/kit/studio';

/** A film of a centimetre could not be seen: channels are drawn this deep under the level and this high over it, world units. */
const CHANNEL_UNDER = 26;
const CHANNEL_OVER = 34;
const PLACE = 62;
/** Fall of the channel from end to end, and depth of the film, as drawn. */
const SLOPE = 12;
const FILM = 8;
const FLOOR = 5;
const DASHES = 12;

const bottom = (box: StageBox, u: number): number => box.level + CHANNEL_UNDER - SLOPE - FLOOR + SLOPE * u;
const cover = (box: StageBox, u: number): number => box.level - CHANNEL_OVER + 12 + SLOPE * u;

function plantsAlong(box: StageBox): Place[] {
  const count = Math.max(4, Math.min(8, Math.round(box.w / PLACE)));
  return Array.from({ length: count }, (_, i) => {
    const u = (i + 0.5) / count;
    return { x: box.x + box.w * u, y: cover(box, u) + 11, rootX: box.x + box.w * u, rootY: cover(box, u) + 8, lean: 0 };
  });
}

function filmPath(box: StageBox, from: number, to: number): string {
  return `M${box.x + box.w * from} ${bottom(box, from) - FILM}L${box.x + box.w * to} ${bottom(box, to) - FILM}V${bottom(box, to)}L${box.x + box.w * from} ${bottom(box, from)}Z`;
}

/** Inside of the channel, dim under its cover. */
function hollow(pen: Pen, box: StageBox): void {
  pen.path(`M${box.x} ${cover(box, 0)}L${box.x + box.w} ${cover(box, 1)}V${bottom(box, 1)}L${box.x} ${bottom(box, 0)}Z`, {
    fill: '#E4E6DC',
  });
  pen.path(`M${box.x} ${cover(box, 0)}L${box.x + box.w} ${cover(box, 1)}v10L${box.x} ${cover(box, 0) + 10}Z`, {
    fill: '#5B5A4A',
    alpha: 0.14,
  });
}

/** The film: two pieces that blend from the inlet to the outlet, with strokes that run down the slope. */
class Film implements Live {
  private readonly pieces: Image[];
  private readonly dashes: Image[] = [];
  private readonly colours = [new BandColour(), new BandColour(), new BandColour()];
  private readonly bands: number[] = [];
  private readonly dials: Dials;
  private readonly flow: number;
  private offset = 0;
  private flowing: boolean | null = null;

  constructor(
    kit: Kit,
    private readonly box: StageBox,
  ) {
    this.dials = kit.dials;
    this.flow = kit.dials.want(box.id, 'flow_m3_d', 0);
    for (let i = 0; i < 3; i += 1) this.bands.push(kit.dials.water(box.id, i));
    this.pieces = [0, 0.5].map((from) => {
      const space = { x: box.x + box.w * from, y: bottom(box, from) - FILM - 1, w: box.w / 2, h: FILM + SLOPE + 2 };
      return kit.studio.show(kit.studio.bake(space, (pen) => pen.path(filmPath(box, from, from + 0.5), { fill: '#fff' })));
    });
    this.paint();
    kit.studio.show(
      kit.studio.bake({ x: box.x, y: bottom(box, 0) - FILM - 4, w: box.w, h: FILM + SLOPE + 8 }, (pen) => {
        pen.path(`M${box.x} ${bottom(box, 0) - FILM + 2.2}L${box.x + box.w} ${bottom(box, 1) - FILM + 2.2}`, {
          ink: '#fff',
          width: 2.4,
          alpha: 0.9,
        });
        pen.path(`M${box.x} ${bottom(box, 0) - FILM}L${box.x + box.w} ${bottom(box, 1) - FILM}`, { ink: INK.ink, width: 1.5 });
      }),
    );
    const turn = Math.atan2(SLOPE, box.w);
    for (let i = 0; i < DASHES; i += 1) this.dashes.push(kit.sheets.bits.image('film dash').setRotation(turn).setVisible(false));
  }

  update(moment: Moment): void {
    const { box } = this;
    let changed = false;
    for (let i = 0; i < 3; i += 1) if (this.colours[i].towards(this.dials.bands[this.bands[i]], moment)) changed = true;
    if (changed) this.paint();
    const speed = dashSpeed(this.dials.at[this.flow]);
    const flowing = speed > 0;
    if (flowing !== this.flowing) for (let i = 0; i < DASHES; i += 1) this.dashes[i].setVisible(flowing);
    const first = this.flowing === null;
    this.flowing = flowing;
    if (!flowing || (!moment.flowing && !first && this.offset > 0)) return;
    this.offset += (speed * moment.dt) / box.w;
    for (let i = 0; i < DASHES; i += 1) {
      const u = (i / DASHES + this.offset) % 1;
      this.dashes[i].x = box.x + 8 + (box.w - 16) * u;
      this.dashes[i].y = bottom(box, u) - FILM * 0.42;
    }
  }

  private paint(): void {
    const [a, b, c] = this.colours;
    this.pieces[0].setTint(a.tint, b.tint, a.tint, b.tint);
    this.pieces[1].setTint(b.tint, c.tint, b.tint, c.tint);
  }
}

/** Cover with its holes, between the roots and the leaves. */
function lid(pen: Pen, box: StageBox): void {
  const places = plantsAlong(box);
  const half = 12;
  let from = box.x - 7;
  for (const end of [...places.map((place) => place.x), null]) {
    const to = end === null ? box.x + box.w + 7 : end - half;
    const [a, b] = [(from - box.x) / box.w, (to - box.x) / box.w];
    pen.path(`M${from} ${cover(box, a) - 6}L${to} ${cover(box, b) - 6}V${cover(box, b)}L${from} ${cover(box, a)}Z`, {
      fill: INK.white,
      ink: INK.ink,
      width: 2,
    });
    if (end !== null) from = end + half;
  }
}

export const drawing: StageDrawing = {
  place: 'loop',
  widths: [260, 440],
  inHand: [300, 26, 34],
  on: 'table',
  inlet: 'side',
  lives: 'plants',
  over: 0,
  raise(box) {
    box.rim = box.level - CHANNEL_OVER;
    box.floor = box.level + CHANNEL_UNDER;
  },
  tagY: (box, scale) => box.floor + 14 * scale,
  support(pen, box) {
    const y = box.floor + 4;
    if (-y > 24) table(pen, box.x - 10, y, box.w + 20, box.w > 320 ? 4 : 3);
  },
  back: hollow,
  media: lid,
  live(kit, box) {
    const film = new Film(kit, box);
    const specks = new Specks(
      kit,
      { id: box.id, x: box.x, w: box.w, floor: box.level + CHANNEL_UNDER - FLOOR, drift: 16, sink: 0 },
      { level: bottom(box, 0.5) - 22 },
    );
    const places = plantsAlong(box);
    const crop = kit.crop(
      box.id,
      places,
      { scale: Math.min(0.86, box.w / places.length / 70), depth: bottom(box, 0) - cover(box, 0) - 3, wide: 1.5 },
      () => {
        kit.studio.show(kit.studio.bake({ x: box.x - 10, y: box.rim, w: box.w + 20, h: CHANNEL_OVER + SLOPE }, (pen) => lid(pen, box)));
      },
    );
    return [film, specks, crop];
  },
  front(pen, box) {
    const [x, r] = [box.x, box.x + box.w];
    const d = `M${x - 7} ${cover(box, 0) - 6}H${x}V${bottom(box, 0)}L${r} ${bottom(box, 1)}V${cover(box, 1) - 6}H${r + 7}V${bottom(box, 1) + FLOOR + 1}L${x - 7} ${bottom(box, 0) + FLOOR}Z`;
    pen.path(d, { fill: INK.white });
    pen.hatch(d, x - 8, box.rim, box.w + 16, box.floor - box.rim + 8, 7, 0.42);
    pen.path(d, { ink: INK.ink, width: 2.4 });
    // wedges that give it its slope
    pen.path(`M${x - 4} ${bottom(box, 0) + FLOOR + 1}L${r} ${bottom(box, 1) + FLOOR + 1}V${box.floor + 5}H${x - 4}Z`, {
      fill: INK.wood,
      ink: INK.ink,
      width: 1.6,
    });
  },
  waterPath: (box) => filmPath(box, 0, 1),
};
