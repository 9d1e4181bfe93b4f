// Marks of the building hand: level lines, heights, falls from stage to stage, and the gaps a part can go into.
import type { GameObjects } from 'phaser';
import type { Drag } from '../../state/common/state';
import { say } from '../../../words/say';
import { withUnit } from '../../../words/units';
import { INK } from '../kit/palette';
import { LEAST_TEXT_px, type Pen } from '../kit/pen';
import type { GapBox } from '../scene/gaps';
import { BAR_UNDER_RIM } from '../kit/shapes';
import type { StageBox } from '../kit/boxes';
import { drawingOf } from '../scene/drawingOf';
import type { WorldLayout } from '../scene/layout';
import { steppedTags } from '../scene/positions';
import { OVER_RIM } from '../water/plumbing';
import type { Studio } from '../kit/studio';

/** Mean width of a letter as a share of its height. */
const LETTER = 0.56;

/** Height of a tag as a share of its letters'. */
const TAG_HIGH = 1.6;
/** A level and a fall in words. */
export const levelWords = (box: StageBox): string => withUnit('height_cm', box.level_cm);
export const fallWords = (fall_cm: number): string =>
  say(fall_cm > 0 ? 'world.falls' : 'world.rises', { height: withUnit('height_cm', Math.abs(fall_cm)) });
const tagWidth = (words: string, size: number): number => size * LETTER * words.length + 18;

function heightTag(pen: Pen, x: number, y: number, words: string, size: number, bad: boolean): void {
  const w = tagWidth(words, size);
  const h = size * TAG_HIGH;
  pen.rect(x - w / 2 + 2, y - h / 2 + 3, w, h, { fill: INK.shadow, alpha: 0.25 }, 6);
  pen.rect(x - w / 2, y - h / 2, w, h, { fill: bad ? INK.red : INK.white, ink: INK.ink, width: 2 }, 6);
  pen.text(words, x, y + size * 0.36, { size, weight: 720, colour: bad ? '#fff' : INK.ink });
}

/** The level that counts for the flow: where water stands, or where it is sprayed in. */
const levelOf = (box: StageBox): number => (drawingOf(box.kind).inlet === 'bar' ? box.rim + BAR_UNDER_RIM : box.level);

/** Where the height of a level is printed. */
export const heightY = (box: StageBox, text: number): number => levelOf(box) + Math.min((box.floor - levelOf(box)) * 0.5, 34 + text * 0.4);

/** The same for all stages, stepped where they would lie over each other. */
export function heightYs(boxes: readonly StageBox[], text: number, bottom: number): number[] {
  return steppedTags(
    boxes.map((box) => ({ x: box.x + box.w / 2, y: heightY(box, text), half: tagWidth(levelWords(box), text) / 2 + 2 })),
    text * TAG_HIGH + 4,
    bottom,
  );
}

function level(pen: Pen, box: StageBox, text: number, tagY: number, bad: boolean): void {
  const y = levelOf(box);
  pen.line(box.x + 2, y, box.x + box.w - 2, y, { ink: bad ? INK.red : INK.blue, width: 4 });
  heightTag(pen, box.x + box.w / 2, tagY, levelWords(box), text, bad);
}

/**
 * Base line of the first line of a fall's words: over the pipe in the gap where the fall is long.
 * @param tagY where the tank's height is printed, if the words are wider than the gap: then they stand under it
 */
export function fallY(left: StageBox, lines: number, text: number, long: boolean, tagY: number | null): number {
  if (long) return left.level - 12 - (lines - 1) * text * 1.1;
  return tagY === null ? left.level + 26 + text : tagY + text * 2;
}

function fall(pen: Pen, gap: GapBox, left: StageBox, fall_cm: number, long: boolean, text: number, tagY: number): void {
  const colour = fall_cm > 0 ? INK.blue : INK.red;
  pen.path(`M${gap.x} ${left.level}H${gap.x + gap.w}`, { ink: colour, width: 2.4, dash: [7, 6] });
  const words = fallWords(fall_cm).split(' ');
  const lines = gap.w < text * 6 && words.length > 1 ? [words[0], words.slice(1).join(' ')] : [words.join(' ')];
  const wide = Math.max(...lines.map((line) => line.length)) * LETTER * text > gap.w;
  const first = fallY(left, lines.length, text, long, wide ? tagY : null);
  lines.forEach((line, i) => pen.text(line, gap.x + gap.w / 2, first + i * text * 1.1, { size: text, weight: 680, colour, halo: 5 }));
}

function slot(pen: Pen, gap: GapBox, hot: boolean): void {
  const h = gap.bottom - gap.top;
  pen.rect(gap.x, gap.top, gap.w, h, { fill: INK.blueWash, alpha: hot ? 0.9 : 0.5 }, 10);
  pen.rect(gap.x, gap.top, gap.w, h, { ink: INK.blue, width: hot ? 5 : 3, dash: hot ? [18, 10] : [12, 9], alpha: hot ? 1 : 0.75 }, 10);
  if (!hot) return;
  const x = gap.x + gap.w / 2;
  pen.path(`M${x} ${gap.top - 42}v26M${x - 12} ${gap.top - 29}l12 14l12 -14`, { ink: '#fff', width: 10 });
  pen.path(`M${x} ${gap.top - 42}v26M${x - 12} ${gap.top - 29}l12 14l12 -14`, { ink: INK.blue, width: 6 });
}

/** Gap slots lie under the tanks; the one the part would go into is lit. */
export class GapMarks {
  private readonly plain: GameObjects.Image[] = [];
  private readonly lit: GameObjects.Image[] = [];

  constructor(
    studio: Studio,
    private readonly gaps: readonly GapBox[],
  ) {
    const bake =
      (hot: boolean) =>
      (gap: GapBox): GameObjects.Image =>
        studio
          .show(studio.bake({ x: gap.x - 6, y: gap.top - 50, w: gap.w + 12, h: gap.bottom - gap.top + 56 }, (pen) => slot(pen, gap, hot)))
          .setVisible(false);
    this.plain.push(...gaps.map(bake(false)));
    this.lit.push(...gaps.map(bake(true)));
  }

  /** @param open whether a part waits on the shelf */
  update(open: boolean, drag: Drag | null): void {
    for (let i = 0; i < this.gaps.length; i += 1) {
      const hot = drag !== null && drag.overGap === this.gaps[i].gap;
      if (this.lit[i].visible !== hot) this.lit[i].setVisible(hot);
      const shown = !hot && (open || drag !== null);
      if (this.plain[i].visible !== shown) this.plain[i].setVisible(shown);
    }
  }
}

/** A fall is written into a gap that is at least so many times as wide as its letters are high. */
const LEAST_ROOM = 2.6;

/** Bakes the level lines and the height and fall texts over the tanks. */
export function showLevels(studio: Studio, layout: WorldLayout, bad: ReadonlySet<string>): void {
  const text = Math.max(17, LEAST_TEXT_px / studio.cssScale);
  const tagYs = heightYs(layout.stages, text, layout.bottom);
  layout.stages.forEach((box, i) => {
    const half = Math.max(box.w, tagWidth(levelWords(box), text)) / 2 + 8;
    const top = Math.min(levelOf(box), tagYs[i] - text) - 10;
    const space = { x: box.x + box.w / 2 - half, y: top, w: 2 * half, h: Math.max(levelOf(box), tagYs[i] + text) + 14 - top };
    studio.show(studio.bake(space, (pen) => level(pen, box, text, tagYs[i], bad.has(box.id))));
  });
  for (const gap of layout.gaps) {
    const at = layout.stages.findIndex((box) => box.id === gap.left);
    const left = at < 0 ? undefined : layout.stages[at];
    const fall_cm = gap.fall_cm;
    if (left === undefined || fall_cm === null) continue;
    // where words would lie over the tanks, the heights in them say as much; water that cannot run is said all the same
    if (fall_cm > 0 && gap.w < text * LEAST_ROOM) continue;
    const space = { x: gap.x - 30 - text, y: left.level - 16 - text * 2.4, w: gap.w + 60 + 2 * text, h: 90 + text * 8.4 };
    studio.show(
      studio.bake(space, (pen) => fall(pen, gap, left, fall_cm, (fall_cm / 100) * layout.unitsPerM >= OVER_RIM, text, tagYs[at])),
    );
  }
}
