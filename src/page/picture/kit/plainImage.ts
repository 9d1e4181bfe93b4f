// Images for browsers without a fast WebGL; the plain canvas knows no tint: each that is tinted gets a coloured copy of its own.
import { GameObjects, Math as Maths, type Scene, type Textures } from 'phaser';

let serial = 0;

const css = (colour: number): string => `#${colour.toString(16).padStart(6, '0')}`;

export class PlainImage extends GameObjects.Image {
  private copy: Textures.CanvasTexture | null = null;
  private plain: Textures.Frame | null = null;

  constructor(scene: Scene, x: number, y: number, key: string | Textures.Texture, frame?: string) {
    super(scene, x, y, key, frame);
  }

  /** Colours the image; of the four corners the upper ones count, from left to right. */
  override setTint(left = 0xffffff, right = left): this {
    super.setTint(left, right, left, right);
    const plain = this.plain ?? this.frame;
    this.plain = plain;
    const [w, h] = [Math.max(1, plain.cutWidth), Math.max(1, plain.cutHeight)];
    this.copy ??= this.newCopy(plain, w, h);
    if (this.copy === null) return this;
    const c = this.copy.context;
    c.globalCompositeOperation = 'source-over';
    c.clearRect(0, 0, w, h);
    c.drawImage(plain.source.image as CanvasImageSource, plain.cutX, plain.cutY, w, h, 0, 0, w, h);
    // as WebGL does it: the colours are multiplied, and the outline stays
    c.globalCompositeOperation = 'multiply';
    if (left === right) c.fillStyle = css(left);
    else {
      const shade = c.createLinearGradient(0, 0, w, 0);
      shade.addColorStop(0, css(left));
      shade.addColorStop(1, css(right));
      c.fillStyle = shade;
    }
    c.fillRect(0, 0, w, h);
    c.globalCompositeOperation = 'destination-in';
    c.drawImage(plain.source.image as CanvasImageSource, plain.cutX, plain.cutY, w, h, 0, 0, w, h);
    return this;
  }

  /** The copy takes the place of the frame; where it stands and how large stays as it was. */
  private newCopy(plain: Textures.Frame, w: number, h: number): Textures.CanvasTexture | null {
    serial += 1;
    const copy = this.scene.textures.createCanvas(`plain ${serial}`, w, h);
    if (copy === null) return null;
    const { originX, originY } = this;
    const pivot = plain.customPivot ? new Maths.Vector2(plain.pivotX, plain.pivotY) : new Maths.Vector2(originX, originY);
    this.setTexture(copy.key);
    this.setOrigin(pivot.x, pivot.y);
    this.once('destroy', () => this.scene?.textures.remove(copy));
    return copy;
  }
}
