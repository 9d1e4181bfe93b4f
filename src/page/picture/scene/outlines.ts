// The dashed outline of what is selected.
import type { GameObjects } from 'phaser';
import { INK } from '../kit/palette';
import type { Rect, Studio } from '../kit/studio';

export class Outlines {
  private readonly drawn = new Map<string, GameObjects.Image>();
  private selected: string | null = null;
  private lifted = 0;

  /** @param rectOf what a stage takes, world units; null where it is not in the picture */
  constructor(
    private readonly studio: Studio,
    private readonly rectOf: (id: string) => Rect | null,
  ) {}

  /** Outlines this stage only; drawn when it is asked for first. */
  select(selected: string | null): void {
    if (selected === this.selected) return;
    this.selected = selected;
    for (const [id, image] of this.drawn) if (image.visible !== (id === selected)) image.setVisible(id === selected);
    if (selected === null || this.drawn.has(selected)) return;
    const rect = this.rectOf(selected);
    if (rect === null) return;
    const around = { x: rect.x - 4, y: rect.y - 4, w: rect.w + 8, h: rect.h + 8 };
    const baked = this.studio.bake(around, (pen) => {
      pen.rect(rect.x, rect.y, rect.w, rect.h, { ink: INK.blue, width: 4.5, dash: [16, 9] }, 12);
    });
    this.drawn.set(selected, this.studio.show(baked));
  }

  /** The outline goes with the stand that is pulled. @param dy how far it has been pulled, world units */
  lift(dy: number): void {
    if (dy === this.lifted || this.selected === null) return;
    const image = this.drawn.get(this.selected);
    if (image !== undefined) image.y += dy - this.lifted;
    this.lifted = dy;
  }
}
