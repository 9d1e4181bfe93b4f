// Handles as they are drawn: a round grip with two arrows at the selected stage, and the new size in print while it is pulled.
import type { GameObjects } from 'phaser';
import { sizeFormat } from '../../state/build/sizing';
import { withUnit } from '../../../words/units';
import { INK } from '../kit/palette';
import type { Pen } from '../kit/pen';
import type { Handle, Pulled } from '../scene/handles';
import type { Studio } from '../kit/studio';

/** Radius of a grip and its distance to the printed size, page pixels. */
const GRIP_px = 15;
const OVER_px = 40;
const TEXT_px = 17;

function grip(pen: Pen, handle: Handle, r: number, held: boolean): void {
  pen.circle(handle.x + r * 0.12, handle.y + r * 0.16, r, { fill: INK.shadow, alpha: 0.28 });
  pen.circle(handle.x, handle.y, r, { fill: held ? INK.blue : INK.white, ink: INK.blue, width: r * 0.22 });
  const ink = { ink: held ? INK.white : INK.blue, width: r * 0.2 };
  pen.at(
    handle.x,
    handle.y,
    () => pen.path('M-.62 0H.62M-.34 -.3L-.64 0L-.34 .3M.34 -.3L.64 0L.34 .3', { ...ink, width: 0.2 }),
    handle.pull === 'along' ? 0 : Math.PI / 2,
    r,
  );
}

/** A size as it is read. */
export function sizeWords({ handle: { offer }, value }: Pulled): string {
  const { variable, factor } = sizeFormat(offer);
  return withUnit(variable, factor * value);
}

interface Drawn {
  handle: Handle;
  free: GameObjects.Image;
  held: GameObjects.Image;
}

/** The handles of the stage that is selected; each is drawn when it is first shown. */
export class HandleMarks {
  private readonly drawn: Drawn[] = [];
  private readonly prints = new Map<string, GameObjects.Image>();
  private selected: string | null = null;
  private pulled: Pulled | null = null;

  constructor(
    private readonly studio: Studio,
    private readonly handles: readonly Handle[],
    private readonly width: number,
  ) {}

  update(selected: string | null, pulled: Pulled | null): void {
    if (selected === this.selected && pulled === this.pulled) return;
    if (selected !== this.selected) this.drawOf(selected);
    this.selected = selected;
    this.pulled = pulled;
    for (const { handle, free, held } of this.drawn) {
      const here = handle.offer.stage === selected;
      const mine = pulled?.handle === handle;
      free.setVisible(here && !mine);
      held.setVisible(mine);
      if (mine) held.setPosition(free.x + pulled.dx, free.y + pulled.dy);
    }
    for (const print of this.prints.values()) print.setVisible(false);
    if (pulled !== null) this.print(pulled);
  }

  private drawOf(selected: string | null): void {
    const r = GRIP_px / this.studio.cssScale;
    for (const handle of this.handles) {
      if (handle.offer.stage !== selected || this.drawn.some((one) => one.handle === handle)) continue;
      const space = { x: handle.x - 1.3 * r, y: handle.y - 1.3 * r, w: 2.6 * r, h: 2.6 * r };
      const draw = (held: boolean): GameObjects.Image =>
        this.studio.show(this.studio.bake(space, (pen) => grip(pen, handle, r, held))).setVisible(false);
      this.drawn.push({ handle, free: draw(false), held: draw(true) });
    }
  }

  /** Each size is drawn when it is first come to. */
  private print(pulled: Pulled): void {
    const words = sizeWords(pulled);
    const { x, y } = pulled.handle;
    const px = 1 / this.studio.cssScale;
    const [w, h] = [(TEXT_px * 0.6 * words.length + 20) * px, TEXT_px * 1.7 * px];
    const key = `${pulled.handle.offer.size} ${words}`;
    let image = this.prints.get(key);
    if (image === undefined) {
      image = this.studio.show(
        this.studio.bake({ x: x - w / 2 - 3 * px, y: y - h / 2 - 3 * px, w: w + 8 * px, h: h + 9 * px }, (pen) => {
          pen.rect(x - w / 2 + 2 * px, y - h / 2 + 3 * px, w, h, { fill: INK.shadow, alpha: 0.28 }, 6 * px);
          pen.rect(x - w / 2, y - h / 2, w, h, { fill: INK.white, ink: INK.blue, width: 2.4 * px }, 6 * px);
          pen.text(words, x, y + TEXT_px * 0.36 * px, { size: TEXT_px * px, weight: 720 });
        }),
      );
      this.prints.set(key, image);
    }
    const from = x - w / 2 - 3 * px;
    const over = pulled.handle.pull === 'stand' ? 0 : -OVER_px * px;
    const aside = pulled.handle.pull === 'stand' ? w / 2 + 26 * px : 0;
    const left = Math.max(2, Math.min(this.width - w - 8 * px, from + pulled.dx + aside));
    image.setPosition(left, y - h / 2 - 3 * px + pulled.dy + over).setVisible(true);
  }
}
