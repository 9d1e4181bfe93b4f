// The studio turns drawings into textures at the size they are shown, and textures into images that stand in world units.
import { CANVAS, GameObjects, type Scene, type Textures } from 'phaser';
import { Pen } from './pen';
import { PlainImage } from './plainImage';

/** What moves or is hidden on the picture; its setters of fractions are called only on a change that can be seen. */
export type Image = GameObjects.Image;
/** A drawing baked for one place: its top left corner in world units and its scale. */
export interface Plate {
  key: string;
  x: number;
  y: number;
  scale: number;
  width_px: number;
  height_px: number;
}
export interface Rect {
  x: number;
  y: number;
  w: number;
  h: number;
}
/** One picture of a sheet; x and y are the corner of its frame relative to its own origin. */
export interface SheetEntry extends Rect {
  name: string;
  draw: (pen: Pen) => void;
}

const SHEET_WIDTH = 2048;
const PAD = 2;
/** Pictures of a sheet that are drawn without a pause. */
const AT_ONCE = 4;

function canvasOf(width: number, height: number): CanvasRenderingContext2D {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, width);
  canvas.height = Math.max(1, height);
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('no 2D canvas');
  return context;
}

/** Whether two rectangles share a point. */
const meet = (a: Rect, b: Rect): boolean => a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;

let serial = 0;

/**
 * Sets all that may be set of an image later, always in the same order. Until it is set, an image does not have it, and a browser keeps
 * images that have different things, or had them in another order, in different shapes; where it meets many, setting a place makes a number
 * anew each time.
 */
function shaped(image: GameObjects.Image, scale: number, turn: number, alpha: number): GameObjects.Image {
  return image.setScale(scale).setRotation(turn).setAlpha(alpha).setVisible(true);
}

/** Gives one image fractions before any is shown: numbers that were whole so far would have a shape of their own. */
export function evenShapes(scene: Scene, white: string): void {
  shaped(new GameObjects.Image(scene, 0.5, 0.5, white).setTint(0xffffff), 0.5, 0.5, 0.5)
    .setOrigin(0.3, 0.3)
    .destroy();
}

export class Studio {
  private readonly keys: string[] = [];
  /** all that is put on the picture; hidden until it is to be seen */
  readonly layer: GameObjects.Layer;

  /**
   * @param white key of a plain white texture
   * @param scale device pixels of one world unit
   * @param cssScale page pixels of one world unit
   * @param seen all that will be in view: what lies elsewhere is not drawn; null: everything
   */
  constructor(
    readonly scene: Scene,
    private readonly white: string,
    readonly scale: number,
    readonly cssScale: number,
    private readonly seen: Rect | null = null,
  ) {
    this.layer = scene.add.layer().setVisible(false);
  }

  /** Bakes a drawing made in world units; its corner is moved to a whole pixel so that lines stay sharp. */
  bake(space: Rect, draw: (pen: Pen) => void): Plate {
    const k = this.scale;
    if (this.seen !== null && !meet(space, this.seen))
      return { key: this.keep(canvasOf(1, 1).canvas), x: space.x, y: space.y, scale: 1 / k, width_px: 1, height_px: 1 };
    const left = Math.floor(space.x * k);
    const top = Math.floor(space.y * k);
    const width = Math.floor((space.x + space.w) * k) - left;
    const height = Math.floor((space.y + space.h) * k) - top;
    const context = canvasOf(width, height);
    context.setTransform(k, 0, 0, k, -left, -top);
    draw(new Pen(context));
    return { key: this.keep(context.canvas), x: left / k, y: top / k, scale: 1 / k, width_px: width, height_px: height };
  }

  /** Bakes what is as wide as the picture: of it only what will be in view. */
  bakeWide(space: Rect, draw: (pen: Pen) => void): Plate {
    const { seen } = this;
    if (seen === null || !meet(space, seen)) return this.bake(space, draw);
    const [x, y] = [Math.max(space.x, seen.x - 1), Math.max(space.y, seen.y - 1)];
    return this.bake(
      { x, y, w: Math.min(space.x + space.w, seen.x + seen.w + 1) - x, h: Math.min(space.y + space.h, seen.y + seen.h + 1) - y },
      draw,
    );
  }

  /** Bakes many small pictures onto one sheet, at once. */
  sheet(entries: readonly SheetEntry[], scale = this.scale): Sheet {
    const steps = this.sheetSteps(entries, scale);
    for (;;) {
      const { done, value } = steps.next();
      if (done) return value;
    }
  }

  /** The same, a few pictures at a time. */
  *sheetSteps(entries: readonly SheetEntry[], scale = this.scale): Generator<void, Sheet> {
    const places: { x: number; y: number; w: number; h: number }[] = [];
    let x = PAD;
    let y = PAD;
    let row = 0;
    for (const entry of entries) {
      const w = Math.ceil(entry.w * scale);
      const h = Math.ceil(entry.h * scale);
      if (x + w + PAD > SHEET_WIDTH) {
        x = PAD;
        y += row + PAD;
        row = 0;
      }
      places.push({ x, y, w, h });
      x += w + PAD;
      row = Math.max(row, h);
    }
    const width = places.reduce((most, place) => Math.max(most, place.x + place.w + PAD), 1);
    const context = canvasOf(width, y + row + PAD);
    const pen = new Pen(context);
    for (let i = 0; i < entries.length; i += 1) {
      const entry = entries[i];
      context.save();
      context.setTransform(scale, 0, 0, scale, places[i].x - entry.x * scale, places[i].y - entry.y * scale);
      entry.draw(pen);
      context.restore();
      if (i % AT_ONCE === AT_ONCE - 1) yield;
    }
    yield;
    const texture = this.scene.textures.get(this.keep(context.canvas));
    yield;
    entries.forEach((entry, i) => {
      const frame = texture.add(entry.name, 0, places[i].x, places[i].y, places[i].w, places[i].h);
      if (frame === null) return;
      frame.customPivot = true;
      frame.pivotX = (-entry.x * scale) / places[i].w;
      frame.pivotY = (-entry.y * scale) / places[i].h;
    });
    return new Sheet(this, texture, 1 / scale);
  }

  /** Puts a plate on the picture, over everything put there before. */
  show(plate: Plate): GameObjects.Image {
    return this.image(plate.x, plate.y, plate.key).setOrigin(0, 0).setScale(plate.scale);
  }

  /** What an image is given to show a plate in the place of another of the same size. */
  frameOf(plate: Plate): Textures.Frame {
    return this.scene.textures.getFrame(plate.key);
  }

  /** A plain white patch whose upper left corner stands here; its size and colour are set by who asks for it. */
  patch(x: number, y: number): GameObjects.Image {
    return this.image(x, y, this.white).setOrigin(0, 0);
  }

  /** An image over everything put there before. */
  image(x: number, y: number, key: string | Textures.Texture, frame?: string): GameObjects.Image {
    const image =
      this.scene.renderer.type === CANVAS
        ? new PlainImage(this.scene, x, y, key, frame)
        : new GameObjects.Image(this.scene, x, y, key, frame).setTint(0xffffff);
    shaped(image, 1, 0, 1);
    this.layer.add(image);
    return image;
  }

  /** Takes everything off the picture and frees the textures made here. */
  clear(): void {
    this.layer.destroy();
    for (const key of this.keys) this.scene.textures.remove(key);
    this.keys.length = 0;
  }

  private keep(canvas: HTMLCanvasElement): string {
    serial += 1;
    const key = `plate ${serial}`;
    this.scene.textures.addCanvas(key, canvas);
    this.keys.push(key);
    return key;
  }
}

/** Small pictures that share one texture, so that hundreds of images cost one draw. */
export class Sheet {
  constructor(
    private readonly studio: Studio,
    private readonly texture: Textures.Texture,
    private readonly scale: number,
  ) {}

  /** The same pictures, to be put on another studio's picture. */
  onto(studio: Studio): Sheet {
    return new Sheet(studio, this.texture, this.scale);
  }

  frame(name: string): Textures.Frame {
    return this.texture.get(name);
  }

  /** An image of one picture, standing at its own origin. */
  image(name: string, x = 0, y = 0): GameObjects.Image {
    return this.studio.image(x, y, this.texture, name).setScale(this.scale);
  }

  /** Scale at which a picture shows at its drawn size. */
  get natural(): number {
    return this.scale;
  }
}
