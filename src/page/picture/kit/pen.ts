// The pen: draws paths, in world units, onto a 2D canvas that becomes a texture. Round caps and joins everywhere.
import { INK } from './palette';

/** Text in the picture is never smaller than this on screen, px. */
export const LEAST_TEXT_px = 15;
export const FONT = "'Atkinson Hyperlegible Next Variable', 'Atkinson Hyperlegible Next', system-ui, sans-serif";

/** How a shape is inked. Widths and dashes in world units. */
export interface Stroke {
  fill?: string;
  ink?: string;
  width?: number;
  alpha?: number;
  dash?: number[];
  cap?: CanvasLineCap;
}
export interface Lettering {
  size: number;
  weight: number;
  colour?: string;
  align?: CanvasTextAlign;
  halo?: number;
  haloColour?: string;
}

/** Line weights in world units. */
export const WEIGHT = { ground: 4, outline: 2.6, part: 2, detail: 1.4, hair: 0.9, select: 4.5 } as const;

export class Pen {
  constructor(readonly context: CanvasRenderingContext2D) {
    context.lineCap = 'round';
    context.lineJoin = 'round';
  }

  /** Fills, then inks, a path written as SVG path data. */
  path(d: string, stroke: Stroke): void {
    this.shape(new Path2D(d), stroke);
  }

  shape(path: Path2D, stroke: Stroke): void {
    const c = this.context;
    c.globalAlpha = stroke.alpha ?? 1;
    if (stroke.fill !== undefined) {
      c.fillStyle = stroke.fill;
      c.fill(path);
    }
    if (stroke.ink !== undefined) {
      c.strokeStyle = stroke.ink;
      c.lineWidth = stroke.width ?? WEIGHT.part;
      c.lineCap = stroke.cap ?? 'round';
      c.setLineDash(stroke.dash ?? []);
      c.stroke(path);
    }
    c.globalAlpha = 1;
  }

  rect(x: number, y: number, w: number, h: number, stroke: Stroke, radius = 0): void {
    const path = new Path2D();
    if (radius > 0) path.roundRect(x, y, w, h, radius);
    else path.rect(x, y, w, h);
    this.shape(path, stroke);
  }

  circle(x: number, y: number, r: number, stroke: Stroke): void {
    this.oval(x, y, r, r, 0, stroke);
  }

  oval(x: number, y: number, rx: number, ry: number, turn: number, stroke: Stroke): void {
    const path = new Path2D();
    path.ellipse(x, y, rx, ry, turn, 0, 2 * Math.PI);
    this.shape(path, stroke);
  }

  line(x1: number, y1: number, x2: number, y2: number, stroke: Stroke): void {
    this.path(`M${x1} ${y1}L${x2} ${y2}`, stroke);
  }

  /** Draws in a frame of its own: moved, turned (radians), scaled. */
  at(x: number, y: number, draw: () => void, turn = 0, scale = 1, scaleY = scale): void {
    this.context.save();
    this.context.translate(x, y);
    if (turn !== 0) this.context.rotate(turn);
    if (scale !== 1 || scaleY !== 1) this.context.scale(scale, scaleY);
    draw();
    this.context.restore();
  }

  /** Draws inside a path only. */
  within(d: string, draw: () => void): void {
    this.context.save();
    this.context.clip(new Path2D(d));
    draw();
    this.context.restore();
  }

  /** Draws between an outer and an inner outline only, as on the cut face of a shell. */
  between(outer: string, inner: string, draw: () => void): void {
    this.context.save();
    this.context.clip(new Path2D(outer + inner), 'evenodd');
    draw();
    this.context.restore();
  }

  /** Slanting hatch inside a path whose bounding box is given; slope 1 leans right, −1 left. */
  hatch(d: string, x: number, y: number, w: number, h: number, step: number, alpha: number, slope: 1 | -1 = 1): void {
    let lines = '';
    const gap = step * Math.SQRT2;
    for (let s = -h; s < w + h; s += gap) {
      lines += slope === 1 ? `M${x + s} ${y + h}L${x + s + h} ${y}` : `M${x + s} ${y}L${x + s + h} ${y + h}`;
    }
    this.within(d, () => this.path(lines, { ink: INK.ink, width: 1.1, alpha }));
  }

  /** Letters with a paper halo; y is the base line. */
  text(words: string, x: number, y: number, letters: Lettering): void {
    const c = this.context;
    c.font = `${letters.weight} ${letters.size}px ${FONT}`;
    c.textAlign = letters.align ?? 'center';
    if (letters.halo) {
      c.setLineDash([]);
      c.lineWidth = letters.halo;
      c.strokeStyle = letters.haloColour ?? INK.paper;
      c.strokeText(words, x, y);
    }
    c.fillStyle = letters.colour ?? INK.ink;
    c.fillText(words, x, y);
  }
}
