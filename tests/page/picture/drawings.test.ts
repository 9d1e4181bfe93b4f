// What is drawn of the catalogue: every stage, crop and fish in its own way, sound at any size.
import { describe, expect, it } from 'vitest';
import { CROPS } from '../../../src/catalogue/kinds';
import { SPECIES } from '../../../src/catalogue/kinds';
import { STAGES } from '../../../src/catalogue/kinds';
import type { StageSpec } from '../../../src/season/plan';
import { fishOf } from '../../../src/page/picture/kit/fishForm';
import type { StageBox } from '../../../src/page/picture/kit/boxes';
import { layOut } from '../../../src/page/picture/scene/layout';
import { stageDrawings } from '../../../src/catalogue/drawings';
import { cropDrawing, drawingOf, fishForm } from '../../../src/page/picture/scene/drawingOf';
import { plainVessel } from '../../../src/page/picture/kit/plainVessel';
import { designOf } from './loops';
import { RecordingPen } from './recordingPen';

const KINDS = STAGES.filter(({ takesSolids, doses, pumps }) => !takesSolids && !doses && !pumps).map(({ kind }) => kind);

function boxOf(kind: string, aspect: number): StageBox {
  const loop = [
    { id: 'fish', kind: 'fishTank' },
    { id: 'it', kind },
    { id: 'sump', kind: 'sump' },
    { id: 'pump', kind: 'returnPump' },
  ] as StageSpec[];
  const box = layOut({ design: designOf(loop), loop, side: [], aspect })?.stages.find((one) => one.id === 'it');
  if (box === undefined) throw new Error(`no place for ${kind}`);
  return box;
}

function drawn(kind: string, aspect = 2): RecordingPen {
  const pen = new RecordingPen();
  const box = boxOf(kind, aspect);
  const drawing = drawingOf(kind);
  drawing.support(pen, box);
  drawing.back?.(pen, box);
  drawing.media?.(pen, box);
  drawing.front(pen, box);
  return pen;
}

describe('stages', () => {
  it('each have a drawing of their own', () => {
    expect(STAGES.map(({ kind }) => kind).filter((kind) => !Object.hasOwn(stageDrawings, kind))).toEqual([]);
    expect(KINDS.length).toBeGreaterThan(10);
    expect(KINDS.filter((kind) => drawingOf(kind) === plainVessel)).toEqual([]);
    const pictures = KINDS.map((kind) => drawn(kind).picture);
    expect(new Set(pictures).size).toBe(KINDS.length);
  });

  it.each(KINDS)('%s is drawn with numbers that are numbers, in a narrow and in a wide view', (kind) => {
    for (const aspect of [1, 2.4]) {
      const { strokes } = drawn(kind, aspect);
      expect(strokes.length).toBeGreaterThan(3);
      for (const { text, numbers } of strokes) {
        expect(text).not.toMatch(/NaN|undefined|Infinity/);
        expect(numbers.every(Number.isFinite)).toBe(true);
      }
    }
  });

  it.each(KINDS)('%s keeps its floor over its rim, and its water between them', (kind) => {
    const box = boxOf(kind, 2);
    expect(box.rim).toBeLessThan(box.level);
    expect(box.level).toBeLessThan(box.floor);
  });

  it('give the outline of their water at rest', () => {
    for (const kind of KINDS) expect(drawingOf(kind).waterPath(boxOf(kind, 2))).toMatch(/^M/);
  });
});

describe('crops', () => {
  const picture = (crop: string, size: 1 | 2 | 3 | 4, stress: boolean): RecordingPen => {
    const pen = new RecordingPen();
    cropDrawing(crop).draw(pen, size, stress, 3);
    return pen;
  };

  it('of the catalogue are told apart', () => {
    const crops = Object.keys(CROPS);
    expect(new Set(crops.map((crop) => picture(crop, 3, false).picture)).size).toBe(crops.length);
  });

  it.each(Object.keys(CROPS))('%s grows through four sizes, and stress changes its shape as well as its colour', (crop) => {
    const sizes = ([1, 2, 3, 4] as const).map((size) => picture(crop, size, false).picture);
    expect(new Set(sizes).size).toBe(4);
    const shape = (pen: RecordingPen): string => pen.strokes.map(({ numbers }) => numbers.join(' ')).join();
    expect(shape(picture(crop, 4, true))).not.toBe(shape(picture(crop, 4, false)));
  });
});

describe('fish', () => {
  const picture = (species: string, unwell: boolean): string => {
    const pen = new RecordingPen();
    fishOf(fishForm(species), pen, 0, unwell);
    return pen.picture;
  };

  it('of the catalogue are told apart, well and unwell', () => {
    const all = Object.keys(SPECIES).flatMap((species) => [picture(species, false), picture(species, true)]);
    expect(new Set(all).size).toBe(2 * Object.keys(SPECIES).length);
  });
});
