// A pen that writes down what it is asked to draw, for drawings judged without a canvas.
import { Pen, type Stroke } from '../../../src/page/picture/kit/pen';

const nothing = (): void => undefined;
const canvas = {
  createLinearGradient: () => ({ addColorStop: nothing }),
  fillRect: nothing,
  save: nothing,
  restore: nothing,
  translate: nothing,
  rotate: nothing,
  scale: nothing,
  setLineDash: nothing,
};

export class RecordingPen extends Pen {
  readonly strokes: { numbers: number[]; text: string; stroke: Stroke }[] = [];

  constructor() {
    super(canvas as unknown as CanvasRenderingContext2D);
  }

  override path(d: string, stroke: Stroke): void {
    this.strokes.push({ text: d, stroke, numbers: [...d.matchAll(/-?\d+(\.\d+)?(e-?\d+)?/g)].map(([number]) => Number(number)) });
  }

  override rect(x: number, y: number, w: number, h: number, stroke: Stroke): void {
    this.strokes.push({ text: 'rect', stroke, numbers: [x, y, w, h] });
  }

  override oval(x: number, y: number, rx: number, ry: number, turn: number, stroke: Stroke): void {
    this.strokes.push({ text: 'oval', stroke, numbers: [x, y, rx, ry, turn] });
  }

  override within(_d: string, draw: () => void): void {
    draw();
  }

  override between(_outer: string, _inner: string, draw: () => void): void {
    draw();
  }

  /** What has been drawn, as one text: two drawings that differ have two texts. */
  get picture(): string {
    return this.strokes
      .map(({ text, numbers, stroke }) => `${text} ${numbers.map((x) => x.toFixed(1)).join(' ')} ${stroke.fill ?? ''} ${stroke.ink ?? ''}`)
      .join('\n');
  }
}
