// A drawing that changes in steps, such as sludge that rises: each step is drawn when it is first shown, and kept.
import type { GameObjects, Textures } from 'phaser';
import type { Pen } from './pen';
import type { Rect, Studio } from './studio';

export class Stepped {
  readonly image: GameObjects.Image;
  private readonly frames = new Map<number, Textures.Frame>();
  private shown: number | null = null;

  /** Takes its place in the picture now, over all that was put there before. */
  constructor(
    private readonly studio: Studio,
    private readonly space: Rect,
    private readonly draw: (pen: Pen, step: number) => void,
  ) {
    this.image = studio.show(studio.bake(space, () => undefined));
  }

  /** Shows a step; nothing happens while it stays the same. */
  show(step: number): void {
    if (step === this.shown) return;
    this.shown = step;
    // all are as large as each other, so nothing need be measured again
    this.image.setFrame(this.frames.get(step) ?? this.make(step), false, false);
  }

  private make(step: number): Textures.Frame {
    const frame = this.studio.frameOf(this.studio.bake(this.space, (pen) => this.draw(pen, step)));
    this.frames.set(step, frame);
    return frame;
  }
}
