// A close look at the roots of the bed that is selected: a round glass under its table, or in the soil where it stands low, with a strand
// pattern that follows mat and health.
import type { GameObjects } from 'phaser';
import { INK, mix } from '../kit/palette';
import type { Pen } from '../kit/pen';
import { roots } from './rootsArt';
import { fouling } from './crop';
import type { Kit } from '../kit/kit';
import type { StageBox } from '../kit/boxes';
import type { Live, Moment } from '../kit/moment';

const STEPS = 8;
const ZOOM = 1.5;
const MOST_RADIUS = 66;
const LEAST_RADIUS = 34;
const BURIED_RADIUS = 44;

/** Where the lines of the glass meet: among the roots. */
const rootsAt = (box: StageBox): number => Math.min(box.level + 34, box.floor - 8);

function glass(pen: Pen, x: number, y: number, r: number, foul: number, box: StageBox): void {
  const circle = `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
  pen.path(`M${x - r * 0.7} ${y - r * 0.72}L${x - 12} ${rootsAt(box)}M${x + r * 0.7} ${y - r * 0.72}L${x + 12} ${rootsAt(box)}`, {
    ink: INK.ink,
    width: 1.6,
    dash: [5, 5],
  });
  pen.path(circle, { fill: mix('#DFF3F7', '#E8DEC6', foul) });
  pen.within(circle, () => pen.at(x, y - r * 0.94, () => roots(pen, foul, 5), 0, (ZOOM * r) / MOST_RADIUS));
  pen.path(circle, { ink: INK.white, width: 9 });
  pen.path(circle, { ink: INK.ink, width: 2.6 });
  pen.path(`M${x - r * 0.72} ${y - r * 0.3}a${r * 0.8} ${r * 0.8} 0 0 1 ${r * 0.42} ${-r * 0.46}`, { ink: '#fff', width: 4 });
}

/** The glass of one bed; it is drawn when it is first wanted. */
export class RootLoupe implements Live {
  private readonly images: (GameObjects.Image | null)[] = Array.from({ length: STEPS + 1 }, () => null);
  private readonly radius: number;
  private readonly y: number;
  private readonly x: number;
  private readonly mat: number;
  private readonly health: number;
  private readonly rot: number;
  private shown = -1;
  /** whether the bed is selected */
  open = false;

  /** @param lowest how deep a large glass may reach that hangs under the bed; null: one as small as leaves the picture alone */
  constructor(
    private readonly kit: Kit,
    private readonly box: StageBox,
    lowest: number | null = null,
  ) {
    this.mat = kit.dials.want(box.id, 'rootMat_g_m2', 0);
    this.health = kit.dials.want(box.id, 'rootHealth', 1);
    this.rot = kit.dials.want(box.id, 'rootRot', 0);
    const under = Math.min(MOST_RADIUS, (-box.floor - 54) / 2);
    const buried = under < LEAST_RADIUS;
    this.x = box.x + box.w * (lowest !== null ? 0.12 : 0.25);
    this.radius =
      lowest !== null ? Math.max(LEAST_RADIUS, Math.min(box.w * 0.3, (lowest - box.floor - 12) / 2)) : buried ? BURIED_RADIUS : under;
    this.y = lowest !== null ? box.floor + 12 + this.radius : buried ? this.radius + 14 : -this.radius - 10;
  }

  /** What the glass takes up from left to right. */
  get span(): { x: number; half: number } {
    return { x: this.x, half: this.radius };
  }

  update(moment: Moment): void {
    const wanted = this.open && moment.view !== null;
    const { at } = this.kit.dials;
    const step = wanted ? Math.round(fouling(at[this.mat], at[this.health], at[this.rot]) * STEPS) : -1;
    if (step === this.shown) return;
    if (this.shown >= 0) this.images[this.shown]?.setVisible(false);
    this.shown = step;
    if (step < 0) return;
    const ready = this.images[step] ?? this.draw(step);
    this.images[step] = ready;
    ready.setVisible(true);
  }

  private draw(step: number): GameObjects.Image {
    const { box, radius, x, y } = this;
    const space = { x: x - radius - 8, y: rootsAt(box) - 4, w: 2 * radius + 16, h: y + radius + 12 - rootsAt(box) };
    return this.kit.studio.show(this.kit.studio.bake(space, (pen) => glass(pen, x, y, radius, step / STEPS, box)));
  }
}
