// The studio turns drawings into textures at the size they are shown, and textures into images that stand in world units.
import type { GameObjects, Scene, Textures } from 'phaser';
import { Pen } from './draw/pen';

/** A drawing baked for one place: its top left corner in world units and its scale. */
export interface Plate { key: string; x: number; y: number; scale: number; width_px: number; height_px: number }
export interface Rect { x: number; y: number; w: number; h: number }
/** One picture of a sheet; x and y are the corner of its frame relative to its own origin. */
export interface SheetEntry extends Rect { name: string; draw: (pen: Pen) => void }

const SHEET_WIDTH = 2048;
const PAD = 2;

function canvasOf(width: number, height: number): CanvasRenderingContext2D {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, width);
  canvas.height = Math.max(1, height);
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('no 2D canvas');
  return context;
}

let serial = 0;

export class Studio {
  private readonly keys: string[] = [];

  /**
   * @param scale device pixels of one world unit
   * @param cssScale page pixels of one world unit
   */
  constructor(readonly scene: Scene, readonly scale: number, readonly cssScale: number) {}

  /** Bakes a drawing made in world units; its corner is moved to a whole pixel so that lines stay sharp. */
  bake(space: Rect, draw: (pen: Pen) => void): Plate {
    const k = this.scale;
    const left = Math.floor(space.x * k);
    const top = Math.floor(space.y * k);
    const width = Math.floor((space.x + space.w) * k) - left;
    const height = Math.floor((space.y + space.h) * k) - top;
    const context = canvasOf(width, height);
    context.setTransform(k, 0, 0, k, -left, -top);
    draw(new Pen(context));
    return { key: this.keep(context.canvas), x: left / k, y: top / k, scale: 1 / k, width_px: width, height_px: height };
  }

  /** Bakes many small pictures onto one sheet. */
  sheet(entries: readonly SheetEntry[], scale = this.scale): Sheet {
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
    entries.forEach((entry, i) => {
      context.save();
      context.setTransform(scale, 0, 0, scale, places[i].x - entry.x * scale, places[i].y - entry.y * scale);
      entry.draw(pen);
      context.restore();
    });
    const texture = this.scene.textures.get(this.keep(context.canvas));
    entries.forEach((entry, i) => {
      const frame = texture.add(entry.name, 0, places[i].x, places[i].y, places[i].w, places[i].h);
      if (frame === null) return;
      frame.customPivot = true;
      frame.pivotX = (-entry.x * scale) / places[i].w;
      frame.pivotY = (-entry.y * scale) / places[i].h;
    });
    return new Sheet(this.scene, texture, 1 / scale);
  }

  /** A plate of its own that is drawn again from time to time. */
  slate(space: Rect): Slate {
    return new Slate(this, this.bake(space, () => undefined));
  }

  /** Puts a plate on the picture, over everything put there before. */
  show(plate: Plate): GameObjects.Image {
    return this.scene.add.image(plate.x, plate.y, plate.key).setOrigin(0, 0).setScale(plate.scale);
  }

  /** Frees the textures made here; images that show them must be gone. */
  clear(): void {
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
  constructor(private readonly scene: Scene, private readonly texture: Textures.Texture, private readonly scale: number) {}

  frame(name: string): Textures.Frame {
    return this.texture.get(name);
  }

  /** An image of one picture, standing at its own origin. */
  image(name: string, x = 0, y = 0): GameObjects.Image {
    return this.scene.add.image(x, y, this.texture, name).setScale(this.scale);
  }

  /** Scale at which a picture shows at its drawn size. */
  get natural(): number {
    return this.scale;
  }
}

/** A baked plate that can be wiped and drawn again. */
export class Slate {
  readonly image: GameObjects.Image;
  private readonly texture: Textures.CanvasTexture;
  private readonly pen: Pen;

  constructor(studio: Studio, readonly plate: Plate) {
    this.image = studio.show(plate);
    this.texture = studio.scene.textures.get(plate.key) as Textures.CanvasTexture;
    this.pen = new Pen(this.texture.getContext());
  }

  redraw(draw: (pen: Pen) => void): void {
    const c = this.pen.context;
    c.save();
    c.setTransform(1, 0, 0, 1, 0, 0);
    c.clearRect(0, 0, this.plate.width_px, this.plate.height_px);
    c.restore();
    draw(this.pen);
    this.texture.refresh();
  }
}
