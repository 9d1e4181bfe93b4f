// Names of the stages, written over them in the picture.
import { stageName } from '../../../words/stageNames';
import { FONT } from '../kit/pen';
import { WALL } from '../kit/boxes';
import { cropDrawing, sideDrawingOf } from '../scene/drawingOf';
import { placeNames, type NameWish } from './names';
import type { PictureInput } from '../scene/pictureInput';
import { nameAbove, pitOf, tableOf } from '../scene/positions';
import type { Studio } from '../kit/studio';

const SIZE = 18;
/** Height of a line as a share of its letters. */
const LINE = 1.08;
/** How high plants stand that have just been set, world units. */
const SEEDLING_REACH = 34;
/** A name beside a tank in the ground stands so far from its wall, or from its number. */
const BESIDE = 20;
const BESIDE_NUMBER = 8;
/**
 * A dosing tank's name stands so far over it, or close over it in one line, where it would reach under the card of the next thing to do, so
 * high on the page.
 */
const OVER_TANK = 24;
const CLOSE_OVER = 6;
const CARD_px = 58;
/** The first stage has the pipe's bend over it. */
const BEND = 26;

/** Writes the names. @param tagHalf half the width of a number in a tank, world units; 0 where there are none */
export function showNames(studio: Studio, { layout, plan, building, living, legible, told, viewTop }: PictureInput, tagHalf: number): void {
  const size = Math.max(SIZE, legible.text_px / studio.cssScale);
  const line = size * LINE;
  const context = document.createElement('canvas').getContext('2d');
  if (context === null) return;
  context.font = `680 ${size}px ${FONT}`;
  const measure = (text: string): number => context.measureText(text).width;
  const all = [...plan.loop, ...plan.side];
  const reach = building ? SEEDLING_REACH : Math.max(...[...living.crops].map((crop) => cropDrawing(crop).reach));
  const wishes: NameWish[] = layout.stages.map((box) => {
    const words = stageName(all, box.id);
    if (box.stand === 'pit') return { id: box.id, words, x: box.x - WALL - 40, y: (box.level + box.floor) / 2, room: 120, align: 'right' };
    const bend = layout.pump !== null && box === layout.stages[0] ? BEND : 0;
    return { id: box.id, words, x: box.x + box.w / 2, y: box.rim - nameAbove(box, reach) - bend, room: box.w + 10, align: 'center' };
  });
  for (const side of layout.sides) {
    const words = stageName(all, side.id);
    if (sideDrawingOf(side.kind).place === 'overRim') {
      const high = side.rim - OVER_TANK - 2 * line < viewTop + CARD_px / studio.cssScale;
      wishes.push({
        id: side.id,
        words,
        x: side.x + side.w / 2,
        y: side.rim - (high ? CLOSE_OVER : OVER_TANK),
        room: high ? Infinity : 100,
        align: 'center',
      });
    } else
      wishes.push({
        id: side.id,
        words,
        x: Math.min(side.x - BESIDE, side.x + side.w / 2 - tagHalf - BESIDE_NUMBER),
        y: (side.rim + side.floor) / 2,
        room: 120,
        align: 'right',
      });
  }
  const things = [
    ...layout.sides.map((side) => (sideDrawingOf(side.kind).place === 'overRim' ? tableOf(side) : pitOf(side))),
    ...layout.stages.filter(({ stand }) => stand === 'pit').map(pitOf),
  ];
  const names = placeNames(
    wishes.filter(({ id }) => told === null || told.includes(id)),
    line,
    layout.width,
    measure,
    { things, top: viewTop + 2 },
  );
  for (const name of names) {
    const left = name.align === 'center' ? name.x - name.width / 2 : name.x - name.width;
    const h = name.lines.length * line;
    studio.show(
      studio.bake({ x: left - 6, y: name.y - h - 4, w: name.width + 12, h: h + 14 }, (pen) => {
        name.lines.forEach((words, i) =>
          pen.text(words, name.x, name.y - (name.lines.length - 1 - i) * line, { size, weight: 680, align: name.align, halo: 5 }),
        );
      }),
    );
  }
}
