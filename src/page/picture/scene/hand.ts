// The part in the hand: a picture of it that follows the pointer, slightly tilted, over everything else.
import type { GameObjects } from 'phaser';
import type { Drag } from '../../state/common/state';
import { INK, WATER_BANDS } from '../kit/palette';
import { tankBack } from '../kit/parts';
import { spaceOf } from '../kit/kit';
import type { StageBox } from '../kit/boxes';
import { drawingOf } from './drawingOf';
import type { Studio } from '../kit/studio';
import { light } from '../kit/water';
import type { StageSpec } from '../kit/terms';

const TILT = 0.07;
const PALE = WATER_BANDS[1].toString(16).padStart(6, '0');

function boxOf(spec: StageSpec): StageBox {
  const [w, depth, free] = drawingOf(spec.kind).inHand;
  return {
    id: spec.id,
    kind: spec.kind,
    spec,
    index: 0,
    x: -w / 2,
    w,
    rim: -depth / 2 - free,
    level: -depth / 2,
    floor: depth / 2,
    brim: -depth / 2 - free,
    stand: 'block',
    entry: 'above',
    level_cm: 0,
    fall_cm: 0,
  };
}

/** Draws the part as it hangs in the hand. */
export class Hand {
  private image: GameObjects.Image | null = null;
  private held: string | null = null;

  constructor(private readonly studio: Studio) {}

  /** @param x world units */
  update(drag: Drag | null, x: number, y: number): void {
    if (drag === null) {
      this.image?.setVisible(false);
      return;
    }
    if (this.held !== drag.stage.id || this.image === null) {
      this.image?.destroy();
      this.image = this.draw(drag.stage);
      this.held = drag.stage.id;
    }
    this.image.setVisible(true).setPosition(x, y);
  }

  private draw(spec: StageSpec): GameObjects.Image {
    const box = boxOf(spec);
    const drawing = drawingOf(spec.kind);
    const upright = spaceOf(box);
    const lean = Math.sin(TILT);
    const space = {
      x: upright.x - upright.h * lean,
      y: upright.y - upright.w * lean,
      w: upright.w + 2 * upright.h * lean,
      h: upright.h + 2 * upright.w * lean,
    };
    const plate = this.studio.bake(space, (pen) =>
      pen.at(
        0,
        0,
        () => {
          if (drawing.lives !== 'leaningPlants')
            pen.rect(box.x - 4, box.rim + 8, box.w + 24, box.floor - box.rim + 12, { fill: INK.shadow, alpha: 0.2 }, 10);
          if (drawing.back) drawing.back(pen, box);
          else tankBack(pen, box.x, box.rim, box.w, box.floor - box.rim);
          const water = drawing.waterPath(box);
          pen.path(water, { fill: `#${PALE}` });
          pen.within(water, () => light(pen, box.x, box.level, box.w, box.floor - box.level, 5));
          pen.line(box.x, box.level, box.x + box.w, box.level, { ink: INK.ink, width: 1.5 });
          drawing.media?.(pen, box);
          drawing.front(pen, box);
        },
        TILT,
      ),
    );
    return this.studio
      .show(plate)
      .setOrigin(-space.x / space.w, -space.y / space.h)
      .setDepth(10);
  }
}
